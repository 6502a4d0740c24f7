using System.Globalization;
using System.Numerics;
using CsCheck;

namespace Training.Scoring.Tests;

public sealed class ChanceTests
{
    private static readonly Dictionary<string, Func<IReadOnlyDictionary<string, string>, double>> ChanceIn = new(StringComparer.Ordinal)
    {
        ["guessing.csv"] = ChanceValues.Guess,
        ["coverage.csv"] = ChanceValues.Coverage,
        ["overlap.csv"] = ChanceValues.Overlap,
        ["birthday.csv"] = ChanceValues.Birthday,
    };

    private static readonly Gen<(int Pool, int First, int Second)> TwoDraws =
        Gen.Int[1, 40].SelectMany(pool => Gen.Select(Gen.Int[0, pool], Gen.Int[0, pool], (first, second) => (pool, first, second)));

    public static TheoryData<string> Files => [.. ChanceIn.Keys];

    /// <summary>The fractions are exact; twelve digits of the quotient, also where it is 10⁻¹⁴, must be ours.</summary>
    [Theory, MemberData(nameof(Files))]
    public void Chances_have_the_digits_of_their_fractions(string file) => Assert.All(QuizData.Rows(file), row =>
    {
        var parts = row["fraction"].Split('/').Select(part => BigInteger.Parse(part, CultureInfo.InvariantCulture)).ToList();
        var exact = parts.Count == 1 ? (double)parts[0] : Math.Exp(BigInteger.Log(parts[0]) - BigInteger.Log(parts[1]));

        Assert.Equal(exact, ChanceIn[file](row), exact * 1e-12);
    });

    [Fact]
    public void A_higher_pass_mark_is_never_easier_to_guess() => Gen.Select(Gen.Int[1, 5], Gen.Int[0, 15], Gen.Int[0, 5]).Sample(
        (options, count, known) =>
        {
            var chances = Enumerable.Range(0, count + known + 2).Select(mark => Guessing.ChanceToPass([new(options, count)], known, mark)).ToList();

            Assert.Equal(1, chances[0]);
            Assert.Equal(0, chances[^1]);
            Assert.Equal(chances.OrderDescending(), chances);
        });

    [Fact]
    public void Many_tries_at_a_small_chance_keep_its_digits()
    {
        Assert.Equal(3e-20, Guessing.InTries(1e-20, 3), 1e-32);
        Assert.Equal(0, Guessing.InTries(0.5, 0));
        Assert.Equal(0, Guessing.InTries(0, 5));
        Assert.Equal(1, Guessing.InTries(1, 5));
        Assert.Throws<ArgumentOutOfRangeException>(() => Guessing.InTries(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Guessing.InTries(0.5, -1));
    }

    [Fact]
    public void A_form_without_questions_reaches_a_mark_of_nought_only()
    {
        Assert.Equal(1, Guessing.ChanceToPass([], 0, 0));
        Assert.Equal(0, Guessing.ChanceToPass([], 0, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Guessing.ChanceToPass([new(0, 1)], 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Guessing.ChanceToPass([new(4, -1)], 0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Guessing.ChanceToPass([], -1, 0));
    }

    /// <summary>The mean of a whole number is the sum of its chances to be at least 1, 2 …</summary>
    [Fact]
    public void Chances_of_overlap_add_up_to_the_expected_overlap() => TwoDraws.Sample((pool, first, second) =>
    {
        var sum = Enumerable.Range(1, 40).Sum(common => DrawChances.Overlap(pool, first, second, common).Known());

        Assert.Equal(DrawChances.ExpectedOverlap(pool, first, second).Known(), sum, 1e-9);
        Assert.Equal(1, DrawChances.Overlap(pool, first, second, 0).Known());
    });

    [Fact]
    public void The_order_of_topics_changes_no_chance() => Gen.Select(Gen.Int[1, 8].Array[1, 5], Gen.Int[0, 8], Gen.ULong).Sample(
        (sizes, drawn, seed) =>
        {
            var reordered = sizes.ToArray();
            new SplitMix64(seed).Shuffle<int>(reordered);

            Assert.Equal(DrawChances.EveryTopic(sizes, drawn), DrawChances.EveryTopic(reordered, drawn));
        });

    [Fact]
    public void No_draw_covers_an_empty_topic() => Assert.Equal(0, DrawChances.EveryTopic([3, 0], 2).Known());

    [Fact]
    public void More_than_the_pool_has_cannot_be_drawn()
    {
        DrawChances.EveryTopic([2, 2], 5).IsUnknown(Obstacle.PoolTooSmall);
        DrawChances.EveryTopic([], 0).IsUnknown(Obstacle.PoolTooSmall);
        DrawChances.Overlap(10, 11, 5, 1).IsUnknown(Obstacle.PoolTooSmall);
        DrawChances.Overlap(10, 5, 11, 1).IsUnknown(Obstacle.PoolTooSmall);
        DrawChances.ExpectedOverlap(0, 0, 0).IsUnknown(Obstacle.PoolTooSmall);
        DrawChances.ExpectedOverlap(10, 5, 11).IsUnknown(Obstacle.PoolTooSmall);
    }

    [Fact]
    public void Nobody_or_one_person_shares_no_version()
    {
        Assert.Equal(0, DrawChances.SameVersion(5, 0));
        Assert.Equal(0, DrawChances.SameVersion(5, 1));
        Assert.Equal(1, DrawChances.SameVersion(1, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => DrawChances.SameVersion(0, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => DrawChances.SameVersion(5, -1));
    }
}
