using CsCheck;

namespace Training.Scoring.Tests;

public sealed class SplitMix64Tests
{
    /// <summary>First outputs for seed 1234567, as published at rosettacode.org, "Pseudo-random numbers/Splitmix64".</summary>
    private static readonly ulong[] Published =
        [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];

    /// <summary>Upper 0.1 % points of the chi-square distribution, from any printed table, by degrees of freedom.</summary>
    private static readonly Dictionary<int, double> ChiSquareLimit = new() { [5] = 20.515, [23] = 49.728 };

    [Fact]
    public void The_published_sequence_comes_out()
    {
        var random = new SplitMix64(1234567);

        Assert.Equal(Published, Enumerable.Range(0, 5).Select(_ => random.NextUInt64()));
    }

    [Fact]
    public void Outputs_below_the_incomplete_round_are_thrown_away()
    {
        // 2^64 mod (2^63 + 1) = 2^63 − 1, so the first two published outputs are rejected and the third is reduced.
        const ulong Bound = 9223372036854775809;

        Assert.Equal(Published[2] - Bound, new SplitMix64(1234567).NextBelow(Bound));
    }

    [Fact]
    public void An_output_on_the_edge_of_the_incomplete_round_is_kept()
    {
        // A bound of 2^64 − x, with x below 2^63, throws away the outputs below x: x itself is kept, x is not where the bound is one less.
        var first = Published[0];

        Assert.Equal(first, new SplitMix64(1234567).NextBelow(0 - first));
        Assert.NotEqual(first, new SplitMix64(1234567).NextBelow(0 - (first + 1)));
    }

    [Fact]
    public void A_power_of_two_rejects_nothing()
    {
        var random = new SplitMix64(1234567);

        Assert.Equal(Published.Select(output => output % 8), Enumerable.Range(0, 5).Select(_ => random.NextBelow(8)));
    }

    [Fact]
    public void A_bound_of_nought_is_a_broken_promise() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new SplitMix64(1).NextBelow(0));

    [Fact]
    public void Every_number_below_the_bound_is_about_equally_frequent()
    {
        var random = new SplitMix64(20260101);
        var counts = new int[6];
        for (var turn = 0; turn < 60_000; turn++) counts[random.NextBelow(6)]++;

        Assert.InRange(Statistics.ChiSquare(counts), 0, ChiSquareLimit[5]);
    }

    [Fact]
    public void Every_order_of_four_is_about_equally_frequent()
    {
        var counts = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var seed = 0UL; seed < 48_000; seed++)
        {
            var items = "abcd".ToCharArray();
            new SplitMix64(seed).Shuffle<char>(items);
            var order = new string(items);
            counts[order] = counts.GetValueOrDefault(order) + 1;
        }

        Assert.Equal(24, counts.Count);
        Assert.InRange(Statistics.ChiSquare([.. counts.Values]), 0, ChiSquareLimit[23]);
    }

    [Fact]
    public void A_shuffle_keeps_every_item() => Gen.Select(Gen.ULong, Gen.Int[0, 100].Array[0, 30]).Sample((seed, items) =>
    {
        var shuffled = items.ToArray();
        new SplitMix64(seed).Shuffle<int>(shuffled);
        Assert.Equal(items.Order(), shuffled.Order());
    });
}
