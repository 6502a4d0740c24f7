namespace Training.Web.Demo;

/// <summary>A clock that runs some days ahead of another: what lapses in the demo can be watched lapsing.</summary>
internal sealed class DemoClock(TimeProvider machine, int daysAhead) : TimeProvider
{
    public override TimeZoneInfo LocalTimeZone => machine.LocalTimeZone;

    public override DateTimeOffset GetUtcNow() => machine.GetUtcNow().AddDays(daysAhead);
}
