using System.Numerics;

namespace Training.Scoring.Tests;

/// <summary>
/// A second implementation of right and wrong, from the 1EdTech "Question and Test Interoperability (QTI) 3.0, Assessment, Section and
/// Item Information Model": response variables with a cardinality and a base type, the response processing template
/// <c>match_correct</c> (the operator <c>match</c> against the declared correct response) and the operator <c>equal</c> with tolerance
/// mode <c>absolute</c>; pairs as identifiers joined in order (<c>directedPair</c>), a place as a <c>point</c> with the operator
/// <c>inside</c>. What they say, in our words:
/// <list type="bullet">
/// <item>An empty container is NULL; an operator with a NULL operand is NULL; a condition that is NULL counts as not true.</item>
/// <item><c>match</c>, single: the same identifier. Multiple: the same members, order of no meaning. Ordered: the same members in the
/// same places.</item>
/// <item><c>equal</c>, absolute, with tolerances t0 and t1: value − t0 ≤ response ≤ value + t1; both bounds are included by default.</item>
/// <item>A <c>directedPair</c> is two identifiers, the first one the source; two are the same where both sides are.</item>
/// <item><c>inside</c>, with the shapes and coordinates of HTML image maps: <c>rect</c> left, top, right, bottom; <c>circle</c> centre and
/// radius; <c>poly</c> its corners. A hot spot is the identifier of the area in which the point lies.</item>
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

    /// <summary>The value of a variable of base type directedPair as QTI writes it: source, space, target.</summary>
    public static string DirectedPair(string source, string target) => $"{source} {target}";

    /// <summary><c>inside</c> for a point of whole coordinates; the outline counts as inside.</summary>
    public static bool Inside((int X, int Y) point, string shape, IReadOnlyList<int> coords) => shape switch
    {
        "rect" => coords[0] <= point.X && point.X <= coords[2] && coords[1] <= point.Y && point.Y <= coords[3],
        "circle" => Math.Pow(point.X - coords[0], 2) + Math.Pow(point.Y - coords[1], 2) <= Math.Pow(coords[2], 2),
        "poly" => InsidePolygon(point, [.. coords.Chunk(2).Select(corner => (corner[0], corner[1]))]),
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, null),
    };

    /// <summary>The outcome SCORE of <c>match_correct</c>: 1 where the condition is true, 0 where it is false or NULL.</summary>
    public static int Score(bool? condition) => condition == true ? 1 : 0;

    // A ray to the right crosses the outline of what it starts in an odd number of times; a point on an edge is looked at first.
    private static bool InsidePolygon((int X, int Y) point, (int X, int Y)[] corners)
    {
        var isInside = false;
        for (var i = 0; i < corners.Length; i++)
        {
            var (one, other) = (corners[i], corners[(i + 1) % corners.Length]);
            var cross = ((long)(other.X - one.X) * (point.Y - one.Y)) - ((long)(other.Y - one.Y) * (point.X - one.X));
            var isBetween = point.X >= Math.Min(one.X, other.X) && point.X <= Math.Max(one.X, other.X)
                && point.Y >= Math.Min(one.Y, other.Y) && point.Y <= Math.Max(one.Y, other.Y);
            if (cross == 0 && isBetween) return true;
            if (one.Y > point.Y == other.Y > point.Y) continue;
            var crossingX = one.X + ((double)(point.Y - one.Y) * (other.X - one.X) / (other.Y - one.Y));
            if (point.X < crossingX) isInside = !isInside;
        }

        return isInside;
    }

    private static string Bag(IEnumerable<string> members) => string.Join('\n', members.Order(StringComparer.Ordinal));

    private static BigInteger Exact(decimal number)
    {
        var bits = decimal.GetBits(number);
        var digits = ((BigInteger)(uint)bits[2] << 64) + ((BigInteger)(uint)bits[1] << 32) + (uint)bits[0];
        var scale = (bits[3] >> 16) & 0xFF;
        return digits * BigInteger.Pow(10, 28 - scale) * (bits[3] < 0 ? -1 : 1);
    }
}
