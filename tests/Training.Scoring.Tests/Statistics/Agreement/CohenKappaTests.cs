using CsCheck;

namespace Training.Scoring.Tests;

public sealed class CohenKappaTests
{
    private static readonly KappaWeights[] AllWeights =
    [
        new KappaWeights.Unweighted(), new KappaWeights.Linear(), new KappaWeights.Quadratic(),
        new KappaWeights.Own([[0, 1, 3, 3], [1, 0, 6, 2], [3, 6, 0, 1], [3, 2, 1, 0]]),
    ];

    private static readonly Gen<KappaWeights> AnyWeights = Gen.Int[0, AllWeights.Length - 1].Select(index => AllWeights[index]);

    private static readonly Gen<(int? First, int? Second)[]> Pairs =
        Gen.Select(Gen.Int[-1, 3], Gen.Int[-1, 3], (first, second) => (OrMissing(first), OrMissing(second))).Array[2, 60];

    [Fact]
    public void Equal_ratings_have_a_kappa_of_1_and_no_error_that_would_read_as_certainty() =>
        Gen.Select(Gen.Int[0, 3].Array[2, 40], AnyWeights).Sample((categories, weights) =>
        {
            var kappa = Of([.. categories.Select(category => ((int?)category, (int?)category))], weights);

            if (categories.Distinct().Count() == 1) Assert.Equal(Obstacle.NoVariation, kappa.Because());
            else Assert.Equal((1.0, Obstacle.ErrorVanishes), (kappa.Known().Value, kappa.Known().StandardError.Because()));
        });

    [Fact]
    public void Independent_ratings_have_a_kappa_near_0() => Assert.All(AllWeights, weights =>
    {
        var kappa = Of([.. TestRatings.Independent(20_000, 2).Select(pair => (pair[0], pair[1]))], weights).Known();

        Assert.InRange(kappa.Value, -4 * kappa.StandardError.Known(), 4 * kappa.StandardError.Known());
        Assert.InRange(kappa.Value, -0.05, 0.05);
    });

    [Fact]
    public void Raters_who_always_choose_the_other_of_two_have_a_kappa_of_minus_1()
    {
        var kappa = CohenKappa.Of(PairTable.Of([[0, 5], [5, 0]]), new KappaWeights.Unweighted()).Known();

        Assert.Equal((-1, Obstacle.ErrorVanishes), (kappa.Value, kappa.StandardError.Because()));
    }

    [Fact]
    public void The_order_of_the_subjects_changes_nothing() => Gen.Select(Pairs, Gen.ULong).Sample((pairs, seed) =>
        Assert.Equal(Of(pairs, new KappaWeights.Linear()), Of(TestRatings.Shuffled(pairs, seed), new KappaWeights.Linear())));

    [Fact]
    public void The_raters_may_change_places() => Gen.Select(Pairs, AnyWeights).Sample((pairs, weights) =>
        SameFigures(Of(pairs, weights), Of([.. pairs.Select(pair => (pair.Second, pair.First))], weights)));

    [Fact]
    public void Own_weights_count_by_their_proportions() => Pairs.Sample(pairs => SameFigures(
        Of(pairs, new KappaWeights.Linear()),
        Of(pairs, new KappaWeights.Own([[0, 7, 14, 21], [7, 0, 7, 14], [14, 7, 0, 7], [21, 14, 7, 0]]))));

    [Fact]
    public void A_subject_that_one_of_them_did_not_rate_is_left_out() => Pairs.Sample(pairs => Assert.Equal(
        Of([.. pairs.Where(pair => pair.First is not null && pair.Second is not null)], new KappaWeights.Unweighted()),
        Of(pairs, new KappaWeights.Unweighted())));

    public static TheoryData<Obstacle, int[][]> Table_without_a_kappa => new()
    {
        { Obstacle.OneCategory, [[9]] },
        { Obstacle.NothingCompared, [[0, 0], [0, 0]] },
        { Obstacle.OneSubject, [[0, 1], [0, 0]] },
        { Obstacle.NoVariation, [[9, 0], [0, 0]] },
    };

    [Theory, MemberData(nameof(Table_without_a_kappa))]
    public void A_table_without_a_kappa_says_why(Obstacle obstacle, int[][] table) =>
        Assert.Equal(obstacle, CohenKappa.Of(PairTable.Of(table), new KappaWeights.Unweighted()).Because());

    public static TheoryData<double[][]> Unusable_weights => new()
    {
        { [[0, 1]] },
        { [[0, 1, 2], [1, 0, 1], [2, 1, 0]] },
        { [[0, 1], [1]] },
        { [[1, 1], [1, 0]] },
        { [[0, -1], [1, 0]] },
        { [[0, double.NaN], [1, 0]] },
        { [[0, double.PositiveInfinity], [1, 0]] },
        { [[0, 0], [0, 0]] },
    };

    [Theory, MemberData(nameof(Unusable_weights))]
    public void Own_weights_that_do_not_fit_are_refused(double[][] weights) => Assert.Equal(
        Obstacle.WeightsDoNotFit, CohenKappa.Of(PairTable.Of([[5, 1], [2, 4]]), new KappaWeights.Own(weights)).Because());

    [Fact]
    public void A_table_that_is_none_is_a_broken_promise()
    {
        Assert.Throws<ArgumentException>(() => PairTable.Of([]));
        Assert.Throws<ArgumentException>(() => PairTable.Of([[1, 2]]));
        Assert.Throws<ArgumentException>(() => PairTable.Of([[1, 2], [-1, 2]]));
        Assert.Throws<ArgumentOutOfRangeException>(() => PairTable.FromRatings(2, [(0, 2)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => PairTable.FromRatings(2, [(-1, 0)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => PairTable.FromRatings(0, []));
    }

    private static Estimate<CohenKappa> Of((int? First, int? Second)[] pairs, KappaWeights weights) =>
        CohenKappa.Of(PairTable.FromRatings(TestRatings.Categories, pairs), weights);

    private static int? OrMissing(int category) => category < 0 ? null : category;

    private static void SameFigures(Estimate<CohenKappa> one, Estimate<CohenKappa> other)
    {
        if (one is Estimate<CohenKappa>.Unknown)
        {
            Assert.Equal(one, other);
            return;
        }

        Assert.Equal(one.Known().Value, other.Known().Value, 1e-9);
        if (one.Known().StandardError is Estimate<double>.Known(var error)) Assert.Equal(error, other.Known().StandardError.Known(), 1e-9);
        else Assert.Equal(one.Known().StandardError, other.Known().StandardError);
    }
}
