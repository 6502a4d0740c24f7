namespace Training.Scoring;

/// <summary>How consistently two sittings with equivalent forms would decide.</summary>
/// <param name="Passing">Share of people who pass a sitting, 0–1.</param>
/// <param name="Failing">Share who fail it; given too, because one minus a share close to 1 has lost its digits.</param>
/// <param name="Differing">Share who would pass one sitting and fail the other, in either order.</param>
public readonly record struct DecisionConsistency(double Passing, double Failing, double Differing)
{
    private const double NotOneInABillion = 1e-9;

    /// <summary>p: share of people decided the same way twice, 0–1.</summary>
    public double Agreement => 1 - Differing;

    /// <summary>The agreement that chance alone would give with the same shares of passes.</summary>
    public double ByChance => (Passing * Passing) + (Failing * Failing);

    /// <summary>κ = (p − chance)/(1 − chance): what is better than chance.</summary>
    public Estimate<double> Kappa
    {
        get
        {
            // The same as the formula above, without the difference of two numbers close to 1.
            var differingByChance = 2 * Passing * Failing;
            return differingByChance <= NotOneInABillion ? Obstacle.OneDecisionOnly : 1 - (Differing / differingByChance);
        }
    }
}
