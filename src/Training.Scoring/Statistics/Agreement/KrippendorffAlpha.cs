namespace Training.Scoring;

/// <summary>What the numbers of a scale mean, and so how far apart two of them are.</summary>
public enum MeasurementLevel
{
    /// <summary>Names: any two differ alike.</summary>
    Nominal,

    /// <summary>Ranks: two are as far apart as there are ratings between them.</summary>
    Ordinal,

    /// <summary>Equal steps: the square of the difference.</summary>
    Interval,

    /// <summary>Equal steps from a true nought: the square of the difference against the sum.</summary>
    Ratio,
}

/// <summary>Reliability of ratings by any number of raters, at any level of measurement, with or without gaps.</summary>
/// <param name="Value">1 for perfect reliability, 0 where ratings have nothing to do with subjects, negative for systematic disagreement.</param>
/// <param name="Subjects">How many had two ratings or more.</param>
/// <param name="Ratings">How many ratings those had.</param>
public sealed record KrippendorffAlpha(double Value, int Subjects, int Ratings)
{
    /// <summary>Alpha of ratings: a row a subject, in it a value for each rater, null where a rating is missing.</summary>
    /// <remarks>
    /// α = 1 − (n − 1)·Σ o·δ / Σ n<sub>c</sub>·n<sub>k</sub>·δ over the coincidences o of values; a subject with m ratings gives each ordered
    /// pair of them the weight 1/(m − 1). Krippendorff, Content Analysis, 2nd edition, 2004, chapter 11, and "Computing Krippendorff's
    /// alpha-reliability", 2011. The ordinal distance, the ratings from c to k less half of both ends, is the difference of their mid-ranks.
    /// </remarks>
    public static Estimate<KrippendorffAlpha> Of(IReadOnlyList<IReadOnlyList<double?>> subjects, MeasurementLevel level)
    {
        var given = subjects.Select(ratings => ratings.OfType<double>().ToArray()).ToList();
        if (!given.All(ratings => ratings.All(UsableNumber.IsUsable))) return Obstacle.NotANumber;
        if (level == MeasurementLevel.Ratio && given.Any(ratings => ratings.Any(rating => rating < 0)))
        {
            return Obstacle.NegativeOnRatioScale;
        }

        var compared = given.Where(ratings => ratings.Length > 1).ToList();
        if (compared.Count == 0) return Obstacle.NothingCompared;
        if (compared.Count == 1) return Obstacle.OneSubject;
        var scale = compared.SelectMany(ratings => ratings).CountBy(rating => rating).OrderBy(value => value.Key).ToList();
        if (scale.Count == 1) return Obstacle.NoVariation;

        var places = Places(scale, level);
        var observed = compared.Sum(ratings => Differences([.. ratings.Select(rating => (places[rating], 1))], level) / (ratings.Length - 1));
        var expected = Differences([.. scale.Select(value => (places[value.Key], value.Value))], level);
        var total = compared.Sum(ratings => ratings.Length);

        // Distances of the smallest numbers that a double holds have squares of 0.
        if (expected == 0) return Obstacle.NoVariation;
        return new KrippendorffAlpha(1 - ((total - 1) * observed / expected), compared.Count, total);
    }

    /// <summary>Where each value lies: at its own number or, of ranks, at its mid-rank.</summary>
    private static Dictionary<double, double> Places(List<KeyValuePair<double, int>> scale, MeasurementLevel level)
    {
        var places = new Dictionary<double, double>();
        var below = 0;
        foreach (var (value, count) in scale)
        {
            places[value] = level == MeasurementLevel.Ordinal ? below + (count / 2.0) : value;
            below += count;
        }

        return places;
    }

    /// <summary>The sum of the differences over all ordered pairs.</summary>
    private static double Differences((double Place, int Count)[] values, MeasurementLevel level)
    {
        var sum = 0.0;
        for (var one = 0; one < values.Length; one++)
        {
            for (var other = 0; other < one; other++)
            {
                sum += 2.0 * values[one].Count * values[other].Count * Difference(values[one].Place, values[other].Place, level);
            }
        }

        return sum;
    }

    private static double Difference(double one, double other, MeasurementLevel level)
    {
        if (one == other) return 0;
        var root = level switch
        {
            MeasurementLevel.Nominal => 1,
            MeasurementLevel.Ordinal or MeasurementLevel.Interval => one - other,
            MeasurementLevel.Ratio => (one - other) / (one + other),
        };
        return root * root;
    }
}
