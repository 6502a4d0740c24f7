namespace Training.Scoring;

/// <summary>Beta distribution of true shares right between two limits.</summary>
/// <param name="Lower">Lowest true share.</param>
/// <param name="Upper">Highest true share.</param>
/// <param name="Alpha">First shape, above 0.</param>
/// <param name="Beta">Second shape, above 0.</param>
public readonly record struct TrueScores(double Lower, double Upper, double Alpha, double Beta)
{
    // Further from the mean a beta distribution has nothing left that a double could tell from nothing.
    private const double Deviations = 15;

    /// <summary>False where a share below none or above all would be true.</summary>
    public bool IsUsable => Lower >= 0 && Upper <= 1 && Lower < Upper && Alpha > 0 && Beta > 0;

    /// <summary>Shares below a cut, and how much each counts; together with those above they count some constant, not 1.</summary>
    internal IReadOnlyList<(double Share, double Weight)> Below(double cut) => Part(Lowest, Math.Clamp(cut, Lowest, Highest));

    /// <summary>Shares from a cut on, and how much each counts, on the same scale.</summary>
    internal IReadOnlyList<(double Share, double Weight)> Above(double cut) => Part(Math.Clamp(cut, Lowest, Highest), Highest);

    private double Width => Upper - Lower;

    private double MeanPlace => Alpha / (Alpha + Beta);

    private double Mean => Lower + (Width * MeanPlace);

    private double Reach => Deviations * Width * Math.Sqrt(MeanPlace * (1 - MeanPlace) / (Alpha + Beta + 1));

    private double Lowest => Math.Max(Lower, Mean - Reach);

    private double Highest => Math.Min(Upper, Mean + Reach);

    private List<(double Share, double Weight)> Part(double from, double to)
    {
        // Relative to the density at the mean, which with large shapes is itself beyond the range of a double.
        var atMean = LogDensity(MeanPlace, 1 - MeanPlace);
        var part = new List<(double Share, double Weight)>();
        foreach (var node in Quadrature.Nodes(from, to))
        {
            var density = LogDensity((from - Lower + node.FromLower) / Width, (Upper - to + node.FromUpper) / Width) - atMean;
            part.Add((node.Place, node.Weight * Math.Exp(density)));
        }

        return part;
    }

    private double LogDensity(double place, double placeFromEnd) => ((Alpha - 1) * Math.Log(place)) + ((Beta - 1) * Math.Log(placeFromEnd));
}
