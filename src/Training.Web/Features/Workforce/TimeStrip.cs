using Training.Certification;

namespace Training.Web.Features.Workforce;

/// <summary>A certification's time as bars on a strip, in the units of a drawing that is <see cref="Width"/> wide.</summary>
/// <param name="Bars">Periods; the later part of one that was renewed early is the next one's.</param>
/// <param name="Grace">After the last period, while renewal is still open; null where it never is.</param>
/// <param name="Suspended">Suspensions.</param>
/// <param name="Years">First days of years that lie on the strip.</param>
/// <param name="Today">Where today is.</param>
public sealed record TimeStrip(
    IReadOnlyList<StripBar> Bars, StripBar? Grace, IReadOnlyList<StripBar> Suspended, IReadOnlyList<StripMark> Years, double Today)
{
    /// <summary>Units of the drawing.</summary>
    public const int Width = 900;

    // Between two labels of years there is room for the label.
    private const int MostYears = 8;

    private const int DaysAround = 30;

    /// <summary>Draws from a month before the first day to a month after the last, today included.</summary>
    public static TimeStrip Of(HeldCertification held, DateOnly today)
    {
        var last = held.Periods[^1];
        var from = Earlier(held.Periods[0].StartsOn, today).AddDays(-DaysAround);
        var through = Later(last.GraceEndsOn, today).AddDays(DaysAround);
        double At(DateOnly day) => Math.Round((double)(day.DayNumber - from.DayNumber) * Width / (through.DayNumber - from.DayNumber), 1);
        StripBar Bar(DateOnly first, DateOnly lastDay) => new(At(first), Math.Max(2, Math.Round(At(lastDay.AddDays(1)) - At(first), 1)));

        var hasGrace = last.GraceEndsOn > last.ExpiresOn && !held.Withdrawals.Any(row => row.On >= last.StartsOn);
        var years = Enumerable.Range(from.Year + 1, through.Year - from.Year).ToList();
        var every = (years.Count + MostYears - 1) / MostYears;
        return new(
            [.. held.Periods.Select((period, index) => Bar(period.StartsOn, EndOf(held, index)))],
            hasGrace ? Bar(last.ExpiresOn.AddDays(1), last.GraceEndsOn) : null,
            [.. held.Suspensions.Select(suspension => Bar(suspension.From, Later(suspension.From, suspension.Reinstatement?.On ?? today)))],
            [.. years.Where((_, index) => index % every == 0).Select(year => new StripMark(At(new(year, 1, 1)), year))],
            At(today));
    }

    private static DateOnly EndOf(HeldCertification held, int index)
    {
        var period = held.Periods[index];
        var cut = held.Withdrawals.Where(row => row.On >= period.StartsOn).Select(row => row.On.AddDays(-1));
        if (index + 1 < held.Periods.Count) cut = cut.Append(held.Periods[index + 1].StartsOn.AddDays(-1));
        return Later(period.StartsOn, cut.Append(period.ExpiresOn).Min());
    }

    private static DateOnly Earlier(DateOnly one, DateOnly other) => one < other ? one : other;

    private static DateOnly Later(DateOnly one, DateOnly other) => one > other ? one : other;
}

/// <summary>A stretch of the strip.</summary>
/// <param name="X">Left edge.</param>
/// <param name="Width">At least 2, so that one day is seen.</param>
public sealed record StripBar(double X, double Width);

/// <summary>A mark of the strip.</summary>
/// <param name="X">Where.</param>
/// <param name="Year">Its label.</param>
public sealed record StripMark(double X, int Year);
