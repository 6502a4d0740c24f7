namespace Training.Scoring.Tests;

public sealed class StepCountsTests
{
    [Fact]
    public void Each_mark_is_counted_once_and_what_was_not_observed_is_not_failed()
    {
        var counts = StepCounts.Of(TestPerformance.Checklist,
        [
            TestPerformance.Sheet(TestPerformance.Ana, "dd------------------"), TestPerformance.Sheet(TestPerformance.Ana, "pd------------------"),
            TestPerformance.Sheet(TestPerformance.Ben, "n-------------------"), TestPerformance.Sheet(TestPerformance.Ben, "--------------------"),
        ]);

        Assert.Equal(new StepCounts("s1", false, 1, 1, 1, 1), counts[0]);
        Assert.Equal(1 / 3.0, counts[0].ShareDone.Known(), 1e-12);
        Assert.Equal(new StepCounts("s3", true, 0, 0, 0, 4), counts[2]);
        counts[2].ShareDone.IsUnknown(Obstacle.NoAnswers);
    }
}
