using Training.Scoring;

namespace Training.Records.Tests;

/// <summary>Whole numbers by the generator of draws, so that a seed that is printed makes the same rows again on every machine.</summary>
internal sealed class RandomNumbers(ulong seed)
{
    private readonly SplitMix64 numbers = new(seed);

    /// <summary>From 0, below a count.</summary>
    public int Below(int count) => (int)numbers.NextBelow((ulong)count);

    /// <summary>From the first, below the last.</summary>
    public int Between(int first, int last) => first + Below(last - first);
}
