using CsCheck;

namespace Training.Scoring.Tests;

/// <summary>Borderline group and contrasting groups.</summary>
public sealed class JudgedGroupsCutTests
{
    private static readonly Gen<int[]> Scores = Gen.Int[0, 20].Array[1, 25];

    [Fact]
    public void The_median_of_an_even_number_lies_between_the_middle_two()
    {
        Assert.Equal(new BorderlineGroupCut(3.5, 4, 4), BorderlineGroupCut.Of([7, 2, 4, 3]).Known());
        Assert.Equal(new BorderlineGroupCut(3, 4, 3), BorderlineGroupCut.Of([7, 2, 3]).Known());
        Assert.Equal(Obstacle.GroupEmpty, BorderlineGroupCut.Of([]).Because());
    }

    [Fact]
    public void No_whole_cut_has_fewer_errors_and_the_first_and_last_have_as_many() => Gen.Select(Scores, Scores).Sample((notYet, competent) =>
    {
        if (ContrastingGroupsCut.Of(notYet, competent) is not Estimate<ContrastingGroupsCut>.Known({ FewestErrors: var fewest })) return;

        int Errors(int cut) => notYet.Count(score => score >= cut) + competent.Count(score => score < cut);
        var lowest = Math.Min(notYet.Min(), competent.Min());
        var cuts = Enumerable.Range(lowest, Math.Max(notYet.Max(), competent.Max()) + 2 - lowest).ToList();
        var best = cuts.Where(cut => Errors(cut) == fewest.Errors).ToList();
        Assert.Equal(fewest.Errors, cuts.Min(Errors));
        Assert.Equal((best.Min(), best.Max()), (fewest.FirstCut, fewest.LastCut));
    });

    [Fact]
    public void The_order_of_people_changes_nothing() => Gen.Select(Scores, Scores, Gen.ULong).Sample((notYet, competent, seed) =>
    {
        var one = ContrastingGroupsCut.Of(notYet, competent);
        var other = ContrastingGroupsCut.Of(TestRatings.Shuffled(notYet, seed), TestRatings.Shuffled(competent, seed));
        if (one is Estimate<ContrastingGroupsCut>.Unknown)
        {
            Assert.Equal(one, other);
            return;
        }

        Assert.Equal(one.Known().FewestErrors, other.Known().FewestErrors);
        var cut = one.Known().Logistic.Known().Cut;
        Assert.Equal(cut, other.Known().Logistic.Known().Cut, 1e-6 * Math.Max(1, Math.Abs(cut)));
        if (one.Known().NormalCurvesCross is Estimate<double>.Known(var cross)) Assert.Equal(cross, other.Known().NormalCurvesCross.Known(), 1e-6);
    });

    /// <summary>Score equations of maximum likelihood: the chances sum to the number of the competent, and so do they weighted by the scores.</summary>
    [Fact]
    public void The_fitted_chances_sum_to_what_was_judged() => Gen.Select(Scores, Scores).Sample((notYet, competent) =>
    {
        double[] lower = [.. notYet.Select(score => (double)score)], upper = [.. competent.Select(score => (double)score)];
        if (LogisticCut.Of(lower, upper) is not Estimate<LogisticCut>.Known(LogisticCut.Fitted fit)) return;

        Assert.Equal(upper.Length, lower.Concat(upper).Sum(fit.ChanceAt), 1e-6);
        Assert.Equal(upper.Sum(), lower.Concat(upper).Sum(score => score * fit.ChanceAt(score)), 1e-5);
        Assert.Equal(0.5, fit.ChanceAt(fit.Cut), 1e-9);
    });

    [Fact]
    public void Groups_that_overlap_and_rise_always_have_a_fit() => Gen.Select(Scores, Scores).Sample((notYet, competent) =>
    {
        var cut = LogisticCut.Of([.. notYet.Select(score => (double)score)], [.. competent.Select(score => (double)score)]);

        if (notYet.Max() > competent.Min() && competent.Average() > notYet.Average()) Assert.IsType<LogisticCut.Fitted>(cut.Known());
    });

    [Fact]
    public void Separated_groups_are_cut_in_the_middle_of_the_gap()
    {
        Assert.Equal(new LogisticCut.Separated(12, 15), LogisticCut.Of([9, 12, 10], [15, 20]).Known());
        Assert.Equal(13.5, LogisticCut.Of([9, 12, 10], [15, 20]).Known().Cut);
    }

    [Fact]
    public void Groups_that_share_one_score_only_are_cut_there() => Assert.Equal(12, LogisticCut.Of([9, 12], [12, 15, 12]).Known().Cut);

    [Fact]
    public void A_cut_beyond_all_scores_is_said_to_be_one()
    {
        double[] many = [.. Enumerable.Repeat(10.0, 40), .. Enumerable.Repeat(11.0, 60)];

        Assert.False(Assert.IsType<LogisticCut.Fitted>(LogisticCut.Of([10, 11], many).Known()).IsWithinScores);
        Assert.True(Assert.IsType<LogisticCut.Fitted>(LogisticCut.Of([9, 12], [11, 15]).Known()).IsWithinScores);
    }

    public static TheoryData<Obstacle, double[], double[]> Groups_without_a_logistic_cut => new()
    {
        { Obstacle.GroupEmpty, [], [1, 2] },
        { Obstacle.GroupEmpty, [1, 2], [] },
        { Obstacle.NoVariation, [5, 5], [5] },
        { Obstacle.ScoresDoNotFollowJudgement, [8, 9], [5, 8] },
        { Obstacle.ScoresDoNotFollowJudgement, [5, 9], [4, 8] },
        { Obstacle.ScoresDoNotFollowJudgement, [5, 9], [5, 9] },
        { Obstacle.NotANumber, [5, double.NaN], [9] },
        { Obstacle.NotANumber, [5], [9, double.PositiveInfinity] },
    };

    [Theory, MemberData(nameof(Groups_without_a_logistic_cut))]
    public void Groups_without_a_logistic_cut_say_why(Obstacle obstacle, double[] notYet, double[] competent) =>
        Assert.Equal(obstacle, LogisticCut.Of(notYet, competent).Because());

    [Fact]
    public void Curves_of_the_same_spread_cross_in_the_middle() =>
        Assert.Equal(15, ContrastingGroupsCut.Of([8, 10, 12], [18, 20, 22]).Known().NormalCurvesCross.Known(), 1e-9);

    public static TheoryData<Obstacle, int[], int[]> Groups_without_a_crossing => new()
    {
        { Obstacle.TooFewPeople, [5], [8, 9] },
        { Obstacle.TooFewPeople, [5, 6], [9] },
        { Obstacle.NoVariation, [5, 5], [8, 9] },
        { Obstacle.NoVariation, [5, 6], [9, 9] },
        { Obstacle.CurvesDoNotCross, [9, 10, 11], [0, 11, 23] },
    };

    [Theory, MemberData(nameof(Groups_without_a_crossing))]
    public void Groups_whose_curves_do_not_cross_say_why_and_have_the_other_cuts(Obstacle obstacle, int[] notYet, int[] competent)
    {
        var cut = ContrastingGroupsCut.Of(notYet, competent).Known();

        Assert.Equal(obstacle, cut.NormalCurvesCross.Because());
        Assert.InRange(cut.MidpointOfMeans, notYet.Average(), competent.Average());
    }

    [Fact]
    public void Groups_that_contrast_the_wrong_way_or_are_empty_have_no_cut()
    {
        Assert.Equal(Obstacle.GroupEmpty, ContrastingGroupsCut.Of([], [1]).Because());
        Assert.Equal(Obstacle.GroupEmpty, ContrastingGroupsCut.Of([1], []).Because());
        Assert.Equal(Obstacle.ScoresDoNotFollowJudgement, ContrastingGroupsCut.Of([9, 10], [3, 4]).Because());
        Assert.Equal(Obstacle.ScoresDoNotFollowJudgement, ContrastingGroupsCut.Of([5, 5], [5, 5]).Because());
    }
}
