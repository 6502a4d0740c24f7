using CsCheck;

namespace Training.Scoring.Tests;

public sealed class SplitMix64Tests
{
    /// <summary>Published reference outputs of SplitMix64 for seed 1234567 (as printed beside the public reference code).</summary>
    private static readonly ulong[] Published =
        [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];

    [Fact]
    public void It_gives_the_published_numbers()
    {
        var chance = new SplitMix64(1234567);

        Assert.Equal(Published, Published.Select(_ => chance.NextUInt64()));
    }

    [Fact]
    public void A_bounded_number_lies_below_its_bound() =>
        Gen.Select(Gen.ULong, Gen.ULong[1, ulong.MaxValue]).Sample((seed, bound) => new SplitMix64(seed).NextBelow(bound) < bound);

    [Fact]
    public void A_bound_of_zero_is_a_broken_promise() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new SplitMix64(1).NextBelow(0));

    [Fact]
    public void A_shuffle_keeps_every_item_once() =>
        Gen.Select(Gen.ULong, Gen.Int.List[0, 40]).Sample((seed, items) => new SplitMix64(seed).Shuffle(items).Order().SequenceEqual(items.Order()));

    /// <summary>All 24 orders of four items over 24,000 seeds: chi-square with 23 degrees of freedom lies below 49.73 in 99.9 % of fair generators.</summary>
    [Fact]
    public void Every_order_is_equally_likely()
    {
        var counts = Enumerable.Range(0, 24_000)
            .CountBy(seed => string.Concat(new SplitMix64((ulong)seed).Shuffle(["a", "b", "c", "d"])))
            .ToList();

        Assert.Equal(24, counts.Count);
        Assert.InRange(counts.Sum(order => Math.Pow(order.Value - 1000, 2) / 1000), 0, 49.73);
    }
}
