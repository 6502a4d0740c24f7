using CsCheck;

namespace Training.Scoring.Tests;

public sealed class AngoffCutTests
{
    private static readonly Gen<AngoffJudge[]> Panels =
        from items in Gen.Int[1, 12]
        from ratings in Gen.Int[0, 20].Select(twentieths => (double?)twentieths / 20).Array[items].Array[1, 8]
        select ratings.Select((judged, judge) => new AngoffJudge($"J{judge}", judged)).ToArray();

    [Fact]
    public void The_pass_mark_is_the_smallest_whole_score_not_below_the_cut() => Panels.Sample(judges =>
    {
        var items = judges[0].Ratings.Count;
        var cut = AngoffCut.Of(items, judges).Known();

        Assert.InRange(cut.PassMark, 0, items);
        Assert.InRange(cut.PassMark - cut.Cut, -1e-6, 1 - 1e-9);
        Assert.Equal(cut.Cut, cut.ItemMeans.Sum(), 1e-9);
    });

    [Fact]
    public void The_order_of_the_judges_changes_nothing() => Gen.Select(Panels, Gen.ULong).Sample((judges, seed) =>
    {
        var cut = AngoffCut.Of(judges[0].Ratings.Count, judges).Known();
        var shuffled = AngoffCut.Of(judges[0].Ratings.Count, TestRatings.Shuffled(judges, seed)).Known();

        Assert.Equal((cut.PassMark, cut.MedianOfJudges), (shuffled.PassMark, shuffled.MedianOfJudges));
        Assert.Equal(cut.Cut, shuffled.Cut, 1e-9);
    });

    [Fact]
    public void A_sum_of_tenths_that_reads_a_hair_above_the_whole_does_not_raise_the_pass_mark()
    {
        var cut = AngoffCut.Of(4, [Judge("J1", 0.2, 0.4, 0.3, 0.1)]).Known();

        Assert.True(cut.Cut > 1);
        Assert.Equal(1, cut.PassMark);
    }

    [Fact]
    public void A_judge_who_rated_half_or_off_the_scale_is_named_and_left_out()
    {
        AngoffJudge[] judges =
        [
            Judge("whole", 0.5, 0.7), Judge("half", 0.5, null), Judge("short", 0.5), Judge("percent", 50, 70),
            Judge("damaged", double.NaN, 0.7), Judge("also whole", 0.7, 0.9),
        ];

        var cut = AngoffCut.Of(2, judges).Known();

        Assert.Equal(
            [
                new("half", LeftOutReason.Incomplete), new("short", LeftOutReason.Incomplete), new("percent", LeftOutReason.OutOfRange),
                new LeftOutJudge("damaged", LeftOutReason.OutOfRange),
            ],
            cut.LeftOut);
        Assert.Equal(["whole", "also whole"], cut.Judges.Select(judge => judge.Name));
        Assert.Equal(1.4, cut.Cut, 1e-9);
    }

    [Fact]
    public void One_judge_has_a_cut_but_no_error()
    {
        var cut = AngoffCut.Of(2, [Judge("J1", 0.5, 0.7)]).Known();

        Assert.Equal((1.2, 2, 60), (cut.Cut, cut.PassMark, Math.Round(cut.Percent, 9)));
        Assert.Equal((Obstacle.OneJudge, Obstacle.OneJudge), (cut.StandardDeviation.Because(), cut.StandardError.Because()));
        Assert.Empty(cut.LeftOut);
    }

    [Fact]
    public void Without_a_usable_judge_there_is_no_cut()
    {
        Assert.Equal(Obstacle.NoUsableJudge, AngoffCut.Of(2, []).Because());
        Assert.Equal(Obstacle.NoUsableJudge, AngoffCut.Of(2, [Judge("half", 0.5, null)]).Because());
        Assert.Throws<ArgumentOutOfRangeException>(() => AngoffCut.Of(0, []));
    }

    private static AngoffJudge Judge(string name, params double?[] ratings) => new(name, ratings);
}
