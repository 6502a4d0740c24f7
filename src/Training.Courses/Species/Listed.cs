namespace Training.Courses;

/// <summary>Lists of texts that keep the line of each, since a list may run over many lines.</summary>
internal static class Listed
{
    /// <summary>The texts of a list, none twice; empty ones and other shapes are findings.</summary>
    public static List<(string Text, int Line)> Texts(Fields fields, string field, SourceNode? node)
    {
        var texts = new List<(string Text, int Line)>();
        if (node is null) return texts;
        if (node is not SourceNode.List list)
        {
            fields.Report(CourseProblems.YamlShape, node.Line, field, "list");
            return texts;
        }

        foreach (var item in list.Items)
        {
            var text = fields.TextOf(field, item);
            if (texts.Exists(known => known.Text == text)) fields.Report(CourseProblems.IdTwice, item.Line, text);
            else if (text.Length > 0) texts.Add((text, item.Line));
        }

        return texts;
    }

    /// <summary>The same of ids, each in the form of one.</summary>
    public static List<(string Text, int Line)> Ids(Fields fields, string field, SourceNode? node) => Formed(fields, Texts(fields, field, node), Courses.Ids.IsId, CourseProblems.IdForm);

    /// <summary>The same of states.</summary>
    public static List<(string Text, int Line)> States(Fields fields, string field, SourceNode? node) =>
        Formed(fields, Texts(fields, field, node), state => UsStates.All.Contains(state, StringComparer.Ordinal), SpeciesProblems.StateUnknown);

    private static List<(string Text, int Line)> Formed(Fields fields, List<(string Text, int Line)> texts, Func<string, bool> isForm, string code)
    {
        foreach (var (text, line) in texts.Where(item => !isForm(item.Text))) fields.Report(code, line, text);
        return [.. texts.Where(item => isForm(item.Text))];
    }
}
