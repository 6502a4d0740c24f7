using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class StandingOnDayTests
{
    private static readonly KeptCertification Renewed = Kept(Held(Period(1, "2025-05-31", "2026-05-31"), Period(2, "2026-04-10", "2027-05-31")));

    private static KeptCertification Suspended(string knownOn, string? endKnownOn = null) => Kept(Held(Period(1, "2025-05-31", "2026-05-31"))) with
    {
        Suspensions =
        [
            new(Id(6000), new(On("2026-03-10"), Lead, "asked for", On("2026-03-31"), endKnownOn is null ? null : new(On("2026-03-20"), Lead, "settled")),
                On(knownOn), endKnownOn is null ? null : On(endKnownOn)),
        ],
    };

    public static TheoryData<string, Standing?, int?, bool> Days => new()
    {
        { "2025-05-30", null, null, false },
        { "2025-05-31", Standing.Current, 1, true },
        { "2026-04-09", Standing.RenewalDue, 1, true }, // the window takes nothing from being current
        { "2026-04-10", Standing.Current, 2, true },
        { "2027-05-31", Standing.RenewalDue, 2, true },
        { "2027-06-01", Standing.Lapsed, 2, false },
    };

    [Theory, MemberData(nameof(Days))]
    public void The_answer_names_the_period_that_the_day_belongs_to(string day, Standing? standing, int? period, bool isCurrent)
    {
        var answer = StandingOnDay.Of(Renewed, On(day));

        Assert.Equal((standing, period, isCurrent), (answer.Standing, answer.Period?.Period.Number, answer.IsCurrent));
        Assert.Equal(standing, answer.KnownThen);
        Assert.Empty(answer.Later);
    }

    /// <summary>The table of docs/rules.md: known on, its end known on, asked for, then and now.</summary>
    public static TheoryData<string, string, string, Standing, Standing> Known => new()
    {
        { "2026-03-10", "2026-03-20", "2026-03-15", Standing.Suspended, Standing.Suspended },
        { "2026-03-18", "2026-03-20", "2026-03-15", Standing.Current, Standing.Suspended },
        { "2026-03-18", "2026-03-20", "2026-03-17", Standing.Current, Standing.Suspended },
        { "2026-03-18", "2026-03-20", "2026-03-18", Standing.Suspended, Standing.Suspended }, // written down on that very day
        { "2026-03-10", "2026-03-25", "2026-03-15", Standing.Suspended, Standing.Suspended },
        { "2026-03-10", "2026-03-25", "2026-03-20", Standing.Suspended, Standing.Suspended },
        { "2026-03-10", "2026-03-25", "2026-03-21", Standing.Suspended, Standing.Current },
        { "2026-03-10", "2026-03-25", "2026-03-25", Standing.Current, Standing.Current },
    };

    [Theory, MemberData(nameof(Known))]
    public void What_was_written_down_later_was_not_known_then(string knownOn, string endKnownOn, string day, Standing then, Standing now)
    {
        var answer = StandingOnDay.Of(Suspended(knownOn, endKnownOn), On(day));

        Assert.Equal((then, now, then != now), (answer.KnownThen, answer.Standing, answer.WasSeenOtherwise));
        Assert.Equal(On(day) < On(knownOn) || On(day) >= On("2026-03-20") && On(day) < On(endKnownOn) ? 1 : 0, answer.Later.Count);
    }

    [Fact]
    public void A_suspension_and_a_withdrawal_are_named_where_they_are_the_standing()
    {
        var suspended = Suspended("2026-03-10");
        var withdrawn = suspended with { Withdrawals = [new(Id(7000), new(On("2026-03-12"), Lead, Id(201), "asked for"), On("2026-03-12"))] };

        Assert.Same(suspended.Suspensions[0], StandingOnDay.Of(suspended, On("2026-03-12")).Suspension);
        Assert.Null(StandingOnDay.Of(suspended, On("2026-03-09")).Suspension);
        var answer = StandingOnDay.Of(withdrawn, On("2026-03-12"));
        Assert.Null(answer.Suspension);
        Assert.Same(withdrawn.Withdrawals[0], answer.Withdrawal);
        Assert.Null(StandingOnDay.Of(withdrawn, On("2026-03-11")).Withdrawal);
    }

    [Fact]
    public void A_decision_that_was_kept_later_was_not_known_then()
    {
        var late = Renewed with { Periods = [Renewed.Periods[0], Renewed.Periods[1] with { KeptOn = On("2026-06-03") }] };

        var answer = StandingOnDay.Of(late, On("2026-06-01"));

        Assert.Equal((Standing.Current, Standing.Lapsed), (answer.Standing, answer.KnownThen));
        Assert.Same(late.Periods[1], Assert.IsType<LifeEvent.Renewed>(Assert.Single(answer.Later)).By);
    }

    [Fact]
    public void A_period_is_known_only_together_with_those_before_it()
    {
        var crossed = Renewed with { Periods = [Renewed.Periods[0] with { KeptOn = On("2026-05-01") }, Renewed.Periods[1]] };

        Assert.Null(crossed.AsKnownOn(On("2026-04-30")));
        Assert.Null(StandingOnDay.Of(crossed, On("2026-04-30")).KnownThen);
        Assert.Equal(2, crossed.AsKnownOn(On("2026-05-01"))?.Periods.Count);
    }
}
