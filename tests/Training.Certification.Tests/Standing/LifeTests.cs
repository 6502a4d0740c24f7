using CsCheck;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class LifeTests
{
    private static readonly Period First = Period(1, "2025-05-31", "2026-05-31"); // window from 1 April, grace through 30 June

    private static string Told(KeptCertification kept, string through = "2030-01-01") => string.Join("; ", Life.Of(kept, On(through)).Select(Told));

    private static string Told(LifeEvent happened) => happened.On.ToString("yyyy-MM-dd ") + happened switch
    {
        LifeEvent.Granted granted => $"granted {granted.By.Period.Number}",
        LifeEvent.Renewed renewed => $"renewed {renewed.By.Period.Number}",
        LifeEvent.Superseded superseded => $"superseded {superseded.Earlier.Period.Number} by {superseded.By.Period.Number}",
        LifeEvent.WindowOpened opened => $"window {opened.Of.Period.Number}",
        LifeEvent.Lapsed { RenewableThrough: { } through } => $"lapsed, renewable through {through:yyyy-MM-dd}",
        LifeEvent.Lapsed => "lapsed, whole grant",
        LifeEvent.GraceEnded => "grace ended",
        LifeEvent.Suspended => "suspended",
        LifeEvent.Reinstated => "reinstated",
        LifeEvent.Withdrawn => "withdrawn",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    [Fact]
    public void A_period_that_nobody_renews_opens_its_window_lapses_and_leaves_its_grace() => Assert.Equal(
        "2025-05-31 granted 1; 2026-04-01 window 1; 2026-06-01 lapsed, renewable through 2026-06-30; 2026-07-01 grace ended",
        Told(Kept(Held(First))));

    [Fact]
    public void Without_grace_the_whole_grant_is_due_at_once() => Assert.Equal(
        "2025-05-31 granted 1; 2026-04-01 window 1; 2026-06-01 lapsed, whole grant",
        Told(Kept(Held(First with { Terms = Annual with { Grace = D("P0D") } }))));

    /// <summary>Decided on, and what is told after the window opened.</summary>
    public static TheoryData<string, string> Renewals => new()
    {
        { "2026-04-01", "2026-04-01 renewed 2; 2026-04-01 superseded 1 by 2" },  // the day on which the window opens
        { "2026-05-31", "2026-05-31 renewed 2; 2026-05-31 superseded 1 by 2" },  // the last day
        { "2026-06-01", "2026-06-01 renewed 2" },                                // the day after: lapsed on no day, and nothing to supersede
        { "2026-06-02", "2026-06-01 lapsed, renewable through 2026-06-30; 2026-06-02 renewed 2" },
        { "2026-06-30", "2026-06-01 lapsed, renewable through 2026-06-30; 2026-06-30 renewed 2" },
        { "2026-07-01", "2026-06-01 lapsed, renewable through 2026-06-30; 2026-07-01 grace ended; 2026-07-01 renewed 2" },
    };

    [Theory, MemberData(nameof(Renewals))]
    public void A_later_period_ends_what_the_dates_of_the_earlier_one_bring_about(string decidedOn, string told) => Assert.Equal(
        $"2025-05-31 granted 1; 2026-04-01 window 1; {told}",
        Told(Kept(Held(First, Period(2, decidedOn, "2027-05-31"))), "2026-08-01"));

    [Fact]
    public void A_window_longer_than_the_period_opens_with_it() => Assert.Equal(
        "2026-01-01 granted 1; 2026-01-01 window 1; 2026-01-31 lapsed, renewable through 2026-03-01; 2026-03-02 grace ended",
        Told(Kept(Held(Period(1, "2026-01-01", "2026-01-30")))));

    [Fact]
    public void After_a_withdrawal_dates_bring_about_nothing_until_a_later_decision()
    {
        var kept = Kept(Held(First, Period(2, "2026-09-01", "2027-09-01")).Withdrawn("2026-02-10"));

        Assert.Equal("2025-05-31 granted 1; 2026-02-10 withdrawn; 2026-09-01 renewed 2; 2027-07-03 window 2", Told(kept, "2027-09-01"));
    }

    [Fact]
    public void Suspended_is_told_with_its_end_and_lasts_over_the_last_day() => Assert.Equal(
        "2025-05-31 granted 1; 2026-04-01 window 1; 2026-05-20 suspended; 2026-06-01 lapsed, renewable through 2026-06-30; 2026-06-10 reinstated",
        Told(Kept(Held(First).Suspended("2026-05-20", "2026-06-10")), "2026-06-30"));

    [Fact]
    public void Of_one_day_a_withdrawal_comes_last_and_over_the_dates() => Assert.Equal(
        "2025-05-31 granted 1; 2026-04-01 window 1; 2026-06-01 suspended; 2026-06-01 reinstated; 2026-06-01 withdrawn",
        Told(Kept(Held(First).Withdrawn("2026-06-01").Suspended("2026-06-01", "2026-06-01"))));

    [Fact]
    public void Of_one_day_dates_come_before_what_somebody_did() => Assert.Equal(
        "2025-05-31 granted 1; 2026-04-01 window 1; 2026-06-01 lapsed, renewable through 2026-06-30; 2026-06-01 suspended",
        Told(Kept(Held(First).Suspended("2026-06-01")), "2026-06-01"));

    [Fact]
    public void What_lies_after_the_day_is_not_told() =>
        Assert.Equal("2025-05-31 granted 1; 2026-04-01 window 1", Told(Kept(Held(First)), "2026-05-31"));

    [Fact]
    public void Only_what_somebody_did_says_when_it_came_into_the_records()
    {
        var kept = Kept(Held(First, Period(2, "2026-04-10", "2027-05-31")).Suspended("2026-05-20", "2026-06-10").Withdrawn("2026-07-01"));

        Assert.All(Life.Of(kept, On("2030-01-01")), happened => Assert.Equal(
            happened is LifeEvent.WindowOpened or LifeEvent.Lapsed or LifeEvent.GraceEnded or LifeEvent.Superseded, happened.KeptOn is null));
    }

    /// <summary>The history tells the standing of every day: read back event by event, it gives what the rule gives.</summary>
    [Fact]
    public void The_events_alone_tell_the_standing_of_every_day_of_20000_random_histories() => RandomCase.Any.Sample(
        random =>
        {
            foreach (var held in random.File.Held)
            {
                var last = held.Periods[^1].ExpiresOn.AddDays(40);
                var told = Life.Of(Kept(held), last);
                var days = told.SelectMany(happened => new[] { happened.On.AddDays(-1), happened.On, happened.On.AddDays(1) }).Where(day => day <= last).Distinct();
                Assert.All(days, day => Assert.Equal(Standings.On(held, day), Retold(told, day)));
            }
        },
        iter: 20_000);

    private static Standing? Retold(IEnumerable<LifeEvent> told, DateOnly day)
    {
        Standing? dated = null;
        var (isWithdrawn, number) = (false, 0);
        var open = new List<(KeptSuspension Of, DateOnly? Through)>();
        foreach (var happened in told.Where(happened => happened.On <= day))
        {
            // What an earlier day ended is over before anything of this one.
            open.RemoveAll(one => one.Through < happened.On);
            switch (happened)
            {
                case LifeEvent.Granted granted:
                    (dated, isWithdrawn, number) = (Standing.Current, false, granted.By.Period.Number);
                    break;
                case LifeEvent.Renewed renewed:
                    (dated, isWithdrawn, number) = (Standing.Current, false, renewed.By.Period.Number);
                    break;
                case LifeEvent.WindowOpened opened when opened.Of.Period.Number == number:
                    dated = Standing.RenewalDue;
                    break;
                case LifeEvent.Lapsed:
                    dated = Standing.Lapsed;
                    break;
                case LifeEvent.Suspended suspended:
                    open.Add((suspended.By, null));
                    break;
                case LifeEvent.Reinstated reinstated:
                    open = [.. open.Select(one => one.Of == reinstated.Of ? (one.Of, happened.On) : one)];
                    break;
                case LifeEvent.Withdrawn:
                    isWithdrawn = true;
                    open = [.. open.Select(one => (one.Of, (DateOnly?)happened.On))];
                    break;
            }
        }

        open.RemoveAll(one => one.Through < day);
        if (dated is null) return null;
        return isWithdrawn ? Standing.Withdrawn : open.Count > 0 ? Standing.Suspended : dated;
    }
}
