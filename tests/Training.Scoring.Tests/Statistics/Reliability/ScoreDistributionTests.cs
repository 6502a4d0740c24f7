namespace Training.Scoring.Tests;

public sealed class ScoreDistributionTests
{
    [Fact]
    public void Mean_and_variances_are_those_of_the_people()
    {
        var scores = Tallies.Distribution(6, [(2, 1), (4, 2), (6, 1)]);

        Assert.Equal([0, 0, 1, 0, 2, 0, 1], scores.Counts);
        Assert.Equal(4, scores.Mean.Known());
        Assert.Equal(2, scores.PopulationVariance.Known());
        Assert.Equal(8.0 / 3, scores.SampleVariance.Known(), 1e-12);
    }

    [Fact]
    public void Nobody_has_no_mean_and_one_person_no_sample_variance()
    {
        new ScoreDistribution(6).Mean.IsUnknown(Obstacle.NoAnswers);
        new ScoreDistribution(6).PopulationVariance.IsUnknown(Obstacle.NoAnswers);
        Tallies.Distribution(6, [(2, 1)]).SampleVariance.IsUnknown(Obstacle.TooFewPeople);
    }

    [Fact]
    public void A_score_that_no_form_gives_is_a_mistake_of_the_caller()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new ScoreDistribution(6).Add(7));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ScoreDistribution(6).Add(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ScoreDistribution(6).Add(1, -1));
    }
}
