namespace Training.Scoring.Tests;

public sealed class HalfTestsTests
{
    [Fact]
    public void Halves_that_always_decide_alike_are_perfectly_consistent() =>
        Assert.Equal(new HalfTests(1, 1, 1), HalfTests.From(10, 0, 0, 30).Known());

    [Fact]
    public void Where_all_decide_the_same_there_is_nothing_to_correlate()
    {
        HalfTests.From(0, 0, 0, 30).IsUnknown(Obstacle.OneDecisionOnly);
        HalfTests.From(30, 0, 0, 0).IsUnknown(Obstacle.OneDecisionOnly);
    }

    [Fact]
    public void Bad_input_gives_a_reason()
    {
        HalfTests.From(0, 0, 0, 0).IsUnknown(Obstacle.NoAnswers);
        HalfTests.From(0, 10, 10, 0).IsUnknown(Obstacle.ReliabilityOutOfRange);
        HalfTests.From(double.PositiveInfinity, 1, 1, 1).IsUnknown(Obstacle.NotANumber);
        Assert.Throws<ArgumentOutOfRangeException>(() => HalfTests.From(1, -1, 1, 1));
    }
}
