namespace Training.Scoring;

/// <summary>Agreement of raters on categories, from subjects with any number of ratings each.</summary>
/// <param name="Value">1 for full agreement, 0 for as much as by chance, negative for less.</param>
/// <param name="Observed">Mean over subjects of the share of pairs of their ratings that agree, 0 to 1.</param>
/// <param name="Expected">The same by chance, as the coefficient understands chance.</param>
/// <param name="Subjects">How many subjects had two ratings or more and so show agreement.</param>
public sealed record CategoryAgreement(double Value, double Observed, double Expected, int Subjects)
{
    /// <summary>Share of pairs of ratings that agree, 0 to 1, chance not taken off; for two raters the plain percent agreement.</summary>
    /// <remarks>Gwet, Handbook of Inter-Rater Reliability, 4th edition, 2014: subjects with fewer than two ratings show nothing.</remarks>
    public static Estimate<double> PercentOf(CategoryCounts counts) =>
        counts.Compared is { Count: > 0 } compared ? Agreeing(compared) : Obstacle.NothingCompared;

    /// <summary>
    /// Gwet's AC1: chance is that of raters who guess where a subject is hard. It stays steady where nearly all ratings fall into one category.
    /// </summary>
    /// <remarks>
    /// Expected agreement Σ π(1 − π) / (q − 1), π being the mean share of a category over all rated subjects and q the number of categories
    /// of the scale. Gwet, "Computing inter-rater reliability and its variance in the presence of high agreement", British Journal of
    /// Mathematical and Statistical Psychology 61, 2008; with missing ratings: the Handbook, 2014.
    /// </remarks>
    public static Estimate<CategoryAgreement> Ac1(CategoryCounts counts) =>
        Beyond(counts, shares => shares.Sum(share => share * (1 - share)) / (shares.Count - 1));

    /// <summary>Brennan and Prediger's kappa: by chance every category of the scale is as likely as any other.</summary>
    /// <remarks>
    /// Expected agreement 1/q. Brennan and Prediger, "Coefficient kappa: some uses, misuses, and alternatives", Educational and Psychological
    /// Measurement 41, 1981; with missing ratings: Gwet, Handbook, 2014.
    /// </remarks>
    public static Estimate<CategoryAgreement> BrennanPrediger(CategoryCounts counts) => Beyond(counts, shares => 1.0 / shares.Count);

    private static Estimate<CategoryAgreement> Beyond(CategoryCounts counts, Func<IReadOnlyList<double>, double> expectedFrom)
    {
        if (Missing(counts) is { } obstacle) return obstacle;
        var observed = Agreeing(counts.Compared);
        var expected = expectedFrom(Shares(counts));
        return new CategoryAgreement(1 - ((1 - observed) / (1 - expected)), observed, expected, counts.Compared.Count);
    }

    /// <summary>What keeps any coefficient of these counts from having a meaning, or null.</summary>
    internal static Obstacle? Missing(CategoryCounts counts)
    {
        if (counts.Categories < 2) return Obstacle.OneCategory;
        return counts.Compared.Count switch
        {
            0 => Obstacle.NothingCompared,
            1 => Obstacle.OneSubject,
            _ => null,
        };
    }

    internal static double Agreeing(IReadOnlyList<int[]> compared) => compared.Average(counts =>
    {
        double ratings = counts.Sum();
        return counts.Sum(count => (double)count * (count - 1)) / (ratings * (ratings - 1));
    });

    /// <summary>Share of each category, every rated subject counting once however many ratings it has.</summary>
    internal static IReadOnlyList<double> Shares(CategoryCounts counts) =>
        [.. Enumerable.Range(0, counts.Categories)
            .Select(category => counts.Rated.Average(subject => subject[category] / (double)subject.Sum()))];
}
