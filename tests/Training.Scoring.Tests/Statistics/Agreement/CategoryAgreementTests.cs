using CsCheck;

namespace Training.Scoring.Tests;

public sealed class CategoryAgreementTests
{
    [Fact]
    public void Equal_ratings_agree_in_full() => Gen.Select(Gen.Int[0, 3].Array[2, 30], Gen.Int[2, 5]).Sample((categories, raters) =>
    {
        var counts = TestRatings.Counts([.. categories.Select(category => Enumerable.Repeat((int?)category, raters).ToArray())]);

        Assert.Equal(1, CategoryAgreement.PercentOf(counts).Known());
        Assert.Equal(1, CategoryAgreement.Ac1(counts).Known().Value);
        Assert.Equal(1, CategoryAgreement.BrennanPrediger(counts).Known().Value);
        if (categories.Distinct().Count() == 1) Assert.Equal(Obstacle.NoVariation, FleissKappa.Of(counts).Because());
        else Assert.Equal(1, FleissKappa.Of(counts).Known().Value);
    });

    [Fact]
    public void Independent_ratings_agree_about_as_by_chance()
    {
        var counts = TestRatings.Counts(TestRatings.Independent(20_000, 3));
        var fleiss = FleissKappa.Of(counts).Known();

        Assert.Equal(0.25, CategoryAgreement.PercentOf(counts).Known(), 0.01);
        Assert.Equal(0, CategoryAgreement.Ac1(counts).Known().Value, 0.02);
        Assert.Equal(0, CategoryAgreement.BrennanPrediger(counts).Known().Value, 0.02);
        Assert.Equal(0, fleiss.Value, 0.02);
        Assert.InRange(fleiss.AgainstChance.Known().Z, -4, 4);
        Assert.All(fleiss.Categories, category => Assert.InRange(category.Known().Z, -4, 4));
    }

    [Fact]
    public void The_order_of_the_subjects_changes_nothing() => Gen.Select(TestRatings.Any, Gen.ULong).Sample((subjects, seed) =>
    {
        CategoryCounts counts = TestRatings.Counts(subjects), shuffled = TestRatings.Counts(TestRatings.Shuffled(subjects, seed));

        Same(CategoryAgreement.PercentOf(counts), CategoryAgreement.PercentOf(shuffled), share => share);
        Same(CategoryAgreement.Ac1(counts), CategoryAgreement.Ac1(shuffled), agreement => agreement.Value);
        Same(CategoryAgreement.BrennanPrediger(counts), CategoryAgreement.BrennanPrediger(shuffled), agreement => agreement.Value);
        Same(FleissKappa.Of(counts), FleissKappa.Of(shuffled), kappa => kappa.Value);
    });

    [Fact]
    public void A_subject_whom_nobody_rated_changes_nothing() => TestRatings.Any.Sample(subjects =>
    {
        CategoryCounts counts = TestRatings.Counts(subjects), more = TestRatings.Counts([.. subjects, [null, null]]);

        Same(CategoryAgreement.PercentOf(counts), CategoryAgreement.PercentOf(more), share => share);
        Same(CategoryAgreement.Ac1(counts), CategoryAgreement.Ac1(more), agreement => agreement.Value);
        Same(FleissKappa.Of(counts), FleissKappa.Of(more), kappa => kappa.Value);
    });

    [Fact]
    public void With_two_categories_the_kappa_of_each_is_that_of_both() => Gen.Int[0, 5].Array[2, 30].Sample(yes =>
    {
        var kappa = FleissKappa.Of(CategoryCounts.Of(2, [.. yes.Select(count => new[] { count, 5 - count })]));

        if (kappa is Estimate<FleissKappa>.Unknown)
        {
            Assert.Equal(Obstacle.NoVariation, kappa.Because());
            return;
        }

        Assert.All(kappa.Known().Categories, category =>
        {
            Assert.Equal(kappa.Known().Value, category.Known().Value, 1e-9);
            Assert.Equal(kappa.Known().AgainstChance.Known().Z, category.Known().Z, 1e-6);
        });
    });

    [Fact]
    public void A_lone_rating_counts_towards_chance_but_shows_no_agreement()
    {
        var kappa = FleissKappa.Of(CategoryCounts.Of(2, [[2, 0], [1, 1], [0, 1]])).Known();

        Assert.Equal((2, 0.5, 0.5), (kappa.Subjects, kappa.Observed, kappa.Expected));
        Assert.Equal(Obstacle.UnequalRatings, kappa.AgainstChance.Because());
        Assert.All(kappa.Categories, category => Assert.Equal(Obstacle.UnequalRatings, category.Because()));
    }

    [Fact]
    public void A_category_that_nobody_chose_has_no_kappa() => Assert.Equal(
        Obstacle.CategoryUnused, FleissKappa.Of(CategoryCounts.Of(3, [[2, 0, 0], [0, 0, 2], [1, 0, 1]])).Known().Categories[1].Because());

    public static TheoryData<Obstacle, int, int[][]> Counts_without_agreement => new()
    {
        { Obstacle.OneCategory, 1, [[2], [3]] },
        { Obstacle.NothingCompared, 2, [] },
        { Obstacle.NothingCompared, 2, [[0, 0], [0, 0]] },
        { Obstacle.NothingCompared, 2, [[1, 0], [0, 1], [0, 1]] },
        { Obstacle.OneSubject, 2, [[1, 1], [0, 1]] },
    };

    [Theory, MemberData(nameof(Counts_without_agreement))]
    public void Counts_without_agreement_beyond_chance_say_why(Obstacle obstacle, int categories, int[][] subjects)
    {
        var counts = CategoryCounts.Of(categories, subjects);

        Assert.Equal(obstacle, CategoryAgreement.Ac1(counts).Because());
        Assert.Equal(obstacle, CategoryAgreement.BrennanPrediger(counts).Because());
        Assert.Equal(obstacle, FleissKappa.Of(counts).Because());
    }

    [Fact]
    public void Percent_agreement_needs_one_pair_of_ratings_only()
    {
        Assert.Equal(Obstacle.NothingCompared, CategoryAgreement.PercentOf(CategoryCounts.Of(2, [[1, 0], [0, 1]])).Because());
        Assert.Equal(0, CategoryAgreement.PercentOf(CategoryCounts.Of(2, [[1, 1]])).Known());
    }

    [Fact]
    public void Counts_that_are_none_are_a_broken_promise()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CategoryCounts.Of(0, []));
        Assert.Throws<ArgumentException>(() => CategoryCounts.Of(2, [[1]]));
        Assert.Throws<ArgumentException>(() => CategoryCounts.Of(2, [[1, -1]]));
        Assert.Throws<ArgumentOutOfRangeException>(() => CategoryCounts.FromRatings(0, []));
        Assert.Throws<ArgumentOutOfRangeException>(() => CategoryCounts.FromRatings(2, [[0, 2]]));
        Assert.Throws<ArgumentOutOfRangeException>(() => CategoryCounts.FromRatings(2, [[-1, 0]]));
    }

    private static void Same<T>(Estimate<T> one, Estimate<T> other, Func<T, double> figure)
    {
        if (one is Estimate<T>.Unknown) Assert.Equal(one, other);
        else Assert.Equal(figure(one.Known()), figure(other.Known()), 1e-9);
    }
}
