using Training.Certification;

namespace Training.Web.Features.Cover;

/// <summary>A forecast as columns along 12 months, in the units of a drawing that is <see cref="Width"/> wide.</summary>
/// <param name="Columns">A run each.</param>
/// <param name="Needs">The line of what is needed, a stretch each.</param>
/// <param name="Months">First days of months.</param>
public sealed record CoverPicture(IReadOnlyList<CoverColumn> Columns, IReadOnlyList<CoverLine> Needs, IReadOnlyList<CoverMonth> Months)
{
    /// <summary>Units of the drawing.</summary>
    public const int Width = 900;

    /// <summary>Units of the drawing.</summary>
    public const int Height = 240;

    /// <summary>Where nobody counts.</summary>
    public const int Ground = 190;

    private const int Top = 60;

    // A month's label has room beside the next where every second one is written.
    private const int MonthStep = 2;

    /// <summary>Draws a forecast.</summary>
    public static CoverPicture Of(CoverForecast forecast)
    {
        var (from, through) = (forecast.Runs[0].From, forecast.Runs[^1].Through);
        var most = Math.Max(1, forecast.Runs.Max(run => Math.Max(run.Handlers, run.Needed)));
        double X(DateOnly day) => Math.Round((double)(day.DayNumber - from.DayNumber) * Width / (through.DayNumber - from.DayNumber + 1), 1);
        double Y(int handlers) => Math.Round(Ground - (double)handlers * (Ground - Top) / most, 1);

        var months = new List<CoverMonth>();
        for (var month = new DateOnly(from.Year, from.Month, 1).AddMonths(1); month <= through; month = month.AddMonths(MonthStep))
            months.Add(new(X(month), month));
        return new(
            [.. forecast.Runs.Select(run => new CoverColumn(X(run.From), X(run.Through.AddDays(1)) - X(run.From), Y(run.Handlers), run.Handlers, run.IsBelow))],
            [.. forecast.Runs.Where(run => run.Needed > 0).Select(run => new CoverLine(X(run.From), X(run.Through.AddDays(1)), Y(run.Needed)))],
            months);
    }
}

/// <summary>One run.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Width">As many days as it lasts.</param>
/// <param name="Y">Upper edge.</param>
/// <param name="Handlers">How many count.</param>
/// <param name="IsBelow">Fewer than needed: drawn open.</param>
public sealed record CoverColumn(double X, double Width, double Y, int Handlers, bool IsBelow);

/// <summary>What is needed, from one edge to another.</summary>
public sealed record CoverLine(double X, double Through, double Y);

/// <summary>The first day of a month.</summary>
public sealed record CoverMonth(double X, DateOnly On);
