using CsCheck;

namespace Training.Scoring.Tests;

public sealed class DrawnTallyTests
{
    private static readonly Gen<DrawnScore[]> AnySitting = Gen.Bool.Array[6].SelectMany(asked => Gen.Bool.Array[6].Select(right =>
        Enumerable.Range(0, 6).Where(item => asked[item]).Select(item => new DrawnScore($"q{item}", right[item])).ToArray()));

    private static DrawnTally Tally(IEnumerable<DrawnScore[]> sittings)
    {
        var tally = new DrawnTally();
        foreach (var sitting in sittings) tally.Add(sitting);
        return tally;
    }

    [Fact]
    public void Order_of_sittings_and_questions_changes_nothing() => Gen.Select(AnySitting.Array[1, 30], Gen.ULong).Sample((sittings, seed) =>
    {
        var random = new SplitMix64(seed);
        var reordered = sittings.Select(sitting => sitting.ToArray()).ToArray();
        foreach (var sitting in reordered) random.Shuffle<DrawnScore>(sitting);
        random.Shuffle<DrawnScore[]>(reordered);

        foreach (var (before, after) in Tally(sittings).Results().Zip(Tally(reordered).Results()))
        {
            before.Discrimination.IsSameAs(after.Discrimination);
            Assert.Equal(before with { Discrimination = after.Discrimination }, after);
        }
    });

    [Fact]
    public void Where_all_saw_the_same_questions_the_discrimination_is_the_item_rest_correlation() => AnyTable.RightOrWrong.Sample(table =>
    {
        var drawn = Tally(table.Select(row => row.Select((score, item) => new DrawnScore($"q{item}", score > 0)).ToArray()));
        var complete = Tallies.Of(table);

        for (var item = 0; item < complete.Items; item++)
        {
            drawn.Result($"q{item}").Difficulty.IsSameAs(complete.Item(item).Difficulty);
            drawn.Result($"q{item}").Discrimination.IsSameAs(complete.Item(item).RestCorrelation);
        }
    });

    /// <summary>Ten of the twenty questions of the model in Data/Quizzes/README.md a sitting, one with its key reversed.</summary>
    [Fact]
    public void A_wrong_key_shows_as_negative_discrimination_although_everybody_saw_other_questions()
    {
        var random = new SplitMix64(7);
        var sittings = new SyntheticAnswers(1.0).Rows.Select(row =>
        {
            var items = Enumerable.Range(0, row.Length).ToArray();
            random.Shuffle<int>(items);
            return items[..10].Select(item => new DrawnScore($"q{item}", item == 9 ? row[item] == 0 : row[item] == 1)).ToArray();
        });

        var results = Tally(sittings).Results();

        Assert.All(results, result => Assert.Equal(result.QuestionId == "q9", result.Discrimination.Known() < 0));
        Assert.All(results, result => Assert.Equal(0.5, result.Exposure.Known(), 0.05));
    }

    /// <summary>By hand: q1 right with 1 of 1 other right, wrong with 0 of 2 others right; asked in 2 of 3 sittings.</summary>
    [Fact]
    public void The_rest_is_the_share_right_of_the_other_questions()
    {
        var tally = Tally(
        [
            [new("q1", true), new("q2", true)],
            [new("q1", false), new("q2", false), new("q3", false)],
            [new("q2", true), new("q3", true)],
        ]);

        var result = tally.Result("q1");

        Assert.Equal((2L, 1L), (result.Asked, result.Right));
        Assert.Equal(0.5, result.Difficulty.Known());
        Assert.Equal(1, result.Discrimination.Known(), 1e-12);
        Assert.Equal(2.0 / 3, result.Exposure.Known(), 1e-12);
    }

    [Fact]
    public void A_question_that_was_never_asked_has_an_exposure_of_nought_and_nothing_else()
    {
        var result = Tally([[new("q1", true)]]).Result("q2");

        Assert.Equal(0, result.Exposure.Known());
        result.Difficulty.IsUnknown(Obstacle.NoAnswers);
        result.Discrimination.IsUnknown(Obstacle.NoAnswers);
    }

    [Fact]
    public void A_question_alone_has_a_difficulty_and_no_discrimination()
    {
        var result = Tally([[new("q1", true)], [new("q1", false)]]).Result("q1");

        Assert.Equal(0.5, result.Difficulty.Known());
        result.Discrimination.IsUnknown(Obstacle.TooFewItems);
    }

    [Fact]
    public void Without_sittings_there_is_nothing()
    {
        Assert.Empty(new DrawnTally().Results());
        new DrawnTally().Result("q1").Exposure.IsUnknown(Obstacle.NoAnswers);
    }

    [Fact]
    public void One_sitting_or_answers_that_are_all_right_have_no_discrimination()
    {
        DiscriminationOfFirst([[new("q1", true), new("q2", false)]]).IsUnknown(Obstacle.TooFewPeople);
        DiscriminationOfFirst([[new("q1", true), new("q2", false)], [new("q1", true), new("q2", true)]]).IsUnknown(Obstacle.NoItemVariance);
        DiscriminationOfFirst([[new("q1", true), new("q2", true)], [new("q1", false), new("q2", true)]]).IsUnknown(Obstacle.NoTotalVariance);

        static Estimate<double> DiscriminationOfFirst(DrawnScore[][] sittings) => Tally(sittings).Result("q1").Discrimination;
    }
}
