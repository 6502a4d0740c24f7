namespace Training.Scoring;

/// <summary>How long something took, in whole seconds, with a memory of fixed size. What took longer than a quarter of an hour was an interruption.</summary>
public sealed class TimeTally
{
    /// <summary>Longer times count as this many seconds.</summary>
    public const int Longest = 900;

    private readonly long[] _times = new long[Longest + 1];
    private long _all;

    /// <summary>Adds one time; a negative one, from clocks that disagree, counts for nothing.</summary>
    public void Add(TimeSpan time)
    {
        if (time < TimeSpan.Zero) return;
        _times[(int)Math.Min(Longest, time.TotalSeconds)]++;
        _all++;
    }

    /// <summary>The time that half of all did not exceed, in whole seconds.</summary>
    public Estimate<int> Median => Quantile(0.5);

    /// <summary>The shortest time that at least this share of all did not exceed, in whole seconds.</summary>
    /// <param name="share">Above 0 and at most 1.</param>
    public Estimate<int> Quantile(double share)
    {
        if (share is not (> 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(share), share, "Above 0 and at most 1.");
        if (_all == 0) return Obstacle.NoAnswers;
        var seen = 0L;
        var seconds = 0;
        while ((seen += _times[seconds]) < share * _all) seconds++;
        return seconds;
    }
}
