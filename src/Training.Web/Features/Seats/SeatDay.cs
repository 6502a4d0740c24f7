using Training.Certification;

namespace Training.Web.Features.Seats;

/// <summary>A class as the pages of seats show it.</summary>
/// <param name="Id">Which.</param>
/// <param name="CourseId">Of which course.</param>
/// <param name="Time">When, and where people meet.</param>
/// <param name="Site">Where.</param>
/// <param name="Zone">IANA time zone of the site.</param>
/// <param name="Seats">How many there are.</param>
/// <param name="Taken">How many are taken.</param>
/// <param name="Waiting">How many people wait.</param>
/// <param name="Kit">What is needed; empty where nothing is said.</param>
/// <param name="Weather">What the weather asks; empty where nothing is said.</param>
/// <param name="CancelledBecause">Why it does not take place; null where it does.</param>
public sealed record SeatDay(
    Guid Id, string CourseId, ClassTime Time, string Site, string Zone, int Seats, int Taken, int Waiting, string Kit, string Weather, string? CancelledBecause)
{
    /// <summary>Seats that nobody has; never below 0.</summary>
    public int Free => Math.Max(0, Seats - Taken);

    /// <summary>When it ends, on the clocks of the site.</summary>
    public TimeOnly EndsAt
    {
        get
        {
            var zone = TimeZoneInfo.FindSystemTimeZoneById(Zone);
            return TimeOnly.FromDateTime(TimeZoneInfo.ConvertTime(Time.End(zone), zone).DateTime);
        }
    }
}
