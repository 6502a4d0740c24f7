namespace Training.Scoring;

/// <summary>The coefficients of Shrout and Fleiss 1979 from their mean squares.</summary>
internal sealed class IntraclassAnalysis(int subjects, int raters, RatingMeanSquares squares)
{
    private const double UpperTail = 0.975;

    private readonly double _ofSubjects = squares.BetweenSubjects;
    private readonly double _withinSubjects = squares.WithinSubjects;
    private readonly double _ofRaters = squares.BetweenRaters;
    private readonly double _ofError = squares.Error;

    public Estimate<IntraclassCorrelation> OneWay() => new IntraclassCorrelation(
        (_ofSubjects - _withinSubjects) / (_ofSubjects + ((raters - 1) * _withinSubjects)),
        Limits(_withinSubjects, subjects * (raters - 1)),
        Ratio(_ofSubjects - _withinSubjects, _ofSubjects));

    public Estimate<IntraclassCorrelation> TwoWayMixed()
    {
        // Subjects with one mean and an error of 0: only the raters differ.
        if (_ofSubjects == 0 && _ofError == 0) return Obstacle.SubjectsAlike;
        return new IntraclassCorrelation(
            (_ofSubjects - _ofError) / (_ofSubjects + ((raters - 1) * _ofError)),
            Limits(_ofError, (subjects - 1) * (raters - 1)),
            Ratio(_ofSubjects - _ofError, _ofSubjects));
    }

    public Estimate<IntraclassCorrelation> TwoWayRandom()
    {
        var whole = _ofSubjects + ((raters - 1) * _ofError) + (raters * (_ofRaters - _ofError) / subjects);
        if (!(whole > 0)) return Obstacle.SubjectsAlike;
        var single = (_ofSubjects - _ofError) / whole;
        return new IntraclassCorrelation(single, RandomLimits(single), Ratio(_ofSubjects - _ofError, _ofSubjects + ((_ofRaters - _ofError) / subjects)));
    }

    private static Estimate<double> Ratio(double difference, double whole) => whole > 0 ? difference / whole : Obstacle.SubjectsAlike;

    private Estimate<Interval> Limits(double noise, int freedom)
    {
        if (noise == 0 || _ofSubjects == 0) return Obstacle.ErrorVanishes;
        var observed = _ofSubjects / noise;
        var lower = observed / FQuantile.Of(UpperTail, subjects - 1, freedom);
        var upper = observed * FQuantile.Of(UpperTail, freedom, subjects - 1);
        return new Interval((lower - 1) / (lower + raters - 1), (upper - 1) / (upper + raters - 1));
    }

    private Estimate<Interval> RandomLimits(double single)
    {
        if (_ofSubjects == 0 || _ofRaters + _ofError == 0) return Obstacle.ErrorVanishes;
        double n = subjects, k = raters;
        var raterPart = k * single / (n * (1 - single)) * _ofRaters;
        var errorPart = (1 + (k * single * (n - 1) / (n * (1 - single)))) * _ofError;
        var freedom = Square(raterPart + errorPart) / ((Square(raterPart) / (k - 1)) + (Square(errorPart) / ((n - 1) * (k - 1))));

        // A negative coefficient can make the two parts cancel, and nothing is left to approximate.
        if (!(freedom >= 1)) return Obstacle.ApproximationFails;
        var noise = (k * _ofRaters) + (((k * n) - k - n) * _ofError);
        var low = FQuantile.Of(UpperTail, n - 1, freedom);
        var high = FQuantile.Of(UpperTail, freedom, n - 1);
        return new Interval(
            n * (_ofSubjects - (low * _ofError)) / ((low * noise) + (n * _ofSubjects)),
            n * ((high * _ofSubjects) - _ofError) / (noise + (n * high * _ofSubjects)));
    }

    private static double Square(double value) => value * value;
}
