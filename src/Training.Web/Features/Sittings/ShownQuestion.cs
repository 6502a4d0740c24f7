using System.Diagnostics;
using Training.Courses;
using Training.Scoring;

namespace Training.Web.Features.Sittings;

/// <summary>How a question is answered on a page.</summary>
public enum AnsweredBy
{
    /// <summary>Choosing one option.</summary>
    One,

    /// <summary>Choosing any number of options.</summary>
    Several,

    /// <summary>Giving each step a number.</summary>
    Order,

    /// <summary>Typing a number.</summary>
    Number,

    /// <summary>Choosing a match for each option.</summary>
    Match,

    /// <summary>Choosing one of the numbered places of a figure.</summary>
    Spot,
}

/// <summary>A question to answer, with what was answered; used by quiz and practice.</summary>
/// <param name="By">How.</param>
/// <param name="StemHtml">What is asked, as safe HTML.</param>
/// <param name="Options">In the order to show; for a spot also the order of the numbers on its figure; empty for a number.</param>
/// <param name="Unit">Shown beside the field of a number; empty otherwise.</param>
/// <param name="Number">As typed; empty where nothing was.</param>
/// <param name="Fault">Why what was posted could not be kept, or null.</param>
public sealed record ShownQuestion(
    AnsweredBy By, string StemHtml, IReadOnlyList<ShownOption> Options, string Unit, string Number, AnswerFault? Fault)
{
    private const string Opening = "<p>";
    private const string Closing = "</p>";

    /// <summary>What an option can be matched to, in the order to show; empty for other types than pairs.</summary>
    public IReadOnlyList<ShownMatch> Matches { get; init; } = [];

    /// <summary>The numbered figure of a spot, as safe HTML; empty for other types.</summary>
    public string FigureHtml { get; init; } = "";

    /// <summary>The stem without its paragraph, where it is a single one and so can stand in the first line; null otherwise.</summary>
    public string? StemInLine =>
        StemHtml.StartsWith(Opening, StringComparison.Ordinal) && StemHtml.EndsWith(Closing, StringComparison.Ordinal)
        && StemHtml.LastIndexOf(Opening, StringComparison.Ordinal) == 0 && StemHtml.IndexOf(Closing, StringComparison.Ordinal) == StemHtml.Length - Closing.Length
            ? StemHtml[Opening.Length..^Closing.Length]
            : null;

    /// <summary>The question as it is to be shown.</summary>
    /// <param name="question">Which.</param>
    /// <param name="drawn">The order of its options.</param>
    /// <param name="language">In which language.</param>
    /// <param name="answered">What was answered or posted.</param>
    /// <param name="fault">Why what was posted cannot be kept, or null.</param>
    public static ShownQuestion Of(Question question, DrawnQuestion drawn, Language language, AnswerForm answered, AnswerFault? fault = null)
    {
        var words = question.Words[language];
        return new(
            question.Key switch
            {
                QuestionKey.One => AnsweredBy.One,
                QuestionKey.Several => AnsweredBy.Several,
                QuestionKey.Order => AnsweredBy.Order,
                QuestionKey.Number => AnsweredBy.Number,
                QuestionKey.Match => AnsweredBy.Match,
                QuestionKey.Spot => AnsweredBy.Spot,
                _ => throw new UnreachableException(),
            },
            words.StemHtml,
            [.. drawn.OptionsOf(question).Select((id, index) => new ShownOption(
                id,
                index + 1,
                words.OptionHtml[id],
                answered.Chosen.Contains(id),
                answered.Place.GetValueOrDefault(id) ?? "",
                answered.Match.GetValueOrDefault(id) ?? ""))],
            (question.Key as QuestionKey.Number)?.Unit ?? "",
            answered.Typed ?? "",
            fault)
        {
            Matches = [.. drawn.MatchesOf(question).Select(id => new ShownMatch(id, words.MatchText[id]))],
            FigureHtml = words.Figure?.ToHtml(drawn.OptionIds) ?? "",
        };
    }
}

/// <summary>One option of a shown question.</summary>
/// <param name="Id">What is posted.</param>
/// <param name="Number">Its place in the list, from 1; the number on the figure of a spot.</param>
/// <param name="Html">Its words, as safe HTML.</param>
/// <param name="IsChosen">For one or several answers and for a spot.</param>
/// <param name="Place">For steps: the number given to it; empty where none was.</param>
/// <param name="MatchId">For pairs: the match chosen for it; empty where none was.</param>
public sealed record ShownOption(string Id, int Number, string Html, bool IsChosen, string Place, string MatchId);

/// <summary>Something that can be matched.</summary>
/// <param name="Id">What is posted.</param>
/// <param name="Text">Its words.</param>
public sealed record ShownMatch(string Id, string Text);
