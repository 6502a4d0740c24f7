using CsCheck;

namespace Training.Scoring.Tests;

public sealed class KrippendorffAlphaTests
{
    private static readonly MeasurementLevel[] Levels = Enum.GetValues<MeasurementLevel>();

    private static readonly Gen<MeasurementLevel> AnyLevel = Gen.Int[0, Levels.Length - 1].Select(index => Levels[index]);

    /// <summary>Krippendorff, Content Analysis, 2nd edition, 2004, section 11.3: of nominal data without gaps, alpha is Scott's pi, to which
    /// Fleiss' kappa generalises it, plus (1 − π)/n, n being the number of ratings.</summary>
    [Fact]
    public void Without_gaps_alpha_is_scotts_pi_corrected_for_the_number_of_ratings() => TestRatings.Complete.Sample(subjects =>
    {
        var alpha = KrippendorffAlpha.Of(TestRatings.Numbers(subjects), MeasurementLevel.Nominal);
        var pi = FleissKappa.Of(TestRatings.Counts(subjects));

        if (pi is Estimate<FleissKappa>.Known(var known))
        {
            Assert.Equal(known.Value + ((1 - known.Value) / alpha.Known().Ratings), alpha.Known().Value, 1e-9);
        }
        else
        {
            Assert.Equal(pi.Because(), alpha.Because());
        }
    });

    [Fact]
    public void Equal_ratings_have_an_alpha_of_1_at_every_level() =>
        Gen.Select(Gen.Int[0, 9].Array[2, 20], AnyLevel).Sample((ratings, level) =>
        {
            var alpha = KrippendorffAlpha.Of([.. ratings.Select(rating => new double?[] { rating, null, rating })], level);

            if (ratings.Distinct().Count() == 1) Assert.Equal(Obstacle.NoVariation, alpha.Because());
            else Assert.Equal(1, alpha.Known().Value);
        });

    [Fact]
    public void Independent_ratings_have_an_alpha_near_0_at_every_level()
    {
        var ratings = TestRatings.Numbers(TestRatings.Independent(20_000, 3));

        Assert.All(Levels, level => Assert.Equal(0, KrippendorffAlpha.Of(ratings, level).Known().Value, 0.02));
    }

    [Fact]
    public void The_order_of_the_subjects_and_of_the_raters_changes_nothing() =>
        Gen.Select(TestRatings.Any, Gen.ULong, AnyLevel).Sample((subjects, seed, level) =>
        {
            var numbers = TestRatings.Numbers(subjects);
            var shuffled = TestRatings.Shuffled(numbers, seed).Select(ratings => ratings.Reverse().ToArray());

            Same(KrippendorffAlpha.Of(numbers, level), KrippendorffAlpha.Of([.. shuffled], level));
        });

    [Fact]
    public void A_subject_with_one_rating_or_none_changes_nothing() =>
        Gen.Select(TestRatings.Any, AnyLevel).Sample((subjects, level) => Same(
            KrippendorffAlpha.Of(TestRatings.Numbers(subjects), level),
            KrippendorffAlpha.Of([.. TestRatings.Numbers(subjects), [9, null], []], level)));

    [Fact]
    public void Alpha_depends_on_no_more_of_the_scale_than_its_level_means() => TestRatings.Any.Sample(subjects =>
    {
        Unchanged(MeasurementLevel.Nominal, rating => rating % 2 == 0 ? rating : -rating);
        Unchanged(MeasurementLevel.Ordinal, rating => rating * rating * rating);
        Unchanged(MeasurementLevel.Interval, rating => 40 - (3 * rating));
        Unchanged(MeasurementLevel.Ratio, rating => 7 * rating);

        void Unchanged(MeasurementLevel level, Func<double?, double?> change) => Same(
            KrippendorffAlpha.Of(TestRatings.Numbers(subjects), level),
            KrippendorffAlpha.Of([.. TestRatings.Numbers(subjects).Select(ratings => ratings.Select(change).ToArray())], level));
    });

    public static TheoryData<Obstacle, double?[][]> Ratings_without_an_alpha => new()
    {
        { Obstacle.NothingCompared, [] },
        { Obstacle.NothingCompared, [[null, null], [null, null]] },
        { Obstacle.NothingCompared, [[1, null], [2, null], [3, null]] },
        { Obstacle.OneSubject, [[1, 2], [3, null]] },
        { Obstacle.NoVariation, [[2, 2], [2, 2], [3, null]] },
        { Obstacle.NoVariation, [[0, 1e-200], [0, 0]] },
        { Obstacle.NotANumber, [[1, 2], [double.NaN, 2]] },
        { Obstacle.NotANumber, [[1, 2], [2, 2], [double.PositiveInfinity, null]] },
        { Obstacle.NotANumber, [[1, 2], [2, 1e300]] },
    };

    [Theory, MemberData(nameof(Ratings_without_an_alpha))]
    public void Ratings_without_an_alpha_say_why(Obstacle obstacle, double?[][] subjects) =>
        Assert.Equal(obstacle, KrippendorffAlpha.Of(subjects, MeasurementLevel.Interval).Because());

    [Fact]
    public void A_ratio_scale_has_nothing_below_0() =>
        Assert.Equal(Obstacle.NegativeOnRatioScale, KrippendorffAlpha.Of([[1, 2], [-1, 2]], MeasurementLevel.Ratio).Because());

    private static void Same(Estimate<KrippendorffAlpha> one, Estimate<KrippendorffAlpha> other)
    {
        if (one is Estimate<KrippendorffAlpha>.Unknown) Assert.Equal(one, other);
        else Assert.Equal(one.Known().Value, other.Known().Value, 1e-9);
    }
}
