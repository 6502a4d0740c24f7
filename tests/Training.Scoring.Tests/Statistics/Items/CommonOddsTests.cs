using CsCheck;

namespace Training.Scoring.Tests;

public sealed class CommonOddsTests
{
    // Admission to six departments, men then women, admitted then rejected: Bickel, Hammel and O'Connell, "Sex bias in graduate
    // admissions: data from Berkeley", Science 187, 1975; the table as R 4.2.2 carries it (UCBAdmissions).
    private static readonly Stratum[] Admissions =
    [
        new(512, 313, 89, 19), new(353, 207, 17, 8), new(120, 205, 202, 391), new(138, 279, 131, 244), new(53, 138, 94, 299), new(22, 351, 24, 317),
    ];

    private static readonly Gen<Stratum> AnyStratum = Gen.Select(
        Gen.Long[0, 30], Gen.Long[0, 30], Gen.Long[0, 30], Gen.Long[0, 30], (a, b, c, d) => new Stratum(a, b, c, d));

    /// <summary>Library: R 4.2.2, mantelhaen.test(UCBAdmissions, correct = FALSE), printed to 15 digits.</summary>
    [Fact]
    public void Odds_interval_and_chi_square_are_those_of_another_program()
    {
        var odds = CommonOdds.Of(Admissions).Known();

        Assert.Equal(0.904696828258623, odds.OddsRatio, 1e-12);
        Assert.Equal(0.771907361759350, odds.OddsRatioInterval(0.95).Lower, 1e-9);
        Assert.Equal(1.060329764436656, odds.OddsRatioInterval(0.95).Upper, 1e-9);
        Assert.Equal(1.524606660443436, odds.ChiSquare, 1e-9);
        Assert.Equal(0.216923697055518, odds.PValue, 1e-9);
        Assert.Equal((6, 4526L), (odds.Strata, odds.People));
    }

    /// <summary>By hand: one stratum with 3 of 4 right against 1 of 4 has odds of 3 to 1/3; 9, and −2.35·ln 9.</summary>
    [Fact]
    public void The_delta_scale_is_minus_2_35_times_the_logarithm()
    {
        var odds = CommonOdds.Of([new(3, 1, 1, 3)]).Known();

        Assert.Equal(9, odds.OddsRatio, 1e-12);
        Assert.Equal(-2.35 * Math.Log(9), odds.Delta, 1e-12);
        Assert.Equal(2.35 * Math.Sqrt((1.0 / 3) + 1 + 1 + (1.0 / 3)), odds.DeltaStandardError, 1e-12);
    }

    [Fact]
    public void Groups_that_change_places_turn_the_odds_over() => AnyStratum.Array[1, 6].Sample(strata =>
    {
        var there = CommonOdds.Of(strata);
        var back = CommonOdds.Of([.. strata.Select(one => new Stratum(one.FocalRight, one.FocalWrong, one.ReferenceRight, one.ReferenceWrong))]);

        there.Then<double>(odds => -odds.Delta).IsSameAs(back.Then<double>(odds => odds.Delta));
        there.Then<double>(odds => odds.LogVariance).IsSameAs(back.Then<double>(odds => odds.LogVariance));
        there.Then<double>(odds => odds.ChiSquare).IsSameAs(back.Then<double>(odds => odds.ChiSquare), 1e-7);
    });

    [Fact]
    public void A_stratum_that_tells_nothing_apart_changes_nothing() => AnyStratum.Array[1, 6].Sample(strata =>
    {
        var before = CommonOdds.Of(strata);
        if (before is not Estimate<CommonOdds>.Known) return;

        Assert.Equal(before, CommonOdds.Of([.. strata, new(0, 0, 5, 3), new(4, 2, 0, 0), new(6, 0, 7, 0), new(0, 0, 0, 0)]));
    });

    [Fact]
    public void Strata_alike_in_both_groups_have_odds_of_1() => Gen.Select(Gen.Long[1, 50], Gen.Long[1, 50]).Array[1, 6].Sample(pairs =>
    {
        var odds = CommonOdds.Of([.. pairs.Select(pair => new Stratum(pair.Item1, pair.Item2, pair.Item1, pair.Item2))]).Known();

        Assert.Equal(1, odds.OddsRatio, 1e-12);
        Assert.Equal(0, odds.Delta, 1e-12);
        Assert.Equal(1, odds.PValue, 1e-6);
    });

    public static TheoryData<Obstacle, Stratum[]> Strata_without_an_answer => new()
    {
        { Obstacle.NoAnswers, [] },
        { Obstacle.NoAnswers, [new(0, 0, 0, 0)] },
        { Obstacle.GroupEmpty, [new(3, 2, 0, 0), new(1, 1, 0, 0)] },
        { Obstacle.NoItemVariance, [new(3, 0, 2, 0)] },
        { Obstacle.NoSharedStratum, [new(3, 2, 0, 0), new(0, 0, 1, 1)] },
        { Obstacle.OneSidedStrata, [new(3, 0, 1, 2)] },
        { Obstacle.OneSidedStrata, [new(0, 3, 2, 1)] },
    };

    [Theory, MemberData(nameof(Strata_without_an_answer))]
    public void Where_groups_cannot_be_compared_it_says_why(Obstacle obstacle, Stratum[] strata) => CommonOdds.Of(strata).IsUnknown(obstacle);

    [Fact]
    public void A_negative_count_is_a_mistake_of_the_caller() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CommonOdds.Of([new(1, -1, 1, 1)]));
}
