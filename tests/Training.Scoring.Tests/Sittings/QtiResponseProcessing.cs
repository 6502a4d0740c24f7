using System.Numerics;

namespace Training.Scoring.Tests;

/// <summary>
/// A second implementation of right and wrong, from the 1EdTech "Question and Test Interoperability (QTI) 3.0, Assessment, Section and
/// Item Information Model": response variables with a cardinality and a base type, the response processing template
/// <c>match_correct</c> (the operator <c>match</c> against the declared correct response) and the operator <c>equal</c> with tolerance
/// mode <c>absolute</c>. What they say, in our words:
/// <list type="bullet">
/// <item>An empty container is NULL; an operator with a NULL operand is NULL; a condition that is NULL counts as not true.</item>
/// <item><c>match</c>, single: the same identifier. Multiple: the same members, order of no meaning. Ordered: the same members in the
/// same places.</item>
/// <item><c>equal</c>, absolute, with tolerances t0 and t1: value − t0 ≤ response ≤ value + t1; both bounds are included by default.</item>
/// </list>
/// </summary>
internal static class QtiResponseProcessing
{
    public enum Cardinality
    {
        Single,
        Multiple,
        Ordered,
    }

    /// <summary>The value of a variable of base type identifier; NULL is an empty list.</summary>
    public static bool? Match(Cardinality cardinality, IReadOnlyList<string> response, IReadOnlyList<string> correct)
    {
        if (response.Count == 0 || correct.Count == 0) return null;
        return cardinality switch
        {
            Cardinality.Single => response[0] == correct[0],
            Cardinality.Multiple => Bag(response) == Bag(correct),
            Cardinality.Ordered => string.Join('\n', response) == string.Join('\n', correct),
        };
    }

    /// <summary><c>equal</c> of two floats with absolute tolerance, in exact whole units of 10⁻²⁸ instead of floating point.</summary>
    public static bool? EqualAbsolute(decimal? response, decimal correct, decimal t0, decimal t1)
    {
        if (response is null) return null;
        var distance = Exact(response.Value) - Exact(correct);
        return distance >= -Exact(t0) && distance <= Exact(t1);
    }

    /// <summary>The outcome SCORE of <c>match_correct</c>: 1 where the condition is true, 0 where it is false or NULL.</summary>
    public static int Score(bool? condition) => condition == true ? 1 : 0;

    private static string Bag(IEnumerable<string> members) => string.Join('\n', members.Order(StringComparer.Ordinal));

    private static BigInteger Exact(decimal number)
    {
        var bits = decimal.GetBits(number);
        var digits = ((BigInteger)(uint)bits[2] << 64) + ((BigInteger)(uint)bits[1] << 32) + (uint)bits[0];
        var scale = (bits[3] >> 16) & 0xFF;
        return digits * BigInteger.Pow(10, 28 - scale) * (bits[3] < 0 ? -1 : 1);
    }
}
