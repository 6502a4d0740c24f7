using System.Globalization;
using Training.Scoring;

namespace Training.Web.Features.Statistics;

/// <summary>How many people reached each score, with the cut and the band of one standard error round it. The table beside it says the same.</summary>
/// <param name="Label">What it shows, in a sentence.</param>
/// <param name="Columns">One for each score that somebody may reach.</param>
/// <param name="Cut">Where the cut lies: left of the score that passes.</param>
/// <param name="CutWords">What is written at the cut.</param>
/// <param name="Band">One standard error to both sides of the score that passes; null where it is not known.</param>
/// <param name="Scores">Beside the lower edge.</param>
/// <param name="People">Beside the left edge.</param>
public sealed record ScoreChart(
    string Label,
    IReadOnlyList<ChartColumn> Columns,
    double Cut,
    string CutWords,
    (double X, double Width)? Band,
    IReadOnlyList<ChartTick> Scores,
    IReadOnlyList<ChartTick> People)
{
    /// <summary>Width of the drawing.</summary>
    public const int Width = 900;

    /// <summary>Height of the drawing.</summary>
    public const int Height = 400;

    /// <summary>Lower edge of the columns.</summary>
    public const int Ground = 330;

    private const int Left = 70;
    private const int Right = 885;
    private const int Top = 50;
    private const int MostMarks = 10;

    /// <summary>The picture of a distribution.</summary>
    /// <param name="scores">At least one person.</param>
    /// <param name="passMark">The score that passes.</param>
    /// <param name="standardError">In points, or not known.</param>
    /// <param name="label">What it shows.</param>
    /// <param name="cutWords">What is written at the cut.</param>
    public static ScoreChart Of(ScoreDistribution scores, int passMark, Estimate<double> standardError, string label, string cutWords)
    {
        var across = new ChartAxis(-0.5, scores.Items + 0.5, Left, Right);
        var most = scores.Counts.Max();
        var up = new ChartAxis(0, Math.Max(1, most), Ground, Top);
        return new(
            label,
            [.. scores.Counts.Select((people, score) => new ChartColumn(
                across.At(score - 0.42), up.At(people), across.At(score + 0.42) - across.At(score - 0.42), Ground - up.At(people), score >= passMark))
                .Where(column => column.Height > 0)],
            across.At(passMark - 0.5),
            cutWords,
            standardError is Estimate<double>.Known(var error)
                ? (across.At(passMark - error), across.At(passMark + error) - across.At(passMark - error))
                : null,
            [.. Marks(scores.Items).Select(score => new ChartTick(across.At(score), score.ToString(CultureInfo.CurrentCulture)))],
            [.. Marks(most).Select(people => new ChartTick(up.At(people), people.ToString(CultureInfo.CurrentCulture)))]);
    }

    // Round steps of 1, 2, 5, 10 …: as many as leave room for their figures.
    private static IEnumerable<long> Marks(long greatest)
    {
        var step = 1L;
        for (var turn = 0; greatest / step > MostMarks; turn++) step = turn % 3 == 1 ? step / 2 * 5 : step * 2;
        for (var mark = 0L; mark <= greatest; mark += step) yield return mark;
    }
}

/// <summary>One column.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Y">Upper edge.</param>
/// <param name="Width">Across.</param>
/// <param name="Height">Down to the ground.</param>
/// <param name="IsPass">From the cut on.</param>
public sealed record ChartColumn(double X, double Y, double Width, double Height, bool IsPass);
