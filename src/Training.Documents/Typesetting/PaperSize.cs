namespace Training.Documents.Typesetting;

/// <summary>The paper that something is drawn for.</summary>
public enum PaperSize
{
    /// <summary>8.5 × 11 inches (612 × 792 points).</summary>
    UsLetter,

    /// <summary>210 × 297 mm (595 × 842 points).</summary>
    A4,
}

/// <summary>The measures of papers.</summary>
internal static class PaperSizes
{
    /// <summary>Short and long side, points.</summary>
    public static (double Short, double Long) Sides(this PaperSize paper) => paper switch
    {
        PaperSize.UsLetter => (612, 792),
        PaperSize.A4 => (210 * Look.Millimetre, 297 * Look.Millimetre),
    };
}
