using Training.Scoring;

namespace Training.Web.Features.Statistics;

/// <summary>One row for each thing: its name, a dot for its value, a line for where the value likely lies. The table beside it says the same.</summary>
/// <param name="Label">What it shows, in a sentence.</param>
/// <param name="Rows">From the top.</param>
/// <param name="Ticks">Beside the lower edge.</param>
/// <param name="Mark">Where the line lies that the values are compared with; null where there is none.</param>
public sealed record RowChart(string Label, IReadOnlyList<ChartRow> Rows, IReadOnlyList<ChartTick> Ticks, double? Mark)
{
    /// <summary>Width of the drawing.</summary>
    public const int Width = 900;

    /// <summary>From one row to the next.</summary>
    public const int RowHeight = 66;

    /// <summary>Left edge of the field.</summary>
    public const int Left = 12;

    /// <summary>Right edge of the field.</summary>
    public const int Right = 880;

    /// <summary>Height of the drawing.</summary>
    public int Height => Ground + 50;

    /// <summary>Lower edge of the field.</summary>
    public int Ground => (Rows.Count * RowHeight) + 14;

    /// <summary>The picture.</summary>
    /// <param name="values">Each with its name; a value that is not known has no dot.</param>
    /// <param name="from">Least value of the picture.</param>
    /// <param name="through">Greatest value of the picture.</param>
    /// <param name="step">From one written value to the next.</param>
    /// <param name="mark">A value to compare with, or null.</param>
    /// <param name="label">What it shows.</param>
    /// <param name="words">Writes a value.</param>
    public static RowChart Of(
        IReadOnlyList<RowValue> values, double from, double through, double step, double? mark, string label, Func<double, string> words)
    {
        var across = new ChartAxis(from, through, Left, Right);
        return new(
            label,
            [.. values.Select((value, row) => new ChartRow(
                (row * RowHeight) + 26,
                value.Name,
                value.Value is Estimate<double>.Known(var known) ? across.At(known) : null,
                value.Likely is Estimate<Interval>.Known(var likely) ? (across.At(likely.Lower), across.At(likely.Upper)) : null,
                value.IsToLookAt))],
            across.Ticks(step, words),
            mark is { } compared ? across.At(compared) : null);
    }
}

/// <summary>One value with its name.</summary>
/// <param name="Name">Of the row.</param>
/// <param name="Value">Or why there is none.</param>
/// <param name="Likely">Where it likely lies, or why that is not known.</param>
/// <param name="IsToLookAt">Drawn so that the eye goes there.</param>
public sealed record RowValue(string Name, Estimate<double> Value, Estimate<Interval> Likely, bool IsToLookAt);

/// <summary>One row of a picture.</summary>
/// <param name="Y">Base line of its name; the dot lies below it.</param>
/// <param name="Name">Of the row.</param>
/// <param name="Dot">Where the value lies, or null.</param>
/// <param name="Line">From where to where it likely lies, or null.</param>
/// <param name="IsToLookAt">Drawn so that the eye goes there.</param>
public sealed record ChartRow(double Y, string Name, double? Dot, (double From, double Through)? Line, bool IsToLookAt);
