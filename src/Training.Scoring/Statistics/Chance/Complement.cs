namespace Training.Scoring;

/// <summary>Chance that at least one of several independent things happens.</summary>
internal static class Complement
{
    /// <summary>1 − Π(1 − c), added up so that small chances keep their digits.</summary>
    public static double OfProduct(IEnumerable<double> chances)
    {
        var none = 1.0;
        var any = 0.0;
        foreach (var chance in chances)
        {
            any += none * chance;
            none *= 1 - chance;
        }

        return Math.Min(any, 1);
    }
}
