namespace Training.Scoring;

/// <summary>What an instructor thinks of a performance as a whole, in order; apart from the points (docs/rules.md, "Practicals").</summary>
/// <remarks>The numbers are what a borderline regression reads (<see cref="BorderlineRegressionCut"/>).</remarks>
public enum Impression
{
    /// <summary>Not ready.</summary>
    NotReady = 1,

    /// <summary>On the border: the grade at which a cut is read.</summary>
    Borderline = 2,

    /// <summary>Ready.</summary>
    Ready = 3,

    /// <summary>More than ready.</summary>
    Assured = 4,
}
