namespace Training.Scoring;

/// <summary>Agreement beyond chance of raters who are interchangeable: each subject may have other ones.</summary>
/// <param name="Value">1 for full agreement, 0 for as much as by chance, negative for less.</param>
/// <param name="Observed">Mean over subjects of the share of pairs of their ratings that agree, 0 to 1.</param>
/// <param name="Expected">The same by chance: Σ p² over the shares p of the categories.</param>
/// <param name="Subjects">How many subjects had two ratings or more.</param>
/// <param name="AgainstChance">The test of "no agreement beyond chance"; only where all subjects have as many ratings.</param>
/// <param name="Categories">Agreement on each category against all others, in the order of the scale; where <paramref name="AgainstChance"/> is.</param>
public sealed record FleissKappa(
    double Value,
    double Observed,
    double Expected,
    int Subjects,
    Estimate<ChanceTest> AgainstChance,
    IReadOnlyList<Estimate<CategoryKappa>> Categories)
{
    /// <summary>Kappa of counts, with or without missing ratings.</summary>
    /// <remarks>
    /// <para>κ = (P̄ − Pe)/(1 − Pe): Fleiss, "Measuring nominal scale agreement among many raters", Psychological Bulletin 76, 1971; also
    /// the values by category. With missing ratings, shares come from all rated subjects and P̄ from those rated twice: Gwet, Handbook
    /// of Inter-Rater Reliability, 4th edition, 2014.</para>
    /// <para>Errors under κ = 0: Fleiss, Nee and Landis, "Large sample variance of kappa in the case of different sets of raters",
    /// Psychological Bulletin 86, 1979.</para>
    /// </remarks>
    public static Estimate<FleissKappa> Of(CategoryCounts counts)
    {
        if (CategoryAgreement.Missing(counts) is { } obstacle) return obstacle;
        var shares = CategoryAgreement.Shares(counts);
        var spread = shares.Sum(share => share * (1 - share));
        if (spread == 0) return Obstacle.NoVariation;

        var observed = CategoryAgreement.Agreeing(counts.Compared);
        var value = 1 - ((1 - observed) / spread);
        return new FleissKappa(
            value,
            observed,
            1 - spread,
            counts.Compared.Count,
            AreEven(counts) ? Test(counts, shares, value) : Obstacle.UnequalRatings,
            [.. shares.Select((share, category) => AreEven(counts) ? OfCategory(counts, category, share) : Obstacle.UnequalRatings)]);
    }

    private static bool AreEven(CategoryCounts counts) => counts.Rated.All(subject => subject.Sum() == counts.Rated[0].Sum());

    private static Estimate<ChanceTest> Test(CategoryCounts counts, IReadOnlyList<double> shares, double value)
    {
        var spread = shares.Sum(share => share * (1 - share));
        var inner = (spread * spread) - shares.Sum(share => share * (1 - share) * (1 - (2 * share)));
        var error = CategoryError(counts) * Math.Sqrt(inner) / spread;
        return new ChanceTest(error, value / error);
    }

    private static Estimate<CategoryKappa> OfCategory(CategoryCounts counts, int category, double share)
    {
        if (share == 0) return Obstacle.CategoryUnused;
        var disagreeing = counts.Rated.Sum(subject => (double)subject[category] * (subject.Sum() - subject[category]));
        var value = 1 - (disagreeing / (Pairs(counts) * share * (1 - share)));
        return new CategoryKappa(value, value / CategoryError(counts));
    }

    // The same for every category.
    private static double CategoryError(CategoryCounts counts) => Math.Sqrt(2 / Pairs(counts));

    private static double Pairs(CategoryCounts counts)
    {
        double ratings = counts.Rated[0].Sum();
        return counts.Rated.Count * ratings * (ratings - 1);
    }
}

/// <summary>A value against chance alone.</summary>
/// <param name="StandardError">Large-sample error where there is no agreement beyond chance.</param>
/// <param name="Z">The value in such errors; beyond ±1.96 chance alone explains it in fewer than 1 of 20 cases.</param>
public sealed record ChanceTest(double StandardError, double Z);

/// <summary>Agreement on one category against all others.</summary>
/// <param name="Value">1 for full agreement, 0 for as much as by chance, negative for less.</param>
/// <param name="Z">The value in its large-sample errors under chance alone.</param>
public sealed record CategoryKappa(double Value, double Z);
