using CsCheck;

namespace Training.Scoring.Tests;

public sealed class IntraclassCorrelationsTests
{
    [Fact]
    public void Equal_ratings_correlate_in_full_and_have_no_limits_that_would_read_as_certainty() =>
        Gen.Select(Gen.Int[-100, 100].Array[2, 20], Gen.Int[2, 5]).Sample((ratings, raters) =>
        {
            var icc = IntraclassCorrelations.Of([.. ratings.Select(rating => Enumerable.Repeat((double?)rating / 10, raters).ToArray())]);

            if (ratings.Distinct().Count() == 1) Assert.Equal(Obstacle.NoVariation, icc.Because());
            else Assert.All(Forms(icc.Known()), form =>
            {
                Assert.Equal((1.0, 1.0), (form.Known().Single, form.Known().Mean.Known()));
                Assert.Equal(Obstacle.ErrorVanishes, form.Known().Limits.Because());
            });
        });

    [Fact]
    public void Independent_ratings_correlate_near_0_and_the_limits_say_so() =>
        Assert.All(Forms(IntraclassCorrelations.Of(TestRatings.Numbers(TestRatings.Independent(5_000, 3))).Known()), form =>
        {
            Assert.Equal(0, form.Known().Single, 0.04);
            Assert.InRange(form.Known().Limits.Known().Upper - form.Known().Limits.Known().Lower, 0.01, 0.1);
        });

    [Fact]
    public void The_order_of_subjects_and_raters_changes_nothing() => Gen.Select(TestRatings.Any, Gen.ULong).Sample((subjects, seed) =>
    {
        var numbers = TestRatings.Numbers(subjects);
        var one = IntraclassCorrelations.Of(numbers);
        var other = IntraclassCorrelations.Of([.. TestRatings.Shuffled(numbers, seed).Select(ratings => ratings.Reverse().ToArray())]);

        if (one is Estimate<IntraclassCorrelations>.Unknown) Assert.Equal(one, other);
        else Assert.All(Forms(one.Known()).Zip(Forms(other.Known())), pair => Same(pair.First, pair.Second));
    });

    [Fact]
    public void Every_figure_is_a_number_and_every_value_lies_within_its_limits() => TestRatings.Any.Sample(subjects =>
    {
        if (IntraclassCorrelations.Of(TestRatings.Numbers(subjects)) is not Estimate<IntraclassCorrelations>.Known(var icc)) return;

        foreach (var form in Forms(icc).OfType<Estimate<IntraclassCorrelation>.Known>().Select(form => form.Value))
        {
            Assert.True(double.IsFinite(form.Single) && form.Single <= 1);
            if (form.Mean is Estimate<double>.Known(var mean)) Assert.True(double.IsFinite(mean));
            if (form.Limits is Estimate<Interval>.Known(var limits)) Assert.InRange(form.Single, limits.Lower, limits.Upper);
        }
    });

    /// <summary>McGraw and Wong, Psychological Methods 1, 1996, table 4.</summary>
    [Fact]
    public void The_mean_of_raters_follows_spearman_and_brown() => TestRatings.Complete.Sample(subjects =>
    {
        if (IntraclassCorrelations.Of(TestRatings.Numbers(subjects)) is not Estimate<IntraclassCorrelations>.Known(var icc)) return;

        foreach (var form in Forms(icc).OfType<Estimate<IntraclassCorrelation>.Known>().Select(form => form.Value))
        {
            if (form.Mean is not Estimate<double>.Known(var mean)) continue;
            Assert.Equal(mean * (1 + ((icc.Raters - 1) * form.Single)), icc.Raters * form.Single, 1e-6 * Math.Max(1, Math.Abs(mean)));
        }
    });

    [Fact]
    public void A_lenient_rater_lowers_agreement_but_not_the_ranking()
    {
        double?[][] fair = [[1, 2], [4, 4], [6, 5], [9, 9]], lenient = [[1, 5], [4, 7], [6, 8], [9, 12]];
        IntraclassCorrelations before = IntraclassCorrelations.Of(fair).Known(), after = IntraclassCorrelations.Of(lenient).Known();

        Assert.Equal(before.TwoWayMixed.Known().Single, after.TwoWayMixed.Known().Single, 1e-9);
        Assert.True(after.TwoWayRandom.Known().Single < before.TwoWayRandom.Known().Single - 0.1);
        Assert.True(after.OneWay.Known().Single < before.OneWay.Known().Single - 0.1);
    }

    [Fact]
    public void A_subject_with_a_missing_rating_is_left_out_and_counted()
    {
        var icc = IntraclassCorrelations.Of([[1, 2], [4, null], [4, 4], [null, null], [6, 5]]).Known();

        Assert.Equal((3, 2, 2), (icc.Subjects, icc.LeftOut, icc.Raters));
        Assert.Equal(IntraclassCorrelations.Of([[1, 2], [4, 4], [6, 5]]).Known().OneWay, icc.OneWay);
    }

    /// <summary>The 97.5 % point of F with 120 and 1 degrees of freedom is 1014 in any printed table.</summary>
    [Fact]
    public void Limits_hold_for_two_subjects_where_the_f_point_lies_beyond_1000()
    {
        const int Raters = 61;
        double?[] low = [.. Enumerable.Range(0, Raters).Select(rater => (double?)(rater % 3))], high = [.. low.Select(rating => rating + 10)];
        var icc = IntraclassCorrelations.Of([low, high]).Known();

        var point = (Raters / (1 - icc.OneWay.Known().Limits.Known().Upper)) - Raters + 1;
        Assert.Equal(1014, point * icc.MeanSquares.WithinSubjects / icc.MeanSquares.BetweenSubjects, 0.5);
    }

    [Fact]
    public void Where_only_the_raters_differ_no_ranking_can_agree()
    {
        var icc = IntraclassCorrelations.Of([[1, 4], [1, 4], [1, 4]]).Known();

        Assert.Equal(Obstacle.SubjectsAlike, icc.TwoWayMixed.Because());
        Assert.Equal((0, Obstacle.ErrorVanishes), (icc.TwoWayRandom.Known().Single, icc.TwoWayRandom.Known().Limits.Because()));
        Assert.Equal(Obstacle.ErrorVanishes, icc.OneWay.Known().Limits.Because());
        Assert.Equal((-1, Obstacle.SubjectsAlike), (icc.OneWay.Known().Single, icc.OneWay.Known().Mean.Because()));
    }

    public static TheoryData<Obstacle, double?[][]> Ratings_without_a_correlation => new()
    {
        { Obstacle.NothingCompared, [] },
        { Obstacle.NothingCompared, [[], []] },
        { Obstacle.NothingCompared, [[1], [2], [3]] },
        { Obstacle.NothingCompared, [[1, null], [null, 3]] },
        { Obstacle.OneSubject, [[1, 2], [null, 3]] },
        { Obstacle.NoVariation, [[0.1, 0.1, 0.1], [0.1, 0.1, 0.1]] },
        { Obstacle.NotANumber, [[1, 2], [double.NaN, 3]] },
        { Obstacle.NotANumber, [[1, 2], [2, double.NegativeInfinity]] },
    };

    [Theory, MemberData(nameof(Ratings_without_a_correlation))]
    public void Ratings_without_a_correlation_say_why(Obstacle obstacle, double?[][] subjects) =>
        Assert.Equal(obstacle, IntraclassCorrelations.Of(subjects).Because());

    [Fact]
    public void Rows_of_different_length_are_a_broken_promise() =>
        Assert.Throws<ArgumentException>(() => IntraclassCorrelations.Of([[1, 2], [1, 2, 3]]));

    private static Estimate<IntraclassCorrelation>[] Forms(IntraclassCorrelations icc) => [icc.OneWay, icc.TwoWayRandom, icc.TwoWayMixed];

    private static void Same(Estimate<IntraclassCorrelation> one, Estimate<IntraclassCorrelation> other)
    {
        if (one is Estimate<IntraclassCorrelation>.Unknown) Assert.Equal(one, other);
        else Assert.Equal(one.Known().Single, other.Known().Single, 1e-9);
    }
}
