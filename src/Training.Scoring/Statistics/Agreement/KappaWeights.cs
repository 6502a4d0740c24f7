namespace Training.Scoring;

/// <summary>How much it counts when two raters choose different categories. Programs differ in their default; here there is none.</summary>
public abstract record KappaWeights
{
    private KappaWeights()
    {
    }

    /// <summary>Any two categories differ alike: Cohen's kappa of 1960.</summary>
    public sealed record Unweighted : KappaWeights;

    /// <summary>Categories are in order; the weight is their distance.</summary>
    public sealed record Linear : KappaWeights;

    /// <summary>Categories are in order; the weight is the square of their distance (Fleiss and Cohen 1973).</summary>
    public sealed record Quadratic : KappaWeights;

    /// <summary>Weights of one's own (Cohen 1968).</summary>
    /// <param name="Disagreements">Square; 0 on the diagonal, elsewhere 0 or more; only their proportions matter.</param>
    public sealed record Own(IReadOnlyList<IReadOnlyList<double>> Disagreements) : KappaWeights;

    /// <summary>Whether there is a usable weight for every pair of this many categories.</summary>
    internal bool Fit(int categories) => this is not Own own || (
        own.Disagreements.Count == categories
        && own.Disagreements.All(row => row.Count == categories && row.All(weight => weight >= 0 && UsableNumber.IsUsable(weight)))
        && own.Disagreements.Select((row, category) => row[category]).All(weight => weight == 0)
        && own.Disagreements.Any(row => row.Any(weight => weight > 0)));

    internal double Disagreement(int first, int second) => this switch
    {
        Unweighted => first == second ? 0 : 1,
        Linear => Math.Abs(first - second),
        Quadratic => (double)(first - second) * (first - second),
        Own own => own.Disagreements[first][second],
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
