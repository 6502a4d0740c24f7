namespace Training.Scoring;

/// <summary>What a complete score table says about one item.</summary>
/// <param name="Difficulty">Mean score; for right or wrong the share right (0–1), so that a high number means an easy question.</param>
/// <param name="RestCorrelation">Correlation with the total of the other items: the discrimination to report (Henrysson 1963).</param>
/// <param name="TotalCorrelation">Correlation with the total that contains the item itself, and therefore too high.</param>
/// <param name="AlphaIfDropped">Cronbach's alpha of the other items; it needs two of them.</param>
public sealed record ItemResult(
    Estimate<double> Difficulty,
    Estimate<double> RestCorrelation,
    Estimate<double> TotalCorrelation,
    Estimate<double> AlphaIfDropped);
