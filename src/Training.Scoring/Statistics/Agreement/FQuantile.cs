using MathNet.Numerics;

namespace Training.Scoring;

/// <summary>Quantiles of the F distribution.</summary>
internal static class FQuantile
{
    private const int Halvings = 200;

    /// <summary>The value that F with these degrees of freedom, whole or not, stays below with this probability.</summary>
    /// <remarks>
    /// By halving on the logarithm of F. The package's own quantile looks between 0 and 1000 only, and with one degree of freedom below
    /// the line the 97.5 % point lies beyond.
    /// </remarks>
    public static double Of(double probability, double above, double below)
    {
        double low = -50, high = 50;
        for (var turn = 0; turn < Halvings; turn++)
        {
            var middle = (low + high) / 2;
            var ratio = above * Math.Exp(middle);
            if (SpecialFunctions.BetaRegularized(above / 2, below / 2, ratio / (ratio + below)) < probability) low = middle;
            else high = middle;
        }

        return Math.Exp((low + high) / 2);
    }
}
