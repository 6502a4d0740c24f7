using System.Globalization;
using Training.Certification;
using Training.Web.Features.Statistics;

namespace Training.Web.Features.Encounters;

/// <summary>Encounters by month as columns: near misses and bites open, standing on all others, which are solid. The table beside it says the same.</summary>
/// <param name="Label">What it shows, in a sentence.</param>
/// <param name="Columns">Solid and open ones.</param>
/// <param name="Months">Below the columns.</param>
/// <param name="Counts">Beside the left edge.</param>
public sealed record MonthChart(string Label, IReadOnlyList<ChartColumn> Columns, IReadOnlyList<ChartTick> Months, IReadOnlyList<ChartTick> Counts)
{
    /// <summary>Width of the drawing.</summary>
    public const int Width = 900;

    /// <summary>Height of the drawing.</summary>
    public const int Height = 360;

    /// <summary>Lower edge of the columns.</summary>
    public const int Ground = 300;

    private const int Left = 70;
    private const int Right = 885;
    private const int Top = 30;
    private const int MostWrittenMonths = 12;

    /// <summary>The picture.</summary>
    /// <param name="months">Oldest first; at least one.</param>
    /// <param name="label">What it shows.</param>
    /// <param name="words">Writes a month.</param>
    public static MonthChart Of(IReadOnlyList<EncounterTally<DateOnly>> months, string label, Func<DateOnly, string> words)
    {
        var across = new ChartAxis(-0.5, months.Count - 0.5, Left, Right);
        var most = Math.Max(1, months.Max(month => month.All));
        var up = new ChartAxis(0, most, Ground, Top);
        var step = Math.Max(1, (int)Math.Ceiling(most / 5.0));
        var skip = (months.Count + MostWrittenMonths - 1) / MostWrittenMonths;
        return new(
            label,
            [.. months.SelectMany((month, place) => Stack(month, place, across, up)).Where(column => column.Height > 0)],
            [.. months.Index().Where(month => month.Index % skip == 0).Select(month => new ChartTick(across.At(month.Index), words(month.Item.Of)))],
            up.Ticks(step, count => count.ToString("N0", CultureInfo.CurrentCulture)));
    }

    private static IEnumerable<ChartColumn> Stack(EncounterTally<DateOnly> month, int place, ChartAxis across, ChartAxis up)
    {
        var close = month.Count(EncounterKind.NearMiss) + month.Count(EncounterKind.Bite);
        var (x, width) = (across.At(place - 0.36), across.At(place + 0.36) - across.At(place - 0.36));
        var calm = up.At(month.All - close);
        yield return new(x, calm, width, Ground - calm, IsPass: true);
        yield return new(x, up.At(month.All), width, calm - up.At(month.All), IsPass: false);
    }
}
