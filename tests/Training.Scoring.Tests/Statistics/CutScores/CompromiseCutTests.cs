using CsCheck;

namespace Training.Scoring.Tests;

/// <summary>Hofstee's and Beuk's compromises with the scores that people reach.</summary>
public sealed class CompromiseCutTests
{
    // Ten people: 10 % fail at a cut of 3, 30 % at 5, 60 % at 7, all above 9.
    private static readonly FailCurve Curve = FailCurve.Of([0, 0, 1, 0, 2, 0, 3, 0, 2, 2, 0]);

    private static readonly Gen<FailCurve> Curves =
        Gen.Int[0, 5].Array[11].Where(people => people.Sum() > 0).Select(people => FailCurve.Of(people));

    private static readonly Gen<HofsteeBounds> AnyBounds =
        from cuts in Gen.Int[0, 40].Array[2]
        from fails in Gen.Int[0, 100].Array[2]
        select new HofsteeBounds(cuts.Min() / 4.0, cuts.Max() / 4.0, fails.Min(), fails.Max());

    [Fact]
    public void Who_scores_the_cut_passes()
    {
        Assert.Equal((10, 10), (Curve.People, Curve.GreatestScore));
        Assert.Equal([0, 0, 0, 10, 10, 30, 30, 60, 60, 80, 100, 100], Enumerable.Range(0, 12).Select(Curve.FailPercentAt));
    }

    [Fact]
    public void Hofstees_cut_lies_within_the_bounds_and_the_whole_score_is_not_below() => Gen.Select(AnyBounds, Curves).Sample((bounds, curve) =>
    {
        var cut = HofsteeCut.Of(bounds, curve).Known();

        Assert.InRange(cut.Cut, bounds.MinCut, bounds.MaxCut);
        Assert.InRange(cut.WholeScore, bounds.MinCut, Math.Ceiling(bounds.MaxCut));
        Assert.Equal(curve.FailPercentAt(cut.WholeScore), cut.FailPercentAtWholeScore);
        if (cut.Meeting == HofsteeMeeting.AboveAll) Assert.Equal(bounds.MinCut, cut.Cut);
        if (cut.Meeting == HofsteeMeeting.BelowAll) Assert.Equal(bounds.MaxCut, cut.Cut);
    });

    [Fact]
    public void The_whole_score_is_the_first_at_which_the_steps_reach_the_line() => Gen.Select(AnyBounds, Curves).Sample((bounds, curve) =>
    {
        var cut = HofsteeCut.Of(bounds, curve).Known();
        if (cut.Meeting != HofsteeMeeting.Crosses || bounds.MinCut == bounds.MaxCut) return;

        var fall = (bounds.MaxFailPercent - bounds.MinFailPercent) / (bounds.MaxCut - bounds.MinCut);
        var reached = Enumerable.Range(0, 11)
            .Where(score => score >= bounds.MinCut && score <= bounds.MaxCut)
            .Where(score => curve.FailPercentAt(score) >= bounds.MaxFailPercent - (fall * (score - bounds.MinCut)) - 1e-9)
            .ToList();
        if (reached.Count > 0) Assert.Equal(reached[0], cut.WholeScore);
    });

    public static TheoryData<HofsteeBounds, HofsteeMeeting, double, int> Bounds_and_where_they_are_met => new()
    {
        { new(3, 7, 10, 50), HofsteeMeeting.Crosses, 5, 5 },        // the line 50 − 10·(c − 3) is at 30 where the curve is
        { new(3, 6, 10, 40), HofsteeMeeting.Crosses, 14 / 3.0, 5 }, // 40 − 10·(c − 3) meets 10 + 20·(c − 4)
        { new(6, 8, 0, 20), HofsteeMeeting.AboveAll, 6, 6 },
        { new(1, 4, 20, 40), HofsteeMeeting.BelowAll, 4, 4 },
        { new(1, 4.5, 30, 40), HofsteeMeeting.BelowAll, 4.5, 5 },
        { new(5, 5, 20, 40), HofsteeMeeting.Crosses, 5, 5 },        // one cut only is acceptable
        { new(5, 5, 0, 20), HofsteeMeeting.AboveAll, 5, 5 },
        { new(5, 5, 40, 50), HofsteeMeeting.BelowAll, 5, 5 },
        { new(3, 9, 30, 30), HofsteeMeeting.Crosses, 5, 5 },        // one failing share only is acceptable
    };

    [Theory, MemberData(nameof(Bounds_and_where_they_are_met))]
    public void The_line_of_the_panel_is_met_where_the_curve_reaches_it(HofsteeBounds bounds, HofsteeMeeting meeting, double cut, int wholeScore)
    {
        var hofstee = HofsteeCut.Of(bounds, Curve).Known();

        Assert.Equal((meeting, wholeScore), (hofstee.Meeting, hofstee.WholeScore));
        Assert.Equal(cut, hofstee.Cut, 1e-9);
    }

    [Fact]
    public void Judges_without_usable_bounds_are_named_and_left_out()
    {
        HofsteeJudge[] judges =
        [
            new("whole", new(3, 7, 10, 50)), new("none", null), new("swapped", new(7, 3, 10, 50)), new("fails swapped", new(3, 7, 50, 10)),
            new("too high", new(3, 11, 10, 50)), new("damaged", new(3, 7, double.NaN, 50)),
        ];

        var cut = HofsteeCut.Of(judges, Curve).Known();

        Assert.Equal(
            [
                new("none", LeftOutReason.Incomplete), new("swapped", LeftOutReason.BoundsSwapped), new("fails swapped", LeftOutReason.BoundsSwapped),
                new("too high", LeftOutReason.OutOfRange), new LeftOutJudge("damaged", LeftOutReason.OutOfRange),
            ],
            cut.LeftOut);
        Assert.Equal(new HofsteeBounds(3, 7, 10, 50), cut.Bounds);
    }

    [Fact]
    public void Without_judges_usable_bounds_or_people_there_is_no_hofstee_cut()
    {
        Assert.Equal(Obstacle.NoUsableJudge, HofsteeCut.Of([], Curve).Because());
        Assert.Equal(Obstacle.OutOfRange, HofsteeCut.Of(new HofsteeBounds(7, 3, 0, 10), Curve).Because());
        Assert.Equal(Obstacle.NobodyScored, HofsteeCut.Of(new HofsteeBounds(3, 7, 0, 10), FailCurve.Of(new int[11])).Because());
    }

    [Fact]
    public void Beuks_line_and_the_curve_meet_at_the_cut() =>
        Gen.Select(Curves, Gen.Select(Gen.Int[0, 10], Gen.Int[0, 100]).Array[2, 6]).Sample((curve, panel) =>
        {
            var beuk = BeukCut.Of([.. panel.Select(judge => new BeukJudge("J", judge.Item1, judge.Item2))], curve);
            if (beuk is Estimate<BeukCut>.Unknown)
            {
                Assert.Equal(Obstacle.JudgesAlike, beuk.Because());
                return;
            }

            var cut = beuk.Known();
            Assert.InRange(cut.Cut, 0, 11);
            if (cut.Slope is not Estimate<double>.Known(var slope)) Assert.Equal(cut.MeanCut, cut.Cut, 1e-9);
            else Assert.Equal(100 - cut.MeanPassPercent - (slope * (cut.Cut - cut.MeanCut)), curve.JoinedAt(cut.Cut), 1e-6);
        });

    [Fact]
    public void What_judges_agree_on_decides()
    {
        var sameCut = BeukCut.Of([new("J1", 6, 50), new("J2", 6, 90)], Curve).Known();
        var samePercent = BeukCut.Of([new("J1", 4, 70), new("J2", 8, 70)], Curve).Known();

        Assert.Equal((6, 6, Obstacle.NoVariation), (sameCut.Cut, sameCut.PassMark, sameCut.Slope.Because()));
        // A sum of three times 0.1 divided by three is a hair above 0.1.
        Assert.Equal(Obstacle.NoVariation, BeukCut.Of([new("J1", 0.1, 50), new("J2", 0.1, 90), new("J3", 0.1, 70)], Curve).Known().Slope.Because());
        Assert.Equal((5, 5, 0), (samePercent.Cut, samePercent.PassMark, samePercent.Slope.Known()));
    }

    [Fact]
    public void Judges_who_leave_a_number_out_are_named_and_left_out()
    {
        BeukJudge[] judges =
        [
            new("J1", 4, 70), new("J2", 8, 60), new("half", 5, null), new("other half", null, 60), new("high", 11, 60), new("damaged", 5, double.NaN),
        ];

        Assert.Equal(
            [
                new("half", LeftOutReason.Incomplete), new("other half", LeftOutReason.Incomplete), new("high", LeftOutReason.OutOfRange),
                new LeftOutJudge("damaged", LeftOutReason.OutOfRange),
            ],
            BeukCut.Of(judges, Curve).Known().LeftOut);
    }

    [Fact]
    public void Without_two_judges_who_differ_or_without_people_there_is_no_beuk_cut()
    {
        Assert.Equal(Obstacle.NoUsableJudge, BeukCut.Of([], Curve).Because());
        Assert.Equal(Obstacle.OneJudge, BeukCut.Of([new("J1", 4, 70)], Curve).Because());
        Assert.Equal(Obstacle.JudgesAlike, BeukCut.Of([new("J1", 4, 70), new("J2", 4, 70)], Curve).Because());
        Assert.Equal(Obstacle.NobodyScored, BeukCut.Of([new("J1", 4, 70), new("J2", 8, 60)], FailCurve.Of([0, 0])).Because());
    }

    [Fact]
    public void Numbers_of_people_that_are_none_are_a_broken_promise()
    {
        Assert.Throws<ArgumentException>(() => FailCurve.Of([]));
        Assert.Throws<ArgumentException>(() => FailCurve.Of([1, -1]));
    }
}
