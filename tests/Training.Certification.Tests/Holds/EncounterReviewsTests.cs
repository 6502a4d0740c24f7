using CsCheck;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class EncounterReviewsTests
{
    private static readonly HeldCertification ThroughMay = Held(Period(1, "2025-05-31", "2026-05-31"));

    /// <summary>
    /// The rows of docs/rules.md, "Reviews and holds", for a handler certified from 31 May 2025 through 31 May 2026, with a window of 60 days,
    /// and suspended where the row says so.
    /// </summary>
    [Theory]
    [InlineData(EncounterKind.Sighting, "2026-03-01", null)]
    [InlineData(EncounterKind.Moved, "2025-05-30", "MovedWithoutHandler Site")]     // the day before the first
    [InlineData(EncounterKind.Moved, "2025-05-31", null)]
    [InlineData(EncounterKind.Moved, "2026-05-31", null)]                           // the last day, renewal due
    [InlineData(EncounterKind.Moved, "2026-06-01", "MovedWithoutHandler Site")]     // in grace: not current
    [InlineData(EncounterKind.NearMiss, "2025-05-30", "NearMiss Site")]
    [InlineData(EncounterKind.NearMiss, "2025-05-31", "NearMiss Handler")]
    [InlineData(EncounterKind.NearMiss, "2026-06-01", "NearMiss Handler")]          // lapsed, and may be renewed tomorrow
    [InlineData(EncounterKind.Bite, "2025-05-30", "Bite Site")]
    [InlineData(EncounterKind.Bite, "2026-05-31", "Bite Handler")]
    public void What_an_encounter_opens_follows_from_its_kind_and_from_what_the_handler_held_that_day(EncounterKind kind, string day, string? opens)
    {
        var due = EncounterReviews.After(kind, On(day), [ThroughMay], []);

        Assert.Equal(opens, due is null ? null : $"{due.Cause} {due.Subject}");
    }

    [Fact]
    public void Where_nobody_is_named_the_site_is_looked_at()
    {
        Assert.Equal(new DueReview(ReviewCause.MovedWithoutHandler, ReviewSubject.Site), EncounterReviews.After(EncounterKind.Moved, On("2026-03-01"), [], []));
        Assert.Equal(new DueReview(ReviewCause.Bite, ReviewSubject.Site), EncounterReviews.After(EncounterKind.Bite, On("2026-03-01"), [], []));
        Assert.Null(EncounterReviews.After(EncounterKind.Sighting, On("2026-03-01"), [], []));
    }

    [Theory]
    [InlineData("2026-03-09", false)]
    [InlineData("2026-03-10", true)]
    [InlineData("2026-03-20", true)]
    [InlineData("2026-03-21", false)]
    public void A_move_by_somebody_suspended_or_on_hold_that_day_is_not_by_a_current_handler(string day, bool opens)
    {
        var suspended = ThroughMay.Suspended("2026-03-10", "2026-03-20");
        var hold = new Hold(Id(1), Worker, On("2026-03-10"), ReviewCause.Bite, Id(2), new(On("2026-03-20"), Lead, "Reviewed."));

        Assert.Equal(opens, EncounterReviews.After(EncounterKind.Moved, On(day), [suspended], []) is not null);
        Assert.Equal(opens, EncounterReviews.After(EncounterKind.Moved, On(day), [ThroughMay], [hold]) is not null);
    }

    [Fact]
    public void What_was_withdrawn_is_no_certification_any_more() =>
        Assert.Equal(ReviewSubject.Site, EncounterReviews.After(EncounterKind.Bite, On("2026-03-10"), [ThroughMay.Withdrawn("2026-03-10")], [])?.Subject);

    /// <summary>Bites and near misses always open one review, sightings none, and a hold comes only to somebody who has held something.</summary>
    [Fact]
    public void No_bite_or_near_miss_stays_without_a_review() =>
        Gen.Select(Gen.Enum<EncounterKind>(), Gen.Int[-800, 800], Gen.Bool, Gen.Bool).Sample((kind, shift, isNamed, isWithdrawn) =>
        {
            var day = On("2025-12-01").AddDays(shift);
            HeldCertification[] named = isNamed ? [isWithdrawn ? ThroughMay.Withdrawn("2025-07-01") : ThroughMay] : [];
            var due = EncounterReviews.After(kind, day, named, []);

            return (kind is not (EncounterKind.Bite or EncounterKind.NearMiss) || due is not null)
                && (kind != EncounterKind.Sighting || due is null)
                && (due?.Subject != ReviewSubject.Handler || (isNamed && day >= On("2025-05-31") && !(isWithdrawn && day >= On("2025-07-01"))));
        });
}
