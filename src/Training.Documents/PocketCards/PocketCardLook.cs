using Training.Documents.Typesetting;
using static Training.Documents.Typesetting.Look;

namespace Training.Documents.PocketCards;

/// <summary>Sizes and distances of the card, all in one place. Lengths are points (1/72 inch).</summary>
internal static class PocketCardLook
{
    /// <summary>85.60 mm: ISO/IEC 7810, size ID-1, as every bank card.</summary>
    public const double Width = 85.60 * Millimetre;

    /// <summary>53.98 mm.</summary>
    public const double Height = 53.98 * Millimetre;

    /// <summary>From the edge to what is printed: cutting by hand is off by a millimetre.</summary>
    public const double Margin = 9;

    /// <summary>Width of the band of scales.</summary>
    public const double BandWidth = 10;

    /// <summary>From the band to the text.</summary>
    public const double BandGap = 7;

    /// <summary>Side of the QR code, quiet zone included: version 10 (200 bytes at level M) then has modules of 0.4 mm.</summary>
    public const double CodeSide = 74.2;

    /// <summary>Sizes of the type on the back: the first with which everything fits is taken.</summary>
    public static readonly IReadOnlyList<double> BackSizes = [.. Enumerable.Range(0, 13).Select(step => 8 - (step * 0.25))];

    /// <summary>Between two cards of a sheet.</summary>
    public const double Gutter = 6 * Millimetre;

    public static readonly TextStyle Provider = new(FontRole.Strong, 8, 5, Ink, IsFirm: true);
    public static readonly TextStyle Kind = new(FontRole.Text, 7.5, 5, InkSoft, IsFirm: true);
    public static readonly TextStyle Name = new(FontRole.Strong, 14, 5, Ink, IsBalanced: true, IsFirm: true);
    public static readonly TextStyle Scheme = new(FontRole.Strong, 9, 5, Ochre, IsBalanced: true, IsFirm: true);
    public static readonly TextStyle Label = new(FontRole.Text, 6.5, 5, InkSoft, IsFirm: true);
    public static readonly TextStyle Date = new(FontRole.Strong, 11, 7, Ink, IsFirm: true);
    public static readonly TextStyle Serial = new(FontRole.Strong, 9.5, 5, Ink, IsFirm: true);
    public static readonly TextStyle Stamp = new(FontRole.Strong, 6.5, 5, Ochre, IsFirm: true);
    public static readonly TextStyle Note = TextStyle.Of(FontRole.Text, 8, InkSoft);
}
