namespace Training.Documents.Credentials;

/// <summary>The instants between which a calendar day lasts in a time zone.</summary>
/// <remarks>
/// A credential ends at an instant, a certification with a day. Its last day is written as 23:59:59 with the offset of that moment:
/// it costs one second and shows everybody the right day, whereas the midnight after shows the wrong one.
/// </remarks>
public static class DayBounds
{
    /// <summary>The first second of a day: midnight, or the first moment that the clocks of the zone do show; the earlier of two.</summary>
    /// <param name="day">A calendar day of the zone.</param>
    /// <param name="zone">An IANA zone.</param>
    public static DateTimeOffset FirstSecond(DateOnly day, TimeZoneInfo zone)
    {
        var local = day.ToDateTime(TimeOnly.MinValue);
        // Some zones move their clocks at midnight, so that a day begins at one.
        while (zone.IsInvalidTime(local)) local = local.AddMinutes(1);
        return new(local, zone.IsAmbiguousTime(local) ? zone.GetAmbiguousTimeOffsets(local).Max() : zone.GetUtcOffset(local));
    }

    /// <summary>The last second of a day: 23:59:59, the later of two.</summary>
    /// <param name="day">A calendar day of the zone.</param>
    /// <param name="zone">An IANA zone.</param>
    public static DateTimeOffset LastSecond(DateOnly day, TimeZoneInfo zone)
    {
        var local = day.ToDateTime(new TimeOnly(23, 59, 59));
        // Clocks that are put back at midnight show the last hour twice; the day ends with the second.
        return new(local, zone.IsAmbiguousTime(local) ? zone.GetAmbiguousTimeOffsets(local).Min() : zone.GetUtcOffset(local));
    }
}
