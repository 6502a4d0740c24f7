using Markdig.Syntax;

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
            if (sections.TryGetValue(question.Id, out var section)) words[question.Id] = ReadOne(folder, file, question, section);
        }

        return words;
    }

    private static ReadWords<QuestionWords> ReadOne(CourseFolder folder, WordFile file, NamedQuestion question, WordSection section)
    {
        var part = $"question {question.Id}";
        void Report(string code, int line, params IReadOnlyList<string> arguments) => folder.Problems.Add(new(code, new(file.Path, line, part), arguments));
        var blocks = section.Blocks.ToList();
        var text = new CourseText(file, folder, part);
        var explanation = "";
        if (blocks.Count > 0 && blocks[^1] is QuoteBlock quote)
        {
            explanation = text.Blocks(quote);
            blocks.RemoveAt(blocks.Count - 1);
        }

        if (explanation.Length == 0) Report(CourseProblems.ExplanationMissing, section.Line);
        var options = new Dictionary<string, string>(StringComparer.Ordinal);
        if (blocks.Count > 0 && blocks[^1] is ListBlock list && WordFile.IsIdList(list))
        {
            blocks.RemoveAt(blocks.Count - 1);
            foreach (var (id, item) in SectionsById.Items(folder, file, part, list, question.OptionIds))
            {
                if (item is [ParagraphBlock only]) options[id] = text.Inline(only);
                else Report(CourseProblems.WordsLayout, file.LineOf(item));
            }
        }
        else if (question.OptionIds.Count > 0)
        {
            foreach (var id in question.OptionIds) Report(CourseProblems.WordsMissing, section.Line, id);
        }

        foreach (var stray in blocks.Where(block => block is QuoteBlock || WordFile.IsIdList(block))) Report(CourseProblems.WordsLayout, file.LineOf(stray));
        var stem = text.Blocks(blocks);
        if (stem.Length == 0) Report(CourseProblems.WordsMissing, section.Line, question.Id);
        return new(new(stem, options, explanation), section.Source, text.Guidance);
    }
}
