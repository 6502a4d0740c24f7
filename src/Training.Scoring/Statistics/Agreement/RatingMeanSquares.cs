namespace Training.Scoring;

/// <summary>Mean squares of a table of numbers by subjects and raters; the names in brackets are those of Shrout and Fleiss 1979.</summary>
/// <param name="BetweenSubjects">Of the means of the subjects (BMS).</param>
/// <param name="WithinSubjects">Of ratings about their subject's mean (WMS).</param>
/// <param name="BetweenRaters">Of the means of the raters (JMS).</param>
/// <param name="Error">Of what neither subject nor rater explains (EMS).</param>
public sealed record RatingMeanSquares(double BetweenSubjects, double WithinSubjects, double BetweenRaters, double Error)
{
    // A mean square this far below the squares of the ratings themselves is the rounding of their sums.
    private const double Rounding = 1e-26;

    internal static RatingMeanSquares Of(IReadOnlyList<double[]> subjects)
    {
        int raters = subjects[0].Length;
        var ofSubject = subjects.Select(ratings => ratings.Average()).ToArray();
        var ofRater = Enumerable.Range(0, raters).Select(rater => subjects.Average(ratings => ratings[rater])).ToArray();
        var grand = ofSubject.Average();
        var cells = subjects.SelectMany((ratings, subject) => ratings.Select((rating, rater) => (rating, subject, rater))).ToList();
        var noise = Rounding * cells.Max(cell => cell.rating * cell.rating);

        return new(
            Mean(raters * ofSubject.Sum(mean => Square(mean - grand)), subjects.Count - 1),
            Mean(cells.Sum(cell => Square(cell.rating - ofSubject[cell.subject])), subjects.Count * (raters - 1)),
            Mean(subjects.Count * ofRater.Sum(mean => Square(mean - grand)), raters - 1),
            Mean(
                cells.Sum(cell => Square(cell.rating - ofSubject[cell.subject] - ofRater[cell.rater] + grand)),
                (subjects.Count - 1) * (raters - 1)));

        double Mean(double sum, int freedom) => sum / freedom > noise ? sum / freedom : 0;
    }

    private static double Square(double value) => value * value;
}
