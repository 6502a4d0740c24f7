using CsCheck;

namespace Training.Scoring.Tests;

public sealed class GeneralisabilityTests
{
    private static NestedTally Nested(IEnumerable<double[]> table)
    {
        var tally = new NestedTally();
        foreach (var row in table) tally.Add(row.Length, (int)row.Sum());
        return tally;
    }

    /// <summary>
    /// By hand: three people, two items, right 1 1, 1 0, 0 0. Mean squares: people 1/2, items 1/6, rest 1/6; so σ²(p) 1/6, σ²(i) 0,
    /// σ²(pi,e) 1/6.
    /// </summary>
    [Fact]
    public void Components_come_from_the_mean_squares()
    {
        var parts = Tallies.Of([[1, 1], [1, 0], [0, 0]]).Components.Known();

        Assert.Equal(1.0 / 6, parts.OfPeople, 1e-12);
        Assert.Equal(0, parts.OfItems, 1e-12);
        Assert.Equal(1.0 / 6, parts.OfRest, 1e-12);
        Assert.Equal(0.5, parts.Mean, 1e-12);
        Assert.Equal(2.0 / 3, parts.Phi.Known(), 1e-12);
        Assert.Equal(Math.Sqrt(1.0 / 12), parts.StandardError, 1e-12);
    }

    [Fact]
    public void The_generalisability_of_a_complete_table_is_KR_20() => AnyTable.RightOrWrong.Sample(table =>
    {
        var tally = Tallies.Of(table);

        tally.Components.Then(parts => parts.Generalisability).IsSameAs(tally.Kr20, 1e-7);
    });

    /// <summary>
    /// Second computation by the shortcut of Brennan 1984 (in Berk, "A Guide to Criterion-Referenced Test Construction"), which needs the
    /// people's shares right alone: 1 − [X̄(1−X̄) − s²]/((k−1)·[(X̄−λ)² + s²]).
    /// </summary>
    [Fact]
    public void Dependability_at_a_cut_agrees_with_the_shortcut() => Gen.Select(AnyTable.RightOrWrong, Gen.Double[0, 1]).Sample((table, cut) =>
    {
        var shares = table.Select(row => row.Average()).ToList();
        var mean = shares.Average();
        var variance = shares.Average(share => (share - mean) * (share - mean));
        var distance = ((mean - cut) * (mean - cut)) + variance;
        if (distance < 1e-3) return;

        var shortcut = 1 - (((mean * (1 - mean)) - variance) / ((table[0].Length - 1) * distance));

        Assert.Equal(shortcut, Tallies.Of(table).Components.Known().PhiAt(cut).Known(), 1e-6);
    });

    /// <summary>Lord, "Sampling fluctuations resulting from the sampling of test items", Psychometrika 20, 1955.</summary>
    [Fact]
    public void The_generalisability_of_drawn_forms_of_one_length_is_KR_21_up_to_the_divisor() => AnyTable.RightOrWrong.Sample(table =>
    {
        var complete = Tallies.Of(table);
        var people = (double)table.Length;

        var kr21 = TestReliability.Kr21(complete.Items, complete.TotalMean.Known(), complete.PopulationVariance.Known());

        kr21.Then<double>(value => 1 - ((1 - value) * (people - 1) / people))
            .IsSameAs(Nested(table).Components.Then(parts => parts.Generalisability(complete.Items)), 1e-7);
    });

    /// <summary>
    /// By hand: 2 of 2, 2 of 4 and 0 of 2 right. Sum of squares within 4 − 3 = 1 on 5 degrees of freedom, between 3 − 16/8 = 1 on 2; typical
    /// length (8 − 24/8)/2 = 5/2. At a cut of 3/4 the squared distance is 0.0625 less the mean's variance of 0.12/3 + 0.2/8.
    /// </summary>
    [Fact]
    public void Forms_of_different_length_weigh_by_their_length()
    {
        var tally = new NestedTally();
        tally.Add(2, 2);
        tally.Add(4, 2);
        tally.Add(2, 0);

        var parts = tally.Components.Known();

        Assert.Equal(1.0 / 5, parts.OfQuestions, 1e-12);
        Assert.Equal(0.12, parts.OfPeople, 1e-12);
        Assert.Equal(0.12 / 0.17, parts.Generalisability(4).Known(), 1e-12);
        Assert.Equal(0.1175 / 0.1675, parts.PhiAt(4, 0.75).Known(), 1e-12);
        Assert.Equal(0.5, parts.Mean, 1e-12);
        Assert.Equal(Math.Sqrt(0.2 / 8), parts.StandardError(8), 1e-12);
    }

    [Fact]
    public void A_cut_far_from_the_mean_is_decided_more_dependably() => AnyTable.RightOrWrong.Sample(table =>
    {
        var parts = Nested(table).Components.Known();
        if (parts.PhiAt(20, parts.Mean) is not Estimate<double>.Known(var atMean)) return;

        Assert.True(parts.PhiAt(20, parts.Mean + 0.3).Known() >= atMean - 1e-12);
    });

    [Fact]
    public void Drawn_forms_need_two_people_and_more_than_a_question_each()
    {
        Nested([]).Components.IsUnknown(Obstacle.NoAnswers);
        Nested([[]]).Components.IsUnknown(Obstacle.NoAnswers);
        Nested([[1, 0]]).Components.IsUnknown(Obstacle.TooFewPeople);
        Nested([[1], [0]]).Components.IsUnknown(Obstacle.TooFewItems);
        Nested([[1, 1], [1, 1]]).Components.Then(parts => parts.Generalisability(2)).IsUnknown(Obstacle.NoTotalVariance);
        Nested([[0, 0], [0, 0]]).Components.Then(parts => parts.Generalisability(2)).IsUnknown(Obstacle.NoTotalVariance);
    }

    [Fact]
    public void Impossible_counts_are_a_mistake_of_the_caller()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new NestedTally().Add(-1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new NestedTally().Add(2, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => new NestedTally().Add(2, -1));
    }
}
