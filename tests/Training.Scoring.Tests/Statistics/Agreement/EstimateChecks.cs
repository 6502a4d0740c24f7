namespace Training.Scoring.Tests;

/// <summary>Takes the value or the obstacle out of an estimate, or fails the test.</summary>
internal static class EstimateChecks
{
    public static T Known<T>(this Estimate<T> estimate) => Assert.IsType<Estimate<T>.Known>(estimate).Value;

    public static Obstacle Because<T>(this Estimate<T> estimate) => Assert.IsType<Estimate<T>.Unknown>(estimate).Because;
}
