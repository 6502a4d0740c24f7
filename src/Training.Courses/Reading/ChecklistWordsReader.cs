using Markdig.Syntax;

namespace Training.Courses;

/// <summary>Reads <c>checklists.md</c> of one language.</summary>
internal static class ChecklistWordsReader
{
    public static Dictionary<string, ReadWords<ChecklistWords>> Read(CourseFolder folder, IReadOnlyList<NamedChecklist> checklists, Language language)
    {
        var words = new Dictionary<string, ReadWords<ChecklistWords>>(StringComparer.Ordinal);
        var path = folder.PathOf(language, "checklists.md");
        if (checklists.Count == 0) return words;
        if (WordFile.Read(folder.Files, path, language, folder.Problems) is not { } file) return words;
        var sections = SectionsById.Read(folder, file, "checklist", [.. checklists.Select(checklist => checklist.Id)]);
        foreach (var checklist in checklists)
        {
            if (sections.TryGetValue(checklist.Id, out var section)) words[checklist.Id] = ReadOne(folder, file, checklist, section);
        }

        return words;
    }

    private static ReadWords<ChecklistWords> ReadOne(CourseFolder folder, WordFile file, NamedChecklist checklist, WordSection section)
    {
        var part = $"checklist {checklist.Id}";
        void Report(string code, int line, params IReadOnlyList<string> arguments) => folder.Problems.Add(new(code, new(file.Path, line, part), arguments));
        var text = new CourseText(file, folder, part);
        var blocks = section.Blocks.ToList();
        var title = blocks.Count > 0 ? TakeTitle(blocks[0], text, file.Language) : "";
        if (title.Length == 0) Report(CourseProblems.TitleMissing, section.Line);
        else blocks.RemoveAt(0);

        var timeReason = TakeTimeReason(blocks, text, file.Language);
        if (checklist.TimeLimitMinutes is not null && timeReason is null) Report(CourseProblems.TimeReasonMissing, section.Line);
        if (checklist.TimeLimitMinutes is null && timeReason is not null) Report(CourseProblems.TimeReasonUnexpected, section.Line);
        var list = blocks.FindIndex(WordFile.IsIdList);
        var instructions = text.Blocks(blocks.Take(list < 0 ? blocks.Count : list));
        if (instructions.Length == 0) Report(CourseProblems.WordsMissing, section.Line, checklist.Id);
        foreach (var stray in blocks.Skip(list < 0 ? blocks.Count : list + 1)) Report(CourseProblems.WordsLayout, file.LineOf(stray));
        var steps = new Dictionary<string, string>(StringComparer.Ordinal);
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        var reasons = new Dictionary<string, string>(StringComparer.Ordinal);
        if (list >= 0) ReadSteps(folder, file, checklist, (ListBlock)blocks[list], text, steps, texts, reasons);
        else foreach (var step in checklist.Steps) Report(CourseProblems.WordsMissing, section.Line, step.Step.Id);
        return new(new(title, instructions, steps, texts, reasons, timeReason), section.Source, text.Guidance);
    }

    /// <summary>The paragraph below the title that begins with <c>Time:</c> in the file's language, whole; null where there is none.</summary>
    private static string? TakeTimeReason(List<Block> blocks, CourseText text, Language language)
    {
        var begin = language switch
        {
            Language.English => "Time:",
            Language.Spanish => "Tiempo:",
        };
        if (blocks is not [ParagraphBlock paragraph, ..] || !text.Plain(paragraph).StartsWith(begin, StringComparison.Ordinal)) return null;
        blocks.RemoveAt(0);
        return text.Blocks([paragraph]);
    }

    /// <summary>The title of a paragraph that begins with <c>Title:</c> in the file's language; empty where it does not.</summary>
    private static string TakeTitle(Block block, CourseText text, Language language)
    {
        var begin = language switch
        {
            Language.English => "Title:",
            Language.Spanish => "Título:",
        };
        if (block is not ParagraphBlock paragraph) return "";
        var plain = text.Plain(paragraph);
        return plain.StartsWith(begin, StringComparison.Ordinal) ? plain[begin.Length..].Trim() : "";
    }

    private static void ReadSteps(
        CourseFolder folder,
        WordFile file,
        NamedChecklist checklist,
        ListBlock list,
        CourseText text,
        Dictionary<string, string> steps,
        Dictionary<string, string> texts,
        Dictionary<string, string> reasons)
    {
        var items = SectionsById.Items(folder, file, $"checklist {checklist.Id}", list, [.. checklist.Steps.Select(step => step.Step.Id)]);
        foreach (var (step, _) in checklist.Steps)
        {
            if (!items.TryGetValue(step.Id, out var item)) continue;
            void Report(string code) => folder.Problems.Add(new(code, new(file.Path, file.LineOf(item), $"step {step.Id}")));
            var quote = item.OfType<QuoteBlock>().FirstOrDefault();
            if (step.IsCritical && quote is null) Report(CourseProblems.ReasonMissing);
            if (!step.IsCritical && quote is not null) Report(CourseProblems.ReasonUnexpected);
            if (item.Count != (quote is null ? 1 : 2) || item[0] is not ParagraphBlock seen)
            {
                Report(CourseProblems.WordsLayout);
                continue;
            }

            steps[step.Id] = text.Inline(seen);
            // Prose, not Plain: what guidance lacks was told of once, above.
            texts[step.Id] = string.Join(' ', text.Prose([seen]));
            if (quote is not null) reasons[step.Id] = text.Blocks(quote);
        }
    }
}
