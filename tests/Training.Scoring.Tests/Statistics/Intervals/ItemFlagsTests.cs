namespace Training.Scoring.Tests;

public sealed class ItemFlagsTests
{
    [Theory, InlineData(0), InlineData(29)]
    public void Few_answers_say_nothing(int answers) =>
        Assert.Equal([ItemFlag.TooFew], ItemFlags.Of(answers, 0, -0.9));

    [Fact]
    public void Without_a_discrimination_only_difficulty_is_looked_at()
    {
        Assert.Equal([ItemFlag.TooEasy], ItemFlags.Of(500, 500, Obstacle.NoItemVariance));
        Assert.Equal([ItemFlag.TooHard], ItemFlags.Of(500, 0, Obstacle.NoItemVariance));
        Assert.Empty(ItemFlags.Of(40, 40, Obstacle.NoItemVariance));
    }

    [Fact]
    public void A_perfect_reversal_is_negative() => Assert.Equal([ItemFlag.Negative], ItemFlags.Of(30, 15, -1.0));
}
