namespace Training.Certification;

/// <summary>Maps instants to the calendar days that every rule counts in.</summary>
public static class DecisionDay
{
    /// <summary>The calendar day that an instant falls on in a zone: the zone of the decision, kept with it.</summary>
    /// <remarks>Rule: docs/rules.md, "Validity". One instant can be two dates on two sites.</remarks>
    public static DateOnly On(DateTimeOffset instant, TimeZoneInfo zone) =>
        DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(instant, zone).DateTime);
}
