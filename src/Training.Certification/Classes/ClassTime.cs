namespace Training.Certification;

/// <summary>When and where a class is held, as somebody who comes must know it.</summary>
/// <param name="HeldOn">The day, in the site's zone.</param>
/// <param name="StartsAt">The time of day, on the clocks of the site.</param>
/// <param name="LengthMinutes">How long it lasts, in minutes that pass: 1 or more.</param>
/// <param name="MeetingPlace">Where people meet, in a lead's words; empty where nothing is said.</param>
/// <remarks>Rule: docs/rules.md, "Class days".</remarks>
public sealed record ClassTime(DateOnly HeldOn, TimeOnly StartsAt, int LengthMinutes, string MeetingPlace)
{
    /// <summary>
    /// The instant of the start. A time of day that the clocks of the zone skip is read with the offset before the gap; one that they show
    /// twice means the first (RFC 5545, 3.3.5).
    /// </summary>
    public DateTimeOffset Start(TimeZoneInfo zone)
    {
        var local = HeldOn.ToDateTime(StartsAt);
        var offset = zone.IsInvalidTime(local) ? zone.GetUtcOffset(local.AddDays(-1))
            : zone.IsAmbiguousTime(local) ? zone.GetAmbiguousTimeOffsets(local).Max()
            : zone.GetUtcOffset(local);
        return new DateTimeOffset(local, offset).ToUniversalTime();
    }

    /// <summary>The instant of the end: so many minutes later, whatever the clocks do meanwhile.</summary>
    public DateTimeOffset End(TimeZoneInfo zone) => Start(zone).AddMinutes(LengthMinutes);
}
