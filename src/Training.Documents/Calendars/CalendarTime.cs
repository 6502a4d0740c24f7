using Training.Certification;

namespace Training.Documents;

/// <summary>When an event of a calendar file is. A closed family.</summary>
public abstract record CalendarTime
{
    private CalendarTime()
    {
    }

    /// <summary>A day without a time: it ends where the next begins, so that every program shows that day and no other (RFC 5545, 3.6.1).</summary>
    /// <param name="On">The day.</param>
    public sealed record AllDay(DateOnly On) : CalendarTime;

    /// <summary>By the clocks of a place.</summary>
    /// <param name="Time">When.</param>
    /// <param name="Zone">IANA time zone of the place.</param>
    /// <param name="Location">Where, on one line.</param>
    /// <param name="IsCancelled">It does not take place, or not for who gets the file.</param>
    public sealed record Hours(ClassTime Time, TimeZoneInfo Zone, string Location, bool IsCancelled) : CalendarTime;
}
