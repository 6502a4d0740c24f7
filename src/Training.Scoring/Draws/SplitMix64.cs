namespace Training.Scoring;

/// <summary>The generator behind every draw: the same seed gives the same sequence for ever, on every machine and framework.</summary>
/// <remarks>
/// <para>Steele, Lea and Flood, "Fast splittable pseudorandom number generators", 2014; constants as in Vigna's public reference
/// implementation. It is repeatable, not secret: whoever knows the seed knows the draw, so seeds come from a secure generator.</para>
/// <para>Rule: docs/rules.md, "Draws". The framework's seeded generator promises no sequence across versions.</para>
/// </remarks>
public sealed class SplitMix64(ulong seed)
{
    private ulong _state = seed;

    /// <summary>The next 64 bits; all values are equally likely.</summary>
    public ulong NextUInt64()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15;
            var z = _state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }

    /// <summary>A whole number from 0 to <paramref name="bound"/> − 1, all equally likely.</summary>
    /// <param name="bound">At least 1; itself never returned.</param>
    /// <remarks>
    /// Rejection sampling: outputs below 2⁶⁴ mod <paramref name="bound"/> are thrown away, so that what remains is a whole number of
    /// rounds of <paramref name="bound"/>; the remainder of the first output kept is the result. Taking the remainder of every output
    /// would favour small numbers.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="bound"/> is 0.</exception>
    public ulong NextBelow(ulong bound)
    {
        ArgumentOutOfRangeException.ThrowIfZero(bound);
        var rejectedBelow = unchecked(0 - bound) % bound;
        ulong output;
        do
        {
            output = NextUInt64();
        }
        while (output < rejectedBelow);
        return output % bound;
    }

    /// <summary>Puts the items in random order, in place; all orders are equally likely (Fisher–Yates, from the last item down).</summary>
    public void Shuffle<T>(Span<T> items)
    {
        for (var last = items.Length - 1; last > 0; last--)
        {
            var other = (int)NextBelow((ulong)last + 1);
            (items[last], items[other]) = (items[other], items[last]);
        }
    }
}
