namespace Training.Courses;

/// <summary>Reads <c>translation.yaml</c> and compares it with the original.</summary>
internal static class TranslationReader
{
    public static void Check(CourseFolder folder)
    {
        var translated = LanguageTags.All.Where(language => folder.Files.Find(folder.PathOf(language, Translation.FileName)) is not null).ToList();
        if (translated.Count > 1) folder.Problems.Add(new(CourseProblems.TranslationBoth, new(folder.PathOf(translated[^1], Translation.FileName))));
        if (translated is [var language]) Compare(folder, language);
    }

    private static void Compare(CourseFolder folder, Language language)
    {
        var path = folder.PathOf(language, Translation.FileName);
        if (SourceNode.Read(folder.Files, path, folder.Problems) is not SourceNode.Map marked)
        {
            folder.Problems.Add(new(CourseProblems.YamlShape, new(path), "", "map"));
            return;
        }

        var fields = new Fields(marked, path, null, folder.Problems);
        foreach (var (part, mark) in Translation.MarksOf(folder.Files, folder.Id, Translation.OriginalOf(language)))
        {
            fields.Part = part;
            if (fields.OptionalText(part) is not { } known) fields.Report(CourseProblems.TranslationUnmarked, 1, mark, language.Tag());
            else if (known != mark) fields.Report(CourseProblems.TranslationOlder, fields.LineOf(part), mark, language.Tag());
        }

        fields.Part = null;
        fields.Finish();
    }
}
