namespace Training.Scoring;

/// <summary>A place at which an integrand is looked at.</summary>
/// <param name="Place">Where.</param>
/// <param name="FromLower">Distance from the lower end, which near that end no subtraction could tell.</param>
/// <param name="FromUpper">Distance from the upper end.</param>
/// <param name="Weight">What the integrand there counts.</param>
internal readonly record struct Node(double Place, double FromLower, double FromUpper, double Weight);

/// <summary>Integrals of functions that may grow without bound towards either end, as beta densities with an exponent below 1 do.</summary>
/// <remarks>
/// Tanh-sinh rule: Takahasi and Mori, "Double exponential formulas for numerical integration", Publications of RIMS 9, 1974.
/// </remarks>
internal static class Quadrature
{
    private const double Step = 1.0 / 64;

    // Out to t = 6 the ends are 10⁻²⁷⁵ away: near enough for any exponent, and the weights do not yet underflow.
    private const int StepsToEachEnd = 6 * 64;

    /// <summary>The integral is the sum over the nodes of weight times integrand; none where the ends meet.</summary>
    public static IEnumerable<Node> Nodes(double lower, double upper)
    {
        var width = upper - lower;
        if (width <= 0) yield break;
        for (var step = -StepsToEachEnd; step <= StepsToEachEnd; step++)
        {
            var t = step * Step;
            var bend = Math.PI / 2 * Math.Sinh(t);
            var fromLower = width / (1 + Math.Exp(-2 * bend));
            var fromUpper = width / (1 + Math.Exp(2 * bend));
            // Between ends that are nearly one, the outermost places fall onto them.
            if (fromLower == 0 || fromUpper == 0) continue;
            var weight = Step * width * Math.PI / 4 * Math.Cosh(t) / Math.Pow(Math.Cosh(bend), 2);
            yield return new(t < 0 ? lower + fromLower : upper - fromUpper, fromLower, fromUpper, weight);
        }
    }
}
