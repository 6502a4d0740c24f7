namespace Training.Scoring;

/// <summary>How often one option of a question was chosen.</summary>
/// <param name="OptionId">Which option.</param>
/// <param name="Chosen">By how many people.</param>
/// <param name="UpperHalf">By how many of the stronger half; a fraction where people tied at the border share it.</param>
/// <param name="LowerHalf">By how many of the weaker half.</param>
public sealed record OptionChoice(string OptionId, long Chosen, Estimate<double> UpperHalf, Estimate<double> LowerHalf);

/// <summary>Who chose which option of one question, taken answer by answer; memory grows with the number of different shares right.</summary>
/// <param name="optionIds">The options, each once, in the order in which to report them.</param>
/// <remarks>
/// A wrong option that the stronger half chooses more often than the weaker one points at the key or the wording: Haladyna and
/// Rodriguez, "Developing and Validating Test Items", Routledge 2013. Who is stronger is told by the other questions of the sitting
/// alone; of an odd number of people the one in the middle is in neither half.
/// </remarks>
public sealed class OptionTally(IReadOnlyList<string> optionIds)
{
    private readonly ScoreBands _bands = new(optionIds.Count);

    /// <summary>Adds one person.</summary>
    /// <param name="shareRightOfOthers">Share right of the other questions of the same sitting, 0–1.</param>
    /// <param name="chosen">The options chosen, each once; none for a blank answer. One that the question does not have counts for nothing.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not from 0 to 1.</exception>
    public void Add(double shareRightOfOthers, IReadOnlyCollection<string> chosen)
    {
        if (shareRightOfOthers is not (>= 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(shareRightOfOthers));
        var counts = _bands.Add(shareRightOfOthers);
        for (var option = 0; option < optionIds.Count; option++)
        {
            if (chosen.Contains(optionIds[option])) counts[option]++;
        }
    }

    /// <summary>One entry an option, in the order given.</summary>
    public IReadOnlyList<OptionChoice> Choices()
    {
        var all = _bands.AllSums();
        var half = _bands.People / 2;
        if (WhyNoHalves(half) is { } reason) return [.. optionIds.Select((id, option) => new OptionChoice(id, (long)all[option], reason, reason))];
        var upper = _bands.UpperSums(half);
        var lower = _bands.LowerSums(half);
        return [.. optionIds.Select((id, option) => new OptionChoice(id, (long)all[option], upper[option], lower[option]))];
    }

    private Obstacle? WhyNoHalves(long half)
    {
        if (_bands.People == 0) return Obstacle.NoAnswers;
        if (half == 0) return Obstacle.TooFewPeople;
        return _bands.Varies ? null : Obstacle.NoTotalVariance;
    }
}
