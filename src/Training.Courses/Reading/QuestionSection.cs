using System.Globalization;
using Markdig.Syntax;

namespace Training.Courses;

/// <summary>The section of one question in one language, read from its end: explanation, lists, figure; what is left is the stem.</summary>
internal sealed class QuestionSection(CourseFolder folder, WordFile file, NamedQuestion question, WordSection section)
{
    // What a phone of 390 px shows of a list that is closed.
    private const int MostOfMatch = 36;

    private readonly string part = $"question {question.Id}";
    private readonly List<Block> blocks = [.. section.Blocks];
    private readonly CourseText text = new(file, folder, $"question {question.Id}");

    public ReadWords<QuestionWords> Read()
    {
        var explanation = ReadExplanation();
        var (options, matches) = question.Key is QuestionKey.Match match ? ReadPairs(match) : (ReadOptions(), NoTexts);
        var figure = question.Key is QuestionKey.Spot spot ? ReadFigure(spot) : null;
        foreach (var stray in blocks.Where(block => block is QuoteBlock || WordFile.IsIdList(block))) Report(CourseProblems.WordsLayout, file.LineOf(stray));
        var stem = text.Blocks(blocks);
        if (stem.Length == 0) Report(CourseProblems.WordsMissing, section.Line, question.Id);
        return new(new(stem, options, explanation) { MatchText = matches, Figure = figure }, section.Source, text.Guidance);
    }

    private static Dictionary<string, string> NoTexts => new(StringComparer.Ordinal);

    private string ReadExplanation()
    {
        var explanation = "";
        if (blocks is [.., QuoteBlock quote])
        {
            explanation = text.Blocks(quote);
            blocks.RemoveAt(blocks.Count - 1);
        }

        if (explanation.Length == 0) Report(CourseProblems.ExplanationMissing, section.Line);
        return explanation;
    }

    private Dictionary<string, string> ReadOptions()
    {
        if (blocks is [.., ListBlock list] && WordFile.IsIdList(list))
        {
            blocks.RemoveAt(blocks.Count - 1);
            return ReadItems(list, question.OptionIds, (_, words) => text.Inline(words));
        }

        foreach (var id in question.OptionIds) Report(CourseProblems.WordsMissing, section.Line, id);
        return NoTexts;
    }

    private (Dictionary<string, string> Options, Dictionary<string, string> Matches) ReadPairs(QuestionKey.Match match)
    {
        if (blocks is [.., ListBlock options, ListBlock matches] && WordFile.IsIdList(options) && WordFile.IsIdList(matches))
        {
            blocks.RemoveRange(blocks.Count - 2, 2);
            return (ReadItems(options, question.OptionIds, (_, words) => text.Inline(words)), ReadItems(matches, match.MatchIds, ReadMatch));
        }

        // One list of both kinds, most likely: what else could be found in it would only repeat this.
        Report(CourseProblems.MatchLists, blocks.Find(WordFile.IsIdList) is { } list ? file.LineOf(list) : section.Line);
        blocks.RemoveAll(WordFile.IsIdList);
        return (NoTexts, NoTexts);
    }

    private string ReadMatch(string id, ParagraphBlock words)
    {
        var plain = text.Plain(words);
        if (plain.Length > MostOfMatch) Report(CourseProblems.MatchTooLong, file.LineOf(words), id, Plain(plain.Length), Plain(MostOfMatch));
        return plain;
    }

    private Dictionary<string, string> ReadItems(ListBlock list, IReadOnlyList<string> ids, Func<string, ParagraphBlock, string> read)
    {
        var texts = NoTexts;
        foreach (var (id, item) in SectionsById.Items(folder, file, part, list, ids))
        {
            if (item is [ParagraphBlock only]) texts[id] = read(id, only);
            else Report(CourseProblems.WordsLayout, file.LineOf(item));
        }

        return texts;
    }

    private NumberedFigure? ReadFigure(QuestionKey.Spot spot)
    {
        var path = folder.PathOf(spot.Figure);
        // A drawing that is not there or has no size has been reported.
        if (folder.FindFigure(path)?.ViewBox is not { } box) return null;
        if (blocks.Where(block => text.FigurePathOf(block) == path).ToList() is [var only])
        {
            blocks.Remove(only);
            return new(text.Blocks([only]), box.Width, spot.Regions);
        }

        Report(CourseProblems.SpotFigureShown, section.Line, spot.Figure);
        return null;
    }

    private void Report(string code, int line, params IReadOnlyList<string> arguments) => folder.Problems.Add(new(code, new(file.Path, line, part), arguments));

    private static string Plain(int count) => count.ToString(CultureInfo.InvariantCulture);
}
