namespace Training.Scoring.Tests;

public sealed class OptionTallyTests
{
    private static OptionTally Tally(params (double Share, string[] Chosen)[] answers)
    {
        var tally = new OptionTally(["a", "b"]);
        foreach (var (share, chosen) in answers) tally.Add(share, chosen);
        return tally;
    }

    [Fact]
    public void A_wrong_option_of_the_stronger_half_stands_out()
    {
        var choices = Tally((0.9, ["b"]), (0.2, ["a"]), (0.8, ["b"]), (0.1, ["b"])).Choices();

        Assert.Equal([new("a", 1, 0.0, 1.0), new OptionChoice("b", 3, 2.0, 1.0)], choices);
    }

    [Fact]
    public void The_one_in_the_middle_is_in_neither_half() =>
        Assert.Equal([new("a", 2, 1.0, 0.0), new OptionChoice("b", 1, 0.0, 1.0)], Tally((0.9, ["a"]), (0.5, ["a"]), (0.1, ["b"])).Choices());

    [Fact]
    public void People_tied_at_the_border_share_it() =>
        Assert.Equal(
            [new("a", 2, 1.5, 0.5), new OptionChoice("b", 2, 0.5, 1.5)],
            Tally((0.9, ["a"]), (0.5, ["a"]), (0.5, ["b"]), (0.1, ["b"])).Choices());

    [Fact]
    public void Several_options_may_be_chosen_or_none_and_strange_ones_count_for_nothing() =>
        Assert.Equal(
            [new("a", 1, 1.0, 0.0), new OptionChoice("b", 1, 1.0, 0.0)],
            Tally((0.9, ["a", "b"]), (0.8, ["gone"]), (0.1, []), (0.2, [])).Choices());

    [Fact]
    public void Where_nobody_is_stronger_options_are_counted_and_not_divided()
    {
        Assert.Equal(Undivided(0, Obstacle.NoAnswers), Tally().Choices()[0]);
        Assert.Equal(Undivided(1, Obstacle.TooFewPeople), Tally((0.5, ["a"])).Choices()[0]);
        Assert.Equal(Undivided(1, Obstacle.NoTotalVariance), Tally((0.5, ["a"]), (0.5, ["b"])).Choices()[0]);

        static OptionChoice Undivided(long chosen, Obstacle because) => new("a", chosen, because, because);
    }

    [Theory, InlineData(-0.1), InlineData(1.1), InlineData(double.NaN)]
    public void What_is_no_share_is_a_mistake_of_the_caller(double share) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new OptionTally(["a"]).Add(share, []));
}
