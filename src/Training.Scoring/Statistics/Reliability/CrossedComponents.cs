namespace Training.Scoring;

/// <summary>Variance components of a complete table of people × items, on the scale of one item, and what follows from them.</summary>
/// <param name="OfPeople">σ²(p): how much people differ.</param>
/// <param name="OfItems">σ²(i): how much items differ in difficulty.</param>
/// <param name="OfRest">σ²(pi,e): what is neither the person nor the item alone.</param>
/// <param name="Mean">Mean of all scores: for right or wrong the share right.</param>
/// <param name="People">n, at least 2.</param>
/// <param name="Items">k, at least 2.</param>
/// <remarks>Brennan, "Generalizability Theory", Springer 2001, chapters 1 and 2. Estimates may be negative and are used as they are.</remarks>
public readonly record struct CrossedComponents(
    double OfPeople, double OfItems, double OfRest, double Mean, long People, int Items)
{
    /// <summary>Error variance of a person's mean score where only the order of people counts: σ²(pi,e)/k.</summary>
    public double RelativeError => OfRest / Items;

    /// <summary>Error variance of a person's mean score where the score itself counts: (σ²(i) + σ²(pi,e))/k.</summary>
    public double AbsoluteError => (OfItems + OfRest) / Items;

    /// <summary>Standard error of a person's mean score against a fixed cut, 0–1 for right or wrong.</summary>
    public double StandardError => Math.Sqrt(AbsoluteError);

    /// <summary>Eρ² = σ²(p)/(σ²(p) + σ²(pi,e)/k), for decisions by order; for a complete table of right and wrong it equals KR-20.</summary>
    public Estimate<double> Generalisability => Dependability.Ratio(OfPeople, RelativeError);

    /// <summary>Φ = σ²(p)/(σ²(p) + (σ²(i) + σ²(pi,e))/k), for decisions by the score itself.</summary>
    /// <remarks>Brennan and Kane, "An index of dependability for mastery tests", Journal of Educational Measurement 14, 1977.</remarks>
    public Estimate<double> Phi => Dependability.Ratio(OfPeople, AbsoluteError);

    /// <summary>Φ(λ): dependability of decisions at a cut.</summary>
    /// <param name="cut">λ on the scale of one item: for right or wrong the share of questions, 0–1.</param>
    /// <remarks>
    /// Brennan and Kane 1977: (σ²(p) + (μ−λ)²)/(σ²(p) + (μ−λ)² + σ²(Δ)), where (X̄−λ)² less the variance of X̄ stands for (μ−λ)²
    /// without bias.
    /// </remarks>
    public Estimate<double> PhiAt(double cut)
    {
        var varianceOfMean = (OfPeople / People) + (OfItems / Items) + (OfRest / ((double)People * Items));
        return Dependability.Ratio(OfPeople + ((Mean - cut) * (Mean - cut)) - varianceOfMean, AbsoluteError);
    }
}
