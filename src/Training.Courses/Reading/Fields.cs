using System.Globalization;

namespace Training.Courses;

/// <summary>
/// Reads the fields of one map of a file. A field that cannot be read is a finding and answers an empty text or the least number: a
/// course with a finding is thrown away in the end, so placeholders never leave the reader, and the rest is still checked.
/// </summary>
internal sealed class Fields(SourceNode.Map map, string file, string? part, ICollection<Problem> problems)
{
    private readonly HashSet<string> asked = new(StringComparer.Ordinal);

    public string? Part { get; set; } = part;

    public int Line => map.Line;

    public string File => file;

    /// <summary>The maps of a list; what is no map is a finding.</summary>
    public static List<Fields> ListOf(SourceNode? node, string file, string? part, ICollection<Problem> problems)
    {
        var all = new List<Fields>();
        if (node is null) return all;
        if (node is not SourceNode.List list)
        {
            problems.Add(new(CourseProblems.YamlShape, new(file, node.Line, part), "", "list"));
            return all;
        }

        foreach (var item in list.Items)
        {
            if (item is SourceNode.Map map) all.Add(new(map, file, part, problems));
            else problems.Add(new(CourseProblems.YamlShape, new(file, item.Line, part), "", "map"));
        }

        return all;
    }

    public void Report(string code, int line, params IReadOnlyList<string> arguments) => problems.Add(new(code, new(file, line, Part), arguments));

    public int LineOf(string field) => map.Entries.FirstOrDefault(entry => entry.Key == field)?.Line ?? map.Line;

    public bool Has(string field) => map.Entries.Any(entry => entry.Key == field);

    public SourceNode? Optional(string field)
    {
        asked.Add(field);
        var node = map.Entries.FirstOrDefault(entry => entry.Key == field)?.Value;
        return node is SourceNode.Text { Value.Length: 0 } ? null : node;
    }

    public SourceNode? Required(string field, string missing = CourseProblems.FieldMissing)
    {
        var node = Optional(field);
        if (node is not null) return node;
        if (missing == CourseProblems.FieldMissing) Report(missing, LineOf(field), field);
        else Report(missing, LineOf(field));
        return null;
    }

    public string Text(string field) => TextOf(field, Required(field));

    public string? OptionalText(string field) => Optional(field) is { } node ? TextOf(field, node) : null;

    public string Id(string field, Func<string, bool>? isForm = null)
    {
        var id = Text(field);
        if (id.Length == 0 || (isForm ?? Ids.IsId)(id)) return id;
        Report(CourseProblems.IdForm, LineOf(field), id);
        return "";
    }

    public Fields? Map(string field, string? part = null)
    {
        var node = Required(field);
        if (node is SourceNode.Map child) return new(child, file, part ?? Part, problems);
        if (node is not null) Report(CourseProblems.YamlShape, node.Line, field, "map");
        return null;
    }

    public List<Fields> Maps(string field) => ListOf(Required(field), file, Part, problems);

    /// <summary>A list of ids without repetition.</summary>
    public List<string> IdList(string field, SourceNode? node)
    {
        var ids = new List<string>();
        if (node is null) return ids;
        if (node is not SourceNode.List list)
        {
            Report(CourseProblems.YamlShape, node.Line, field, "list");
            return ids;
        }

        foreach (var item in list.Items)
        {
            var id = TextOf(field, item);
            if (id.Length == 0) continue;
            if (!Ids.IsId(id)) Report(CourseProblems.IdForm, item.Line, id);
            else if (ids.Contains(id, StringComparer.Ordinal)) Report(CourseProblems.IdTwice, item.Line, id);
            else ids.Add(id);
        }

        return ids;
    }

    public int Number(string field, int least, int most, int? absent = null)
    {
        if (absent is not null && Optional(field) is null) return absent.Value;
        var text = Text(field);
        if (text.Length == 0) return least;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most) return number;
        Report(CourseProblems.NumberRange, LineOf(field), field, text, Plain(least), Plain(most));
        return least;
    }

    public decimal Amount(string field, decimal least, decimal most)
    {
        var text = Text(field);
        if (text.Length == 0) return least;
        if (Amounts.TryRead(text, out var amount) && amount >= least && amount <= most) return amount;
        Report(CourseProblems.NumberRange, LineOf(field), field, text, Plain(least), Plain(most));
        return least;
    }

    public bool Flag(string field) =>
        Optional(field) is { } node && Choose(field, TextOf(field, node), [("true", true), ("false", false)]);

    public T Choice<T>(string field, params IReadOnlyList<(string Name, T Value)> choices) => Choose(field, Text(field), choices);

    public T Choose<T>(string field, string text, IReadOnlyList<(string Name, T Value)> choices)
    {
        foreach (var (name, value) in choices)
        {
            if (name == text) return value;
        }

        if (text.Length > 0) Report(CourseProblems.FieldValue, LineOf(field), field, text, string.Join(", ", choices.Select(choice => choice.Name)));
        return choices[0].Value;
    }

    public Duration Duration(string field)
    {
        var text = Text(field);
        if (!Courses.Duration.TryParse(text, out var duration) && text.Length > 0) Report(CourseProblems.DurationForm, LineOf(field), field, text);
        return duration;
    }

    /// <summary>One duration or more, each above zero.</summary>
    public List<Duration> Durations(string field)
    {
        var durations = new List<Duration>();
        if (Required(field) is not { } node) return durations;
        if (node is not SourceNode.List { Items.Count: > 0 } list)
        {
            Report(CourseProblems.YamlShape, node.Line, field, "list");
            return durations;
        }

        foreach (var item in list.Items)
        {
            var text = TextOf(field, item);
            if (!Courses.Duration.TryParse(text, out var duration) || duration.Count == 0) Report(CourseProblems.DurationForm, item.Line, field, text);
            else durations.Add(duration);
        }

        return durations;
    }

    public DateOnly Date(string field)
    {
        var text = Text(field);
        if (!DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) && text.Length > 0)
        {
            Report(CourseProblems.DateForm, LineOf(field), field, text);
        }

        return date;
    }

    /// <summary>Reports fields that nobody asked for and fields that stand twice.</summary>
    public void Finish()
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var entry in map.Entries)
        {
            if (!asked.Contains(entry.Key)) Report(CourseProblems.FieldUnknown, entry.Line, entry.Key);
            else if (!seen.Add(entry.Key)) Report(CourseProblems.FieldTwice, entry.Line, entry.Key);
        }
    }

    public string TextOf(string field, SourceNode? node)
    {
        if (node is SourceNode.Text text) return text.Value;
        if (node is not null) Report(CourseProblems.YamlShape, node.Line, field, "text");
        return "";
    }

    private static string Plain(decimal number) => number.ToString(CultureInfo.InvariantCulture);
}
