using System.Globalization;

namespace Training.Web.Features.Statistics;

/// <summary>Things as dots by two values; those to look at are drawn otherwise and named. The table beside it says the same.</summary>
/// <param name="Label">What it shows, in a sentence.</param>
/// <param name="AcrossWords">What grows to the right.</param>
/// <param name="UpWords">What grows upwards.</param>
/// <param name="Dots">The named last, so that they lie on top.</param>
/// <param name="Across">Beside the lower edge.</param>
/// <param name="Up">Beside the left edge.</param>
/// <param name="Nought">Where the second value is 0.</param>
public sealed record DotChart(
    string Label,
    string AcrossWords,
    string UpWords,
    IReadOnlyList<ChartDot> Dots,
    IReadOnlyList<ChartTick> Across,
    IReadOnlyList<ChartTick> Up,
    double Nought)
{
    /// <summary>Width of the drawing.</summary>
    public const int Width = 900;

    /// <summary>Height of the drawing.</summary>
    public const int Height = 520;

    /// <summary>Lower edge of the field.</summary>
    public const int Ground = 430;

    /// <summary>Left edge of the field.</summary>
    public const int Left = 80;

    /// <summary>Right edge of the field.</summary>
    public const int Right = 870;

    private const int Top = 40;

    /// <summary>The picture of shares (0–1) against correlations (−1 to 1).</summary>
    /// <param name="points">Each with what names it where it is to be looked at.</param>
    /// <param name="label">What it shows.</param>
    /// <param name="acrossWords">What the shares are.</param>
    /// <param name="upWords">What the correlations are.</param>
    public static DotChart Of(IReadOnlyList<(double Share, double Correlation, string? Name)> points, string label, string acrossWords, string upWords)
    {
        var across = new ChartAxis(0, 1, Left, Right);
        var up = new ChartAxis(-0.6, 1, Ground, Top);
        return new(
            label,
            acrossWords,
            upWords,
            [.. points.OrderBy(point => point.Name is not null).Select(point => new ChartDot(across.At(point.Share), up.At(point.Correlation), point.Name))],
            across.Ticks(0.2, value => value.ToString("0 %", CultureInfo.CurrentCulture)),
            up.Ticks(0.2, value => (Math.Round(value, 1) + 0.0).ToString("0.0", CultureInfo.CurrentCulture)),
            up.At(0));
    }
}

/// <summary>One thing in a picture.</summary>
/// <param name="X">Across.</param>
/// <param name="Y">Down.</param>
/// <param name="Name">What is written beside it; null where nothing is to be looked at.</param>
public sealed record ChartDot(double X, double Y, string? Name);
