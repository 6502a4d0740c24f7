namespace Training.Scoring.Tests;

public sealed class GroupTallyTests
{
    private const ComparedGroup Reference = ComparedGroup.Reference;

    /// <summary>By hand, two bands: q1 beside 1 of 2 right lies in the upper band, beside 0 of 2 in the lower one.</summary>
    [Fact]
    public void People_are_matched_by_the_share_right_of_the_other_questions()
    {
        var tally = new GroupTally(2);
        tally.Add(Reference, [new("q1", true), new("q2", true), new("q3", false)]);
        tally.Add(ComparedGroup.Focal, [new("q1", false), new("q2", false), new("q3", true)]);
        tally.Add(ComparedGroup.Focal, [new("q1", true), new("q4", false)]);

        Assert.Equal([new(0, 0, 1, 0), new(1, 0, 0, 1)], tally.Strata("q1"));
        Assert.Equal(["q1", "q2", "q3", "q4"], tally.QuestionIds);
    }

    [Theory, InlineData(0, 0), InlineData(1, 1), InlineData(2, 2), InlineData(3, 2)]
    public void A_share_on_a_border_lies_in_the_upper_band_and_all_right_in_the_highest(int othersRight, int band)
    {
        var tally = new GroupTally(3);

        tally.Add(Reference, [new("q", true), .. Enumerable.Range(0, 3).Select(other => new DrawnScore($"o{other}", other < othersRight))]);

        Assert.Equal(1, tally.Strata("q")[band].ReferenceRight);
    }

    [Fact]
    public void A_question_alone_is_matched_by_nothing_and_counts_nowhere()
    {
        var tally = new GroupTally(3);
        tally.Add(Reference, [new("q1", true)]);

        Assert.Empty(tally.Strata("q1"));
        CommonOdds.Of(tally.Strata("q1")).IsUnknown(Obstacle.NoAnswers);
    }

    /// <summary>
    /// The model of Data/Quizzes/README.md: every second person is of the focal group, for whom one question was made harder by chance. Ten of
    /// the twenty questions a sitting, so that the total is over other questions each time.
    /// </summary>
    [Fact]
    public void A_question_that_is_harder_for_one_group_stands_out_and_no_other_does()
    {
        var (tally, random) = (new GroupTally(5), new SplitMix64(11));
        foreach (var (person, row) in new SyntheticAnswers(1.0).Rows.Index())
        {
            var (group, items) = (person % 2 == 0 ? Reference : ComparedGroup.Focal, Enumerable.Range(0, row.Length).ToArray());
            random.Shuffle<int>(items);
            tally.Add(group, [.. items[..10].Select(item => new DrawnScore(
                $"q{item}", row[item] == 1 && !(item == 9 && group != Reference && random.NextBelow(2) == 0)))]);
        }

        // One in 10,000: with twenty questions, chance alone would rarely call one out.
        var standingOut = tally.QuestionIds.Where(id => CommonOdds.Of(tally.Strata(id)).Known() is { PValue: < 1e-4, Delta: < 0 });

        Assert.Equal(["q9"], standingOut);
    }
}
