using CsCheck;

namespace Training.Scoring.Tests;

public sealed class ScoreTallyTests
{
    private const Obstacle NoTotalVariance = Obstacle.NoTotalVariance;

    private static readonly double[][] OneEasyItem = [[1, 0, 0], [1, 1, 0], [1, 1, 1], [1, 0, 1]];

    [Fact]
    public void Order_of_people_and_items_changes_nothing() => Gen.Select(AnyTable.Ratings, Gen.ULong).Sample((table, seed) =>
    {
        var tally = Tallies.Of(table);
        var reordered = Tallies.Of(AnyTable.Reordered(table, seed, out var order));

        tally.Alpha.IsSameAs(reordered.Alpha);
        tally.SampleVariance.IsSameAs(reordered.SampleVariance);
        for (var item = 0; item < order.Length; item++)
        {
            var (before, after) = (tally.Item(order[item]), reordered.Item(item));
            before.Difficulty.IsSameAs(after.Difficulty);
            before.RestCorrelation.IsSameAs(after.RestCorrelation);
            before.TotalCorrelation.IsSameAs(after.TotalCorrelation);
            before.AlphaIfDropped.IsSameAs(after.AlphaIfDropped);
        }
    });

    [Fact]
    public void Alpha_of_right_or_wrong_is_KR_20() => AnyTable.RightOrWrong.Sample(table =>
    {
        var tally = Tallies.Of(table);

        tally.Kr20.IsSameAs(tally.Alpha);
    });

    [Fact]
    public void Alpha_if_dropped_is_alpha_of_the_table_without_the_item() => AnyTable.Ratings.Sample(table =>
    {
        var without = Tallies.Of([.. table.Select(row => row[1..])]);

        Tallies.Of(table).Item(0).AlphaIfDropped.IsSameAs(without.Alpha);
    });

    [Fact]
    public void An_item_that_everybody_answers_right_has_a_difficulty_and_no_correlation()
    {
        var item = Tallies.Of(OneEasyItem).Item(0);

        Assert.Equal(1, item.Difficulty.Known());
        item.RestCorrelation.IsUnknown(Obstacle.NoItemVariance);
        item.TotalCorrelation.IsUnknown(Obstacle.NoItemVariance);
    }

    [Fact]
    public void An_item_has_no_correlation_with_a_rest_that_is_the_same_for_all()
    {
        var item = Tallies.Of([[1, 0, 1], [0, 1, 0], [1, 1, 0]]).Item(0);

        item.RestCorrelation.IsUnknown(NoTotalVariance);
        Assert.Equal(1, item.TotalCorrelation.Known(), 1e-9);
    }

    [Theory, InlineData(0), InlineData(1)]
    public void All_right_or_all_wrong_has_no_reliability(double score)
    {
        var tally = Tallies.Of([[score, score], [score, score], [score, score]]);

        Assert.Equal(0, tally.PopulationVariance.Known());
        tally.Alpha.IsUnknown(NoTotalVariance);
        tally.Kr20.IsUnknown(NoTotalVariance);
        tally.Components.Then<double>(parts => parts.Generalisability).IsUnknown(NoTotalVariance);
        tally.Components.Then<double>(parts => parts.Phi).IsUnknown(NoTotalVariance);
    }

    [Fact]
    public void The_same_total_of_all_has_no_reliability_although_items_vary()
    {
        var tally = Tallies.Of([[0.1, 0.2], [0.2, 0.1], [0.1, 0.2]]);

        tally.Alpha.IsUnknown(NoTotalVariance);
        tally.Components.Then<double>(parts => parts.Generalisability).IsUnknown(NoTotalVariance);
    }

    [Fact]
    public void Nobody_has_no_statistic()
    {
        var tally = new ScoreTally(2);

        tally.TotalMean.IsUnknown(Obstacle.NoAnswers);
        tally.Alpha.IsUnknown(Obstacle.NoAnswers);
        tally.Kr20.IsUnknown(Obstacle.NoAnswers);
        tally.Components.IsUnknown(Obstacle.NoAnswers);
        tally.Item(0).Difficulty.IsUnknown(Obstacle.NoAnswers);
        tally.Item(0).RestCorrelation.IsUnknown(Obstacle.NoAnswers);
    }

    [Fact]
    public void One_person_has_a_mean_and_nothing_more()
    {
        var tally = Tallies.Of([[1, 0, 1]]);

        Assert.Equal(2, tally.TotalMean.Known());
        Assert.Equal(0, tally.PopulationVariance.Known());
        Assert.Equal(1, tally.Item(0).Difficulty.Known());
        tally.SampleVariance.IsUnknown(Obstacle.TooFewPeople);
        tally.Alpha.IsUnknown(Obstacle.TooFewPeople);
        tally.Kr20.IsUnknown(Obstacle.TooFewPeople);
        tally.Components.IsUnknown(Obstacle.TooFewPeople);
        tally.Item(0).RestCorrelation.IsUnknown(Obstacle.TooFewPeople);
        tally.Item(0).AlphaIfDropped.IsUnknown(Obstacle.TooFewPeople);
    }

    [Fact]
    public void One_item_has_no_rest()
    {
        var tally = Tallies.Of([[1], [0], [1]]);

        tally.Alpha.IsUnknown(Obstacle.TooFewItems);
        tally.Kr20.IsUnknown(Obstacle.TooFewItems);
        tally.Components.IsUnknown(Obstacle.TooFewItems);
        tally.Item(0).RestCorrelation.IsUnknown(Obstacle.TooFewItems);
        tally.Item(0).AlphaIfDropped.IsUnknown(Obstacle.TooFewItems);
    }

    [Fact]
    public void A_table_without_items_has_no_statistic() => Tallies.Of([[], []]).TotalMean.IsUnknown(Obstacle.TooFewItems);

    [Theory, InlineData(double.NaN), InlineData(double.PositiveInfinity), InlineData(-1e101)]
    public void What_is_no_score_makes_every_statistic_uncomputable(double score)
    {
        var tally = Tallies.Of([[1, 0, 1], [0, score, 1], [1, 1, 0]]);

        tally.TotalMean.IsUnknown(Obstacle.NotANumber);
        tally.Alpha.IsUnknown(Obstacle.NotANumber);
        tally.Components.IsUnknown(Obstacle.NotANumber);
        tally.Item(0).Difficulty.IsUnknown(Obstacle.NotANumber);
        tally.Item(0).RestCorrelation.IsUnknown(Obstacle.NotANumber);
    }

    [Fact]
    public void KR_20_is_for_right_or_wrong_only() =>
        Tallies.Of([[1, 2], [0, 1], [1, 0]]).Kr20.IsUnknown(Obstacle.NotRightOrWrong);

    [Fact]
    public void A_row_of_another_length_is_a_mistake_of_the_caller() => Assert.Throws<ArgumentException>(() => new ScoreTally(2).Add([1.0]));
}
