using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class LapsesTests
{
    private static HeldCertification Through(string expiresOn, int person = 1) =>
        Held(Period(1, "2025-01-01", expiresOn)) with { PersonId = Id(person) };

    [Theory]
    [InlineData("2026-03-01", false)] // lapsed yesterday
    [InlineData("2026-03-02", true)]  // today is the last day
    [InlineData("2026-03-31", true)]  // the last day asked for
    [InlineData("2026-04-01", false)]
    public void Today_and_the_last_day_asked_for_are_included(string expiresOn, bool isListed) =>
        Assert.Equal(isListed, Lapses.By([Through(expiresOn)], On("2026-03-02"), On("2026-03-31")).Count == 1);

    [Fact]
    public void Days_left_end_with_none() =>
        Assert.Equal(
            [0, 1, 29],
            Lapses.By([Through("2026-03-31"), Through("2026-03-02"), Through("2026-03-03")], On("2026-03-02"), On("2026-03-31"))
                .Select(lapse => lapse.DaysLeft));

    [Fact]
    public void Somebody_renewed_beyond_the_day_is_not_listed_and_lapses_with_the_new_period()
    {
        var renewed = Held(Period(1, "2025-05-31", "2026-05-31"), Period(2, "2026-04-10", "2027-05-31"));

        Assert.Single(Lapses.By([renewed], On("2026-04-09"), On("2026-05-31")));
        Assert.Empty(Lapses.By([renewed], On("2026-04-10"), On("2026-05-31")));
        Assert.Equal(On("2027-05-31"), Assert.Single(Lapses.By([renewed], On("2026-04-10"), On("2027-05-31"))).ExpiresOn);
    }

    [Fact]
    public void Somebody_suspended_is_listed_as_such_and_somebody_withdrawn_is_not()
    {
        var listed = Lapses.By(
            [Through("2026-03-31", 1).Suspended("2026-03-01"), Through("2026-03-31", 2).Withdrawn("2026-03-01"), Through("2026-03-31", 3)],
            On("2026-03-02"), On("2026-03-31"));

        Assert.Equal([(Id(1), Standing.Suspended), (Id(3), Standing.RenewalDue)], listed.Select(lapse => (lapse.PersonId, lapse.Standing)));
    }

    [Fact]
    public void Nobody_is_listed_before_the_first_period_or_for_a_day_in_the_past()
    {
        Assert.Empty(Lapses.By([Through("2026-03-31")], On("2024-12-31"), On("2026-03-31")));
        Assert.Empty(Lapses.By([Through("2026-03-31")], On("2026-03-02"), On("2026-03-01")));
    }

    [Fact]
    public void The_order_is_last_day_then_person_then_scheme()
    {
        HeldCertification[] held =
        [
            Through("2026-03-20", 1),
            Through("2026-03-10", 3),
            Through("2026-03-10", 2),
            Through("2026-03-10", 2) with { SchemeId = Awareness },
        ];
        (DateOnly, Guid, string)[] expected =
        [
            (On("2026-03-10"), Id(2), Awareness),
            (On("2026-03-10"), Id(2), Handler),
            (On("2026-03-10"), Id(3), Handler),
            (On("2026-03-20"), Id(1), Handler),
        ];

        Assert.Equal(expected, Lapses.By(held, On("2026-03-02"), On("2026-03-31")).Select(l => (l.ExpiresOn, l.PersonId, l.SchemeId)));
        Assert.Equal(expected, Lapses.By(held.Reverse(), On("2026-03-02"), On("2026-03-31")).Select(l => (l.ExpiresOn, l.PersonId, l.SchemeId)));
    }
}
