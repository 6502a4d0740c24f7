using PdfSharp.Drawing;

namespace Training.Documents.Typesetting;

/// <summary>Colours and measures that all papers share. Lengths are points (1/72 inch).</summary>
/// <remarks>
/// Paper stays white; ink says, ochre points, rules only part. Contrast on white (WCAG 2 formula): ink 17.3, soft ink 8.3, ochre 6.6.
/// In grey they stay apart: ink 10 %, soft ink 31 %, ochre 35 %, rule 77 % of white.
/// </remarks>
internal static class Look
{
    public static readonly XColor Ink = XColor.FromArgb(0x1d, 0x1a, 0x16);
    public static readonly XColor InkSoft = XColor.FromArgb(0x54, 0x4d, 0x42);
    public static readonly XColor Rule = XColor.FromArgb(0xcf, 0xc4, 0xb0);
    public static readonly XColor Ochre = XColor.FromArgb(0x8a, 0x4f, 0x00);
    public static readonly XColor Paper = XColor.FromArgb(0xff, 0xff, 0xff);

    /// <summary>Points in a millimetre.</summary>
    public const double Millimetre = 72 / 25.4;

    /// <summary>Least side of one QR module: 0.4 mm.</summary>
    public const double LeastModule = 0.4 * Millimetre;

    /// <summary>The one weight of everything drawn by hand.</summary>
    public const double Line = 0.9;

    /// <summary>Distance between two lines of text over the size of its type.</summary>
    public const double Leading = 1.27;
}
