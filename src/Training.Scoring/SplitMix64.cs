namespace Training.Scoring;

/// <summary>The generator behind every draw: SplitMix64, 64 bits of state, the same numbers on every machine for ever.</summary>
/// <param name="seed">Any value.</param>
/// <remarks>
/// Source: G. L. Steele, D. Lea and C. H. Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014; constants as in the
/// public reference code. The framework's seeded sequence is no contract and may change; this one is part of the stored evidence. Not for secrets.
/// </remarks>
public sealed class SplitMix64(ulong seed)
{
    private ulong state = seed;

    /// <summary>The next 64 bits.</summary>
    public ulong NextUInt64()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15;
            var z = state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }

    /// <summary>A number from 0 to <paramref name="bound"/> − 1, each equally likely.</summary>
    /// <param name="bound">At least 1.</param>
    /// <remarks>Rejection sampling: values below 2^64 mod bound are drawn again, since taking the remainder alone would favour small numbers.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The bound is 0.</exception>
    public ulong NextBelow(ulong bound)
    {
        ArgumentOutOfRangeException.ThrowIfZero(bound);
        var rejectBelow = unchecked(0UL - bound) % bound;
        ulong value;
        do
        {
            value = NextUInt64();
        }
        while (value < rejectBelow);

        return value % bound;
    }

    /// <summary>The items in a random order, each order equally likely (Fisher–Yates, from the last place down).</summary>
    public IReadOnlyList<T> Shuffle<T>(IReadOnlyList<T> items)
    {
        T[] shuffled = [.. items];
        for (var place = shuffled.Length - 1; place > 0; place--)
        {
            var other = (int)NextBelow((ulong)place + 1);
            (shuffled[place], shuffled[other]) = (shuffled[other], shuffled[place]);
        }

        return shuffled;
    }
}
