using CsCheck;

namespace Training.Scoring.Tests;

public sealed class IntervalTests
{
    private static readonly Gen<(long Counted, long All)> AnyShare =
        Gen.Long[1, 2000].SelectMany(all => Gen.Long[0, all].Select(counted => (counted, all)));

    [Fact]
    public void Wilson_limits_are_those_printed() => Assert.All(QuizData.Rows("newcombe1998.csv"), row =>
    {
        var limits = ShareInterval.Wilson(QuizData.Whole(row["r"]), QuizData.Whole(row["n"]), 0.95).Known();

        Assert.Equal(QuizData.Number(row["wilson_lo"]), limits.Lower, 0.5e-4);
        Assert.Equal(QuizData.Number(row["wilson_hi"]), limits.Upper, 0.5e-4);
    });

    [Fact]
    public void Intervals_of_a_share_hold_it_and_mirror() => AnyShare.Sample((counted, all) =>
    {
        foreach (var interval in new Func<long, long, double, Estimate<Interval>>[] { ShareInterval.Wilson, ShareInterval.ClopperPearson })
        {
            var limits = interval(counted, all, 0.95).Known();
            var mirrored = interval(all - counted, all, 0.95).Known();

            Assert.InRange((double)counted / all, limits.Lower, limits.Upper);
            Assert.InRange(limits.Lower, 0, limits.Upper);
            Assert.InRange(limits.Upper, limits.Lower, 1);
            Assert.Equal(1 - limits.Lower, mirrored.Upper, 1e-7);
        }
    });

    [Fact]
    public void Intervals_of_a_million_answers_are_narrow()
    {
        var wilson = ShareInterval.Wilson(300_000, 1_000_000, 0.95).Known();
        var exact = ShareInterval.ClopperPearson(300_000, 1_000_000, 0.95).Known();

        Assert.Equal(wilson.Lower, exact.Lower, 1e-5);
        Assert.Equal(wilson.Upper, exact.Upper, 1e-5);
        Assert.Equal(0.0018, exact.Upper - exact.Lower, 1e-4);
    }

    [Fact]
    public void Without_answers_there_is_no_interval()
    {
        ShareInterval.Wilson(0, 0, 0.95).IsUnknown(Obstacle.NoAnswers);
        ShareInterval.ClopperPearson(0, 0, 0.95).IsUnknown(Obstacle.NoAnswers);
        CorrelationInterval.Fisher(0.5, 3, 0.95).IsUnknown(Obstacle.TooFewPeople);
        CorrelationInterval.Fisher(double.NaN, 30, 0.95).IsUnknown(Obstacle.NotANumber);
    }

    [Theory, InlineData(-1), InlineData(1)]
    public void A_perfect_correlation_is_its_own_interval(double correlation) =>
        Assert.Equal(new Interval(correlation, correlation), CorrelationInterval.Fisher(correlation, 30, 0.95).Known());

    [Fact]
    public void Impossible_counts_and_confidences_are_a_mistake_of_the_caller()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ShareInterval.Wilson(-1, 5, 0.95));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShareInterval.Wilson(6, 5, 0.95));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShareInterval.Wilson(1, 5, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShareInterval.ClopperPearson(1, 5, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => CorrelationInterval.Fisher(1.5, 30, 0.95));
        Assert.Throws<ArgumentOutOfRangeException>(() => CorrelationInterval.Fisher(0.5, 30, double.NaN));
    }
}
