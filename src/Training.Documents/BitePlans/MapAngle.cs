namespace Training.Documents.BitePlans;

/// <summary>An angle of a map point as pilots and dispatchers read it: whole degrees, then minutes with three decimals (about two metres).</summary>
/// <param name="Degrees">Without sign.</param>
/// <param name="Minutes">0 to 59.999.</param>
internal readonly record struct MapAngle(int Degrees, decimal Minutes)
{
    private const int InOneDegree = 60_000;

    /// <summary>Of a decimal angle, its sign left out; rounded to the nearest thousandth, halves away from zero.</summary>
    public static MapAngle Of(decimal degrees)
    {
        // Rounded as one whole number: rounded apart, 59.9996 minutes would print as 60.000.
        var thousandths = (int)decimal.Round(Math.Abs(degrees) * InOneDegree, MidpointRounding.AwayFromZero);
        return new(thousandths / InOneDegree, thousandths % InOneDegree / 1000m);
    }
}
