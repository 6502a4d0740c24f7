using System.Numerics;

namespace Training.Scoring;

/// <summary>What random draws without replacement from a pool of questions have in common, and what they leave out.</summary>
/// <remarks>Feller, "An Introduction to Probability Theory and Its Applications" I, 1968, chapters II and IV. Whole numbers, rounded once.</remarks>
public static class DrawChances
{
    /// <summary>Chance that a draw from the whole pool has at least one question of every topic.</summary>
    /// <param name="topicSizes">Questions of each topic in the pool; with an empty topic the chance is 0.</param>
    /// <param name="drawn">Questions drawn.</param>
    /// <remarks>
    /// The coefficient of xᵈ in the product of ((1+x)ˢ − 1) over the topics counts the draws that cover them. It only adds, whereas inclusion
    /// and exclusion subtract large numbers.
    /// </remarks>
    /// <returns>A chance; none without topics, or where more would be drawn than there are questions.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative number.</exception>
    public static Estimate<double> EveryTopic(IReadOnlyList<int> topicSizes, int drawn)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(drawn);
        var covering = new BigInteger[drawn + 1];
        covering[0] = BigInteger.One;
        var pool = 0;
        foreach (var size in topicSizes)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(size, nameof(topicSizes));
            covering = WithTopic(covering, size);
            pool += size;
        }

        if (topicSizes.Count == 0 || drawn > pool) return Obstacle.PoolTooSmall;
        return ExactRatio.Of(covering[drawn], ExactRatio.Ways(pool, drawn));
    }

    /// <summary>Chance that two independent draws from one pool share at least so many questions (hypergeometric).</summary>
    /// <param name="pool">Questions in the pool.</param>
    /// <param name="first">Questions of the first draw.</param>
    /// <param name="second">Questions of the second draw.</param>
    /// <param name="atLeast">So many in common, or more; 0 is certain.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative number.</exception>
    public static Estimate<double> Overlap(int pool, int first, int second, int atLeast)
    {
        RequireDraws(pool, first, second);
        ArgumentOutOfRangeException.ThrowIfNegative(atLeast);
        if (first > pool || second > pool) return Obstacle.PoolTooSmall;
        var sharing = BigInteger.Zero;
        for (var common = atLeast; common <= Math.Min(first, second); common++)
        {
            sharing += ExactRatio.Ways(first, common) * ExactRatio.Ways(pool - first, second - common);
        }

        return ExactRatio.Of(sharing, ExactRatio.Ways(pool, second));
    }

    /// <summary>How many questions two independent draws share on average: a·b/N.</summary>
    /// <param name="pool">N, questions in the pool.</param>
    /// <param name="first">a, questions of the first draw.</param>
    /// <param name="second">b, questions of the second draw.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative number.</exception>
    public static Estimate<double> ExpectedOverlap(int pool, int first, int second)
    {
        RequireDraws(pool, first, second);
        if (pool == 0 || first > pool || second > pool) return Obstacle.PoolTooSmall;
        return (double)first * second / pool;
    }

    /// <summary>Chance that at least two of so many people get the same of several equally likely versions (the birthday problem).</summary>
    /// <param name="versions">Different versions of a form, at least 1.</param>
    /// <param name="people">People who each get one at random.</param>
    /// <exception cref="ArgumentOutOfRangeException">No versions, or fewer people than none.</exception>
    public static double SameVersion(int versions, int people)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(versions, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(people);
        if (people > versions) return 1;
        return Complement.OfProduct(Enumerable.Range(0, people).Select(before => (double)before / versions));
    }

    private static BigInteger[] WithTopic(BigInteger[] covering, int size)
    {
        var next = new BigInteger[covering.Length];
        var ways = BigInteger.One;
        for (var ofTopic = 1; ofTopic <= size && ofTopic < covering.Length; ofTopic++)
        {
            ways = ways * (size - ofTopic + 1) / ofTopic;
            for (var before = 0; before + ofTopic < covering.Length; before++)
            {
                next[before + ofTopic] += covering[before] * ways;
            }
        }

        return next;
    }

    private static void RequireDraws(int pool, int first, int second)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(pool);
        ArgumentOutOfRangeException.ThrowIfNegative(first);
        ArgumentOutOfRangeException.ThrowIfNegative(second);
    }
}
