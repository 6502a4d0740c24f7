using CsCheck;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class CoverForecastTests
{
    private static readonly DaySpan[] Always = [new(On("2020-01-01"), null)];
    private static readonly DateOnly Today = On("2026-01-01");
    private static readonly DateOnly YearOn = On("2026-12-31");

    /// <summary>The example of the rule: A through 13 January, B through 20 January, C from 17 January.</summary>
    private static CoverForecast Example(int needs = 2) => CoverForecast.Of(
        [
            .. Spans(Held(Period(1, "2025-01-13", "2026-01-13")) with { PersonId = Id(1) }),
            .. Spans(Held(Period(1, "2025-01-20", "2026-01-20")) with { PersonId = Id(2) }),
            .. HandlerDays.Of(Held(Period(1, "2025-12-01", "2026-12-01")) with { PersonId = Id(3) }, [new(On("2026-01-17"), null)], [], Today, YearOn),
        ],
        [new(On("2025-06-01"), needs)], Today, YearOn);

    [Theory]
    [InlineData("2026-01-01", 2, false)]
    [InlineData("2026-01-13", 2, false)] // A's last day
    [InlineData("2026-01-14", 1, true)]
    [InlineData("2026-01-16", 1, true)]
    [InlineData("2026-01-17", 2, false)] // C's first day at the site
    [InlineData("2026-01-20", 2, false)] // B's last day
    [InlineData("2026-01-21", 1, true)]
    [InlineData("2026-12-02", 0, true)]
    public void Each_day_has_its_count(string day, int handlers, bool isBelow)
    {
        var run = Assert.IsType<CoverRun>(Example().On(On(day)));

        Assert.Equal((handlers, isBelow), (run.Handlers, run.IsBelow));
    }

    [Fact]
    public void The_first_day_below_names_who_causes_it_and_why()
    {
        var below = Assert.IsType<CoverRun>(Example().FirstBelow);

        Assert.Equal(On("2026-01-14"), below.From);
        Assert.Equal((Id(1), CoverEnd.Lapses), (Assert.Single(below.Leaving).PersonId, below.Leaving[0].End));
    }

    [Fact]
    public void A_need_of_none_is_never_below() => Assert.Null(Example(needs: 0).FirstBelow);

    [Fact]
    public void Cover_that_is_below_already_has_nobody_who_causes_it()
    {
        var below = Assert.IsType<CoverRun>(Example(needs: 3).FirstBelow);

        Assert.Equal(Today, below.From);
        Assert.Empty(below.Leaving);
    }

    [Fact]
    public void The_need_that_began_last_counts_from_its_first_day()
    {
        var forecast = CoverForecast.Of([], [new(On("2025-01-01"), 1), new(On("2025-06-01"), 2), new(On("2026-03-01"), 0)], Today, YearOn);

        Assert.Equal([(Today, 2), (On("2026-03-01"), 0)], forecast.Runs.Select(run => (run.From, run.Needed)));
        Assert.Equal((On("2026-02-28"), YearOn), (forecast.Runs[0].Through, forecast.Runs[1].Through));
    }

    [Fact]
    public void Days_asked_for_backwards_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CoverForecast.Of([], [], Today, Today.AddDays(-1)));

    [Theory]
    [InlineData("2026-03-31", true)]  // the last valid day
    [InlineData("2026-04-01", false)] // grace counts for nothing
    public void A_handler_counts_through_the_last_day(string day, bool counts) =>
        Assert.Equal(counts, Spans(Held(Period(1, "2025-03-31", "2026-03-31"))).Any(span => span.From <= On(day) && On(day) <= span.Through));

    public static TheoryData<HeldCertification, DaySpan[], DaySpan[], CoverEnd> Ends => new()
    {
        { Held(Period(1, "2025-05-31", "2026-05-31")), Always, [], CoverEnd.Lapses },
        { Held(Period(1, "2025-12-31", "2026-12-31")).Suspended("2026-06-01"), Always, [], CoverEnd.Suspended },
        { Held(Period(1, "2025-12-31", "2026-12-31")).Withdrawn("2026-06-01"), Always, [], CoverEnd.Withdrawn },
        { Held(Period(1, "2025-12-31", "2026-12-31")), [new(On("2025-01-01"), On("2026-05-31"))], [], CoverEnd.LeavesPlace },
        { Held(Period(1, "2025-12-31", "2026-12-31")), Always, [new(On("2026-06-01"), null)], CoverEnd.HeldOff },
        { Held(Period(1, "2025-05-31", "2026-05-31")), [new(On("2025-01-01"), On("2026-05-31"))], [], CoverEnd.Lapses },
        { Held(Period(1, "2025-05-31", "2026-05-31")).Withdrawn("2026-06-01"), Always, [], CoverEnd.Withdrawn },
    };

    [Theory, MemberData(nameof(Ends))]
    public void The_day_after_31_May_says_why(HeldCertification held, DaySpan[] atPlace, DaySpan[] heldOff, CoverEnd end)
    {
        var span = Assert.Single(HandlerDays.Of(held, atPlace, heldOff, Today, YearOn));

        Assert.Equal((Today, On("2026-05-31"), end), (span.From, span.Through, span.End));
    }

    [Theory]
    [InlineData("2026-03-31", "2026-05-31", CoverEnd.Lapses)] // the window opens on 1 April: too early renews nothing
    [InlineData("2026-04-01", "2026-12-31", null)]
    [InlineData("2026-06-30", "2026-12-31", null)]            // the last day of grace
    [InlineData("2026-07-01", "2026-05-31", CoverEnd.Lapses)]
    public void A_seat_renews_only_inside_window_and_grace(string classOn, string through, CoverEnd? end)
    {
        var last = Spans(HandlerDays.IfRenewedOn(Held(Period(1, "2025-05-31", "2026-05-31")), On(classOn)))[^1];

        Assert.Equal((On(through), end), (last.Through, last.End));
    }

    [Fact]
    public void A_seat_keeps_the_anniversary_inside_the_window_and_starts_anew_in_grace()
    {
        var held = Held(Period(1, "2025-05-31", "2026-05-31"));

        Assert.Equal(On("2027-05-31"), HandlerDays.IfRenewedOn(held, On("2026-04-10")).Periods[^1].ExpiresOn);
        Assert.Equal(On("2027-06-10"), HandlerDays.IfRenewedOn(held, On("2026-06-10")).Periods[^1].ExpiresOn);
    }

    [Fact]
    public void A_seat_renews_nothing_that_is_suspended()
    {
        var held = Held(Period(1, "2025-05-31", "2026-05-31")).Suspended("2026-04-01");

        Assert.Same(held, HandlerDays.IfRenewedOn(held, On("2026-05-01")));
    }

    /// <summary>Day by day against the rule's own words: the slow way that runs replace.</summary>
    [Fact]
    public void Runs_say_of_each_day_what_counting_that_day_says() => AnySite.Sample(
        site =>
        {
            var (today, through) = (On("2026-01-01"), On("2026-04-30"));
            var forecast = CoverForecast.Of(
                [.. site.People.SelectMany(person => HandlerDays.Of(person.Held, person.AtPlace, person.HeldOff, today, through))],
                site.Needs, today, through);

            for (var day = today; day <= through; day = day.AddDays(1))
            {
                var run = Assert.Single(forecast.Runs, run => run.From <= day && day <= run.Through);
                Assert.Equal(site.People.Count(person => Counts(person, day)), run.Handlers);
                Assert.Equal(site.Needs.Where(need => need.From <= day).OrderBy(need => need.From).LastOrDefault()?.Handlers ?? 0, run.Needed);
                if (day == run.From && day > today)
                {
                    Assert.Equal(
                        site.People.Where(person => Counts(person, day.AddDays(-1)) && !Counts(person, day)).Select(person => person.Held.PersonId).Order(),
                        run.Leaving.Select(span => span.PersonId));
                }
            }
        },
        iter: 3_000);

    private static bool Counts(Person person, DateOnly day) =>
        Standings.On(person.Held, day) is Standing.Current or Standing.RenewalDue
        && person.AtPlace.Any(span => day >= span.From && (span.Through is null || day <= span.Through))
        && !person.HeldOff.Any(span => day >= span.From && (span.Through is null || day <= span.Through));

    private sealed record Person(HeldCertification Held, DaySpan[] AtPlace, DaySpan[] HeldOff);

    private sealed record Site(Person[] People, HandlerNeed[] Needs);

    private static readonly Gen<DateOnly> AnyDay = Gen.Int[-40, 140].Select(Today.AddDays);

    private static readonly Gen<DaySpan> AnySpan = Gen.Select(AnyDay, Gen.Int[0, 80], Gen.Bool, (from, days, isOpen) => new DaySpan(from, isOpen ? null : from.AddDays(days)));

    private static readonly Gen<HeldCertification> AnyHeld =
        from first in AnyDay
        from lasts in Gen.Int[0, 90]
        from renewedAfter in Gen.Int[0, 120].Nullable()
        from suspended in AnySpan.Array[0, 1]
        from withdrawn in AnyDay.Array[0, 1]
        select new HeldCertification(
            Worker, Handler,
            renewedAfter is { } after
                ? [new(1, first, first, first.AddDays(lasts), Annual), new(2, first.AddDays(after), first.AddDays(after), first.AddDays(after + lasts), Annual)]
                : [new(1, first, first, first.AddDays(lasts), Annual)],
            [.. suspended.Select(span => new Suspension(span.From, Lead, "asked for", span.From.AddDays(30), span.Through is { } end ? new(end, Lead, "settled") : null))],
            [.. withdrawn.Select(day => new Withdrawal(day, Lead, Id(201), "asked for"))]);

    private static readonly Gen<Site> AnySite =
        from people in Gen.Select(AnyHeld, AnySpan.Array[0, 2], AnySpan.Array[0, 2]).Array[0, 6]
        from needs in Gen.Select(AnyDay, Gen.Int[0, 4]).Array[0, 3]
        select new Site(
            [.. people.Select((person, i) => new Person(person.Item1 with { PersonId = Id(i + 1) }, person.Item2, person.Item3))],
            [.. needs.DistinctBy(need => need.Item1).Select(need => new HandlerNeed(need.Item1, need.Item2))]);

    private static IReadOnlyList<HandlerSpan> Spans(HeldCertification held) => HandlerDays.Of(held, Always, [], Today, YearOn);
}
