namespace Training.Courses;

/// <summary>Words of a question and what they were made from.</summary>
/// <param name="Words">As shown.</param>
/// <param name="Source">As typed, for the version.</param>
/// <param name="Guidance">Entries named in the words.</param>
internal sealed record ReadWords<T>(T Words, string Source, IReadOnlyCollection<string> Guidance);

/// <summary>Reads <c>questions.md</c> of one language.</summary>
internal static class QuestionWordsReader
{
    public static Dictionary<string, ReadWords<QuestionWords>> Read(CourseFolder folder, IReadOnlyList<NamedQuestion> questions, Language language)
    {
        var words = new Dictionary<string, ReadWords<QuestionWords>>(StringComparer.Ordinal);
        if (WordFile.Read(folder.Files, folder.PathOf(language, "questions.md"), language, folder.Problems) is not { } file) return words;
        var sections = SectionsById.Read(folder, file, "question", [.. questions.Select(question => question.Id)]);
        foreach (var question in questions)
        {
            if (sections.TryGetValue(question.Id, out var section)) words[question.Id] = new QuestionSection(folder, file, question, section).Read();
        }

        return words;
    }
}
