using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using Training.Courses;
using Training.Scoring;
using Training.Web.Features.Statistics;

namespace Training.Web.Features.QuizStatistics;

/// <summary>
/// Writes the answers and figures of a quiz for an outside statistician: plain RFC 4180 for programs, columns named in English whatever the page's
/// language, with a codebook. Nobody's name, number or date of a sitting leaves with it.
/// </summary>
public static class StatisticsFiles
{
    /// <summary>Columns of the three files with their meaning: what the codebook says.</summary>
    public static IReadOnlyList<(string File, string Column, string Meaning, string Values)> Codebook { get; } =
    [
        ("answers", "sitting", "A sitting: each person's first at this quiz. Numbered anew in each file; says nothing of who or when.", "whole number from 1"),
        ("answers", "passed", "Whether the sitting was passed, by its latest result.", "1 yes, 0 no"),
        ("answers", "place", "Place of the question in the order shown.", "whole number from 1"),
        ("answers", "question", "Id of the question in its course folder.", "text"),
        ("answers", "version", "SHA-256 of the text of the question as it was shown.", "64 hexadecimal digits"),
        ("answers", "mark", "How the answer was marked.", "Right, Wrong, Blank (no answer), Late (after the time limit)"),
        ("answers", "score", "The mark as points.", "1 right, 0 otherwise"),
        ("answers", "chosen", "Ids of the options chosen, joined by a semicolon; for pairs option=match; empty for a number and a blank.", "text"),
        ("answers", "language", "Language in which it was answered; empty where it was not.", "en, es"),
        ("answers", "seconds", "From the answer kept before it, or the start, to this one; empty without an answer.", "seconds, whole"),
        ("questions", "question", "Id of the question.", "text"),
        ("questions", "version", "SHA-256 of its text.", "64 hexadecimal digits"),
        ("questions", "asked", "Sittings in which it was asked.", "whole number"),
        ("questions", "right", "Of these, answered right.", "whole number"),
        ("questions", "unanswered", "Of these, blank or late.", "whole number"),
        ("questions", "difficulty", "Share right.", "0 to 1; empty where it cannot be computed"),
        ("questions", "difficulty_low", "Lower limit of the 95 % Wilson interval of the share right.", "0 to 1; empty where it cannot be computed"),
        ("questions", "difficulty_high", "Upper limit of the same.", "0 to 1; empty where it cannot be computed"),
        ("questions", "discrimination", "Correlation of right (1 or 0) with the share right of the other questions of the sitting.", "-1 to 1; empty where it cannot be computed"),
        ("questions", "upper_lower", "Share right of the best 27 % less that of the weakest 27 %, by the other questions; ties share the seats.", "-1 to 1; empty where it cannot be computed"),
        ("questions", "exposure", "Share of sittings in which it was asked.", "0 to 1"),
        ("questions", "language_odds", "Odds of a right answer in English over those in Spanish, common to five bands of the share right of the other questions (Mantel and Haenszel).", "above 0; above 1 Spanish is harder; empty where it cannot be computed"),
        ("questions", "median_seconds", "Median of seconds.", "seconds, whole; 900 stands for 900 and more"),
        ("questions", "flags", "Why to look at it, joined by a semicolon.", "text; TooFew: fewer than 30 answers, no other flag is set"),
    ];

    /// <summary>The codebook.</summary>
    public static byte[] WriteCodebook() =>
        PlainFile.Write([["file", "column", "meaning", "values"], .. Codebook.Select(row => (string[])[row.File, row.Column, row.Meaning, row.Values])]);

    /// <summary>One row for each text of a question.</summary>
    public static byte[] WriteQuestions(QuizAnalysis analysis) => PlainFile.Write(
    [
        HeadingOf("questions"),
        .. analysis.Questions.Select(question => (string[])
        [
            question.QuestionId,
            question.Version,
            Whole(question.Asked),
            Whole(question.Right),
            Whole(question.Unanswered),
            Number(question.Difficulty),
            Number(question.Likely.Then<double>(likely => likely.Lower)),
            Number(question.Likely.Then<double>(likely => likely.Upper)),
            Number(question.Discrimination),
            Number(question.UpperLower),
            Number(question.Exposure),
            Number(question.LanguageOdds.Then<double>(odds => odds.OddsRatio)),
            question.MedianSeconds is Estimate<int>.Known(var seconds) ? Whole(seconds) : "",
            string.Join(';', question.Flags.Select(NameOf)),
        ]),
    ]);

    /// <summary>One row for each answer, a sitting at a time, its heading first.</summary>
    public static async IAsyncEnumerable<IReadOnlyList<string[]>> AnswerRows(
        IAsyncEnumerable<AnsweredSitting> sittings, [EnumeratorCancellation] CancellationToken cancellation)
    {
        yield return [HeadingOf("answers")];
        var number = 0;
        await foreach (var sitting in sittings.WithCancellation(cancellation))
        {
            number++;
            var times = sitting.Times();
            yield return [.. sitting.Questions.Select((question, place) => RowOf(number, sitting, question, place, times[place]))];
        }
    }

    private static string[] RowOf(int number, AnsweredSitting sitting, AnsweredQuestion question, int place, TimeSpan? took) =>
    [
        Whole(number),
        sitting.IsPassed ? "1" : "0",
        Whole(place + 1),
        question.QuestionId,
        question.Version,
        question.Mark.ToString(),
        question.Mark is Mark.Right ? "1" : "0",
        string.Join(';', question.OptionIds),
        question.Language is { } language ? language.Tag() : "",
        took is { } time ? Whole((long)time.TotalSeconds) : "",
    ];

    private static string[] HeadingOf(string file) => [.. Codebook.Where(row => row.File == file).Select(row => row.Column)];

    private static string NameOf(QuestionFlag flag) => flag switch
    {
        QuestionFlag.OfFigures figures => figures.Flag.ToString(),
        QuestionFlag.StrongChoose strong => $"StrongChoose {strong.OptionId}",
        QuestionFlag.LanguagesDiffer => "LanguagesDiffer",
        QuestionFlag.NeverChosen never => $"NeverChosen {never.OptionId}",
        _ => throw new UnreachableException(),
    };

    private static string Whole(long number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Number(Estimate<double> value) =>
        value is Estimate<double>.Known(var known) ? known.ToString("R", CultureInfo.InvariantCulture) : "";
}
