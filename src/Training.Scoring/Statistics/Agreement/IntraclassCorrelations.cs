namespace Training.Scoring;

/// <summary>Agreement of raters who give numbers, by how the raters were chosen; for one rater's number and for the mean of all.</summary>
/// <param name="Subjects">How many subjects every rater rated.</param>
/// <param name="LeftOut">How many subjects lack a rating: the analysis of variance needs complete rows.</param>
/// <param name="Raters">How many raters.</param>
/// <param name="MeanSquares">What the coefficients are made of.</param>
/// <param name="OneWay">ICC(1,1): each subject has other raters, drawn by chance.</param>
/// <param name="TwoWayRandom">ICC(2,1): the same raters for all, drawn from many; being strict or lenient counts against agreement.</param>
/// <param name="TwoWayMixed">ICC(3,1): just these raters; being strict or lenient does not count, only whether they rank alike.</param>
public sealed record IntraclassCorrelations(
    int Subjects,
    int LeftOut,
    int Raters,
    RatingMeanSquares MeanSquares,
    Estimate<IntraclassCorrelation> OneWay,
    Estimate<IntraclassCorrelation> TwoWayRandom,
    Estimate<IntraclassCorrelation> TwoWayMixed)
{
    /// <summary>The three coefficients of ratings: a row a subject, in it a number for each rater, null where a rating is missing.</summary>
    /// <remarks>
    /// Shrout and Fleiss, "Intraclass correlations: uses in assessing rater reliability", Psychological Bulletin 86, 1979, with its F
    /// limits; those of ICC(2,1) with the degrees of freedom after Satterthwaite given there.
    /// </remarks>
    /// <exception cref="ArgumentException">Rows have different numbers of raters.</exception>
    public static Estimate<IntraclassCorrelations> Of(IReadOnlyList<IReadOnlyList<double?>> subjects)
    {
        if (subjects.Any(ratings => ratings.Count != subjects[0].Count))
        {
            throw new ArgumentException("Subjects have different numbers of raters.", nameof(subjects));
        }

        if (!subjects.All(ratings => ratings.OfType<double>().All(UsableNumber.IsUsable))) return Obstacle.NotANumber;
        var complete = subjects
            .Select(ratings => ratings.OfType<double>().ToArray())
            .Where(ratings => ratings.Length == subjects[0].Count)
            .ToList();
        if (complete.Count == 0 || complete[0].Length < 2) return Obstacle.NothingCompared;
        if (complete.Count == 1) return Obstacle.OneSubject;

        var squares = RatingMeanSquares.Of(complete);
        if (squares.BetweenSubjects == 0 && squares.WithinSubjects == 0) return Obstacle.NoVariation;
        var analysis = new IntraclassAnalysis(complete.Count, complete[0].Length, squares);
        return new IntraclassCorrelations(
            complete.Count,
            subjects.Count - complete.Count,
            complete[0].Length,
            squares,
            analysis.OneWay(),
            analysis.TwoWayRandom(),
            analysis.TwoWayMixed());
    }
}

/// <summary>One coefficient.</summary>
/// <param name="Single">For a single rater's number; at most 1, negative where raters differ more than subjects.</param>
/// <param name="Limits">95 % limits of <paramref name="Single"/>.</param>
/// <param name="Mean">For the mean of all raters: ICC(1,k), (2,k) or (3,k).</param>
public sealed record IntraclassCorrelation(double Single, Estimate<Interval> Limits, Estimate<double> Mean);
