using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class StandingsTests
{
    private static readonly HeldCertification Once = Held(Period(1, "2025-05-31", "2026-05-31"));
    private static readonly HeldCertification Renewed = Held(Period(1, "2025-05-31", "2026-05-31"), Period(2, "2026-04-10", "2027-05-31"));

    public static TheoryData<string, Standing?> Days => new()
    {
        { "2025-05-30", null },
        { "2025-05-31", Standing.Current },
        { "2026-03-31", Standing.Current },
        { "2026-04-01", Standing.RenewalDue },
        { "2026-05-31", Standing.RenewalDue }, // current through its last day
        { "2026-06-01", Standing.Lapsed },     // grace is not current
        { "2040-01-01", Standing.Lapsed },
    };

    [Theory, MemberData(nameof(Days))]
    public void Dates_alone_make_a_standing(string day, Standing? standing) => Assert.Equal(standing, Standings.On(Once, On(day)));

    public static TheoryData<string, Standing> Renewed_days => new()
    {
        { "2026-04-09", Standing.RenewalDue },
        { "2026-04-10", Standing.Current }, // the newer period counts from its first day
        { "2026-06-01", Standing.Current },
        { "2027-04-01", Standing.RenewalDue },
        { "2027-06-01", Standing.Lapsed },
    };

    [Theory, MemberData(nameof(Renewed_days))]
    public void An_early_renewal_counts_from_its_first_day(string day, Standing standing) =>
        Assert.Equal(standing, Standings.On(Renewed, On(day)));

    public static TheoryData<string, Standing> Suspended_days => new()
    {
        { "2026-01-09", Standing.Current },
        { "2026-01-10", Standing.Suspended },
        { "2026-01-20", Standing.Suspended }, // the day of the reinstatement
        { "2026-01-21", Standing.Current },
        { "2026-05-20", Standing.Suspended }, // over renewal due
        { "2026-06-01", Standing.Suspended }, // over lapsed
        { "2030-01-01", Standing.Suspended },
    };

    [Theory, MemberData(nameof(Suspended_days))]
    public void A_day_touched_by_a_suspension_is_suspended(string day, Standing standing) =>
        Assert.Equal(standing, Standings.On(Once.Suspended("2026-01-10", "2026-01-20").Suspended("2026-05-20"), On(day)));

    [Fact]
    public void A_suspension_of_one_day_touches_that_day()
    {
        var held = Once.Suspended("2026-01-10", "2026-01-10");

        Assert.Equal(
            [Standing.Current, Standing.Suspended, Standing.Current],
            new[] { "2026-01-09", "2026-01-10", "2026-01-11" }.Select(day => Standings.On(held, On(day))));
    }

    [Fact]
    public void A_suspension_lasts_over_a_renewal() =>
        Assert.Equal(Standing.Suspended, Standings.On(Renewed.Suspended("2026-04-09"), On("2026-06-15")));

    public static TheoryData<string, Standing> Withdrawn_days => new()
    {
        { "2026-02-09", Standing.Suspended },
        { "2026-02-10", Standing.Withdrawn }, // first day withdrawn; over suspended
        { "2026-02-11", Standing.Withdrawn },
        { "2026-08-31", Standing.Withdrawn }, // over lapsed
        { "2026-09-01", Standing.Current },   // a later decision ends it, and the suspension that it settled
        { "2027-09-02", Standing.Lapsed },
    };

    [Theory, MemberData(nameof(Withdrawn_days))]
    public void A_withdrawal_lasts_until_a_later_decision(string day, Standing standing)
    {
        var held = Held(Period(1, "2025-05-31", "2026-05-31"), Period(2, "2026-09-01", "2027-09-01"))
            .Suspended("2026-02-10").Withdrawn("2026-02-10").Suspended("2026-02-10");
        held = held with { Suspensions = [held.Suspensions[0] with { From = On("2026-02-01") }, held.Suspensions[1]] };

        Assert.Equal(standing, Standings.On(held, On(day)));
    }

    [Fact]
    public void A_withdrawal_on_the_day_of_a_decision_withdraws_what_was_decided()
    {
        var held = Renewed.Withdrawn("2026-04-10");

        Assert.Equal(Standing.RenewalDue, Standings.On(held, On("2026-04-09")));
        Assert.Equal(Standing.Withdrawn, Standings.On(held, On("2026-04-10")));
        Assert.Equal(Standing.Withdrawn, Standings.On(held, On("2026-12-01")));
    }

    [Fact]
    public void A_suspension_after_the_withdrawal_still_binds_what_is_decided_later()
    {
        var held = Held(Period(1, "2025-05-31", "2026-05-31"), Period(2, "2026-09-01", "2027-09-01"))
            .Withdrawn("2026-02-10").Suspended("2026-02-11");

        Assert.Equal(Standing.Suspended, Standings.On(held, On("2026-09-01")));
    }

    public static TheoryData<string, string?> Expiries => new()
    {
        { "2025-05-30", null },
        { "2025-05-31", "2026-05-31" },
        { "2026-04-09", "2026-05-31" },
        { "2026-04-10", "2027-05-31" },
        { "2030-01-01", "2027-05-31" },
    };

    [Theory, MemberData(nameof(Expiries))]
    public void The_last_day_is_that_of_the_last_period_that_has_started(string day, string? expiresOn)
    {
        var expected = expiresOn is null ? (DateOnly?)null : On(expiresOn);

        Assert.Equal(expected, Standings.ExpiresOn(Renewed, On(day)));
        Assert.Equal(expected, Standings.ExpiresOn(Renewed.Suspended("2025-06-01").Withdrawn("2025-07-01"), On(day)));
    }

    [Fact]
    public void Of_two_periods_from_one_day_the_later_number_counts() =>
        Assert.Equal(2, Standings.FindPeriod(Held(Period(1, "2026-01-01", "2026-12-31"), Period(2, "2026-01-01", "2027-01-01")), On("2026-01-01"))?.Number);

    [Fact]
    public void Window_and_grace_count_from_the_last_day_in_one_step()
    {
        var period = Period(1, "2025-03-31", "2026-03-31") with { Terms = new(D("P12M"), D("P1M"), D("P3M")) };

        Assert.Equal(On("2026-02-28"), period.WindowOpensOn);
        Assert.Equal(On("2026-06-30"), period.GraceEndsOn);
    }

    [Fact]
    public void Periods_that_are_no_chain_are_a_broken_promise()
    {
        var first = Period(1, "2025-05-31", "2026-05-31");
        HeldCertification[] broken =
        [
            Held(),
            Held(first, first),
            Held(Period(2, "2025-05-31", "2026-05-31")),
            Held(first, Period(2, "2025-05-30", "2026-06-30")),
            Held(first with { DecidedOn = On("2025-05-30") }),
        ];

        Assert.All(broken, held => Assert.Throws<ArgumentException>(() => Standings.On(held, On("2026-01-01"))));
    }
}
