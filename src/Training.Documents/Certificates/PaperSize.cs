namespace Training.Documents.Certificates;

/// <summary>The paper that a certificate is drawn for; always landscape.</summary>
public enum PaperSize
{
    /// <summary>11 × 8.5 inches (792 × 612 points).</summary>
    UsLetter,

    /// <summary>297 × 210 mm (842 × 595 points).</summary>
    A4,
}
