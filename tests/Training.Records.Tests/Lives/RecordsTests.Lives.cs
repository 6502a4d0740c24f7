using Training.Certification;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task A_kept_certification_names_decision_rules_evidence_and_the_day_of_each_row()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        // 06:30 in universal time is still the day before in Phoenix.
        var night = new DateTimeOffset(2026, 6, 11, 6, 30, 0, TimeSpan.Zero);
        var id = Guid.CreateVersion7();
        var suspension = new Suspension(new(2026, 6, 1), cast.Lead, "A near miss is looked at.", new(2026, 6, 30), null);
        Assert.IsType<Kept.Stored>(await records.SuspendAsync(id, cast.Worker, cast.CourseId, suspension, night, Cancellation));
        Assert.IsType<Kept.Stored>(await records.ReinstateAsync(
            cast.Worker, cast.CourseId, new(new(2026, 6, 20), cast.OtherLead, "Nothing was found."), night.AddDays(10), Cancellation));

        var kept = Assert.Single(await records.KeptCertificationsAsync(cast.Worker, Cancellation));

        var period = Assert.Single(kept.Periods);
        Assert.Equal(
            (made.Id, Route.Grant, (Guid?)cast.Lead, cast.CourseHash, Cast.Zone, Cast.Today),
            (period.DecisionId, period.Route, period.LeadId, period.CourseHash, period.Zone, period.KeptOn));
        Assert.Equal(((Decision.Granted)made.Decision).RestsOn, period.RestsOn);
        var suspended = Assert.Single(kept.Suspensions);
        Assert.Equal((id, new DateOnly(2026, 6, 10), new DateOnly(2026, 6, 20)), (suspended.Id, suspended.KeptOn, suspended.ReinstatementKeptOn));
        Assert.Equal(suspension with { Reinstatement = new(new(2026, 6, 20), cast.OtherLead, "Nothing was found.") }, suspended.Suspension);
        var answer = StandingOnDay.Of(kept, new(2026, 6, 9));
        Assert.Equal((Standing.Suspended, Standing.Current), (answer.Standing, answer.KnownThen));
        Assert.Same(suspended, Assert.IsType<LifeEvent.Suspended>(Assert.Single(answer.Later)).By);
    }
}
