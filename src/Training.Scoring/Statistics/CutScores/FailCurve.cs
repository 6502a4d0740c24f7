namespace Training.Scoring;

/// <summary>How many per cent of a group would fail at each cut; who scores below the cut fails.</summary>
public sealed class FailCurve
{
    // By whole cut, from 0 to one above the greatest score.
    private readonly double[] _failPercent;

    private FailCurve(double[] failPercent, int people)
    {
        _failPercent = failPercent;
        People = people;
    }

    /// <summary>How many people the curve is of.</summary>
    public int People { get; }

    /// <summary>The greatest score that can be reached.</summary>
    public int GreatestScore => _failPercent.Length - 2;

    /// <summary>From the number of people with each score, from 0 to the greatest that can be reached.</summary>
    /// <exception cref="ArgumentException">There is no score, or a number of people is negative.</exception>
    public static FailCurve Of(IReadOnlyList<int> peopleByScore)
    {
        if (peopleByScore.Count == 0 || peopleByScore.Any(people => people < 0))
        {
            throw new ArgumentException("There is no score, or a number of people is negative.", nameof(peopleByScore));
        }

        var all = peopleByScore.Sum();
        var failing = new double[peopleByScore.Count + 1];
        var below = 0;
        for (var score = 0; score < peopleByScore.Count; score++)
        {
            below += peopleByScore[score];
            failing[score + 1] = 100.0 * below / Math.Max(all, 1);
        }

        return new(failing, all);
    }

    /// <summary>Per cent below a whole cut; cuts from 0 to one above the greatest score.</summary>
    public double FailPercentAt(int cut) => _failPercent[cut];

    /// <summary>Per cent at any cut up to one above the greatest score, the whole ones joined by straight lines.</summary>
    public double JoinedAt(double cut)
    {
        var whole = Math.Min((int)cut, GreatestScore);
        return _failPercent[whole] + ((cut - whole) * (_failPercent[whole + 1] - _failPercent[whole]));
    }

    /// <summary>The first cut of a range at which the joined curve lies on or above a line that never rises; null where there is none.</summary>
    internal double? Reaches(CutLine line, double from, double to)
    {
        var cut = from;
        var gap = JoinedAt(cut) - line.At(cut);
        if (gap >= 0) return cut;
        while (cut < to)
        {
            // Both are straight up to the next whole score.
            var next = Math.Min(Math.Floor(cut) + 1, to);
            var nextGap = JoinedAt(next) - line.At(next);
            if (nextGap >= 0) return cut + ((next - cut) * gap / (gap - nextGap));
            (cut, gap) = (next, nextGap);
        }

        return null;
    }
}

/// <summary>The straight line of fail per cent that a panel stands for.</summary>
internal readonly record struct CutLine(double Cut, double FailPercent, double Slope)
{
    public double At(double cut) => FailPercent + (Slope * (cut - Cut));
}
