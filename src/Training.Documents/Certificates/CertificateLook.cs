using PdfSharp.Drawing;

namespace Training.Documents.Certificates;

/// <summary>Colours, sizes and distances of the page, all in one place. Lengths are points (1/72 inch).</summary>
/// <remarks>
/// Paper stays white; ink says, ochre points, rules only part. Contrast on white (WCAG 2 formula): ink 17.3, soft ink 8.3, ochre 6.6.
/// In grey they stay apart: ink 10 %, soft ink 31 %, ochre 35 %, rule 77 % of white.
/// </remarks>
internal static class CertificateLook
{
    public static readonly XColor Ink = XColor.FromArgb(0x1d, 0x1a, 0x16);
    public static readonly XColor InkSoft = XColor.FromArgb(0x54, 0x4d, 0x42);
    public static readonly XColor Rule = XColor.FromArgb(0xcf, 0xc4, 0xb0);
    public static readonly XColor Ochre = XColor.FromArgb(0x8a, 0x4f, 0x00);
    public static readonly XColor Paper = XColor.FromArgb(0xff, 0xff, 0xff);

    /// <summary>From the edge of the paper to the frame; most office printers cannot reach the outer 18 points.</summary>
    public const double Margin = 26;

    /// <summary>From the frame to what it holds.</summary>
    public const double Padding = 18;

    /// <summary>Width of the band of scales at the left.</summary>
    public const double BandWidth = 36;

    /// <summary>From the band to the text.</summary>
    public const double BandGap = 22;

    /// <summary>Width of the column with the drawing, the code and the serial.</summary>
    public const double SideWidth = 184;

    /// <summary>Between the two columns.</summary>
    public const double ColumnGap = 30;

    /// <summary>Side of the QR code, quiet zone included.</summary>
    public const double CodeSide = 116;

    /// <summary>Least side of one QR module: 0.4 mm.</summary>
    public const double LeastModule = 0.4 / 25.4 * 72;

    /// <summary>Height of the line drawing.</summary>
    public const double PlateHeight = 152;

    /// <summary>The one weight of everything drawn by hand.</summary>
    public const double Line = 0.9;

    /// <summary>Distance between two lines of text over the size of its type.</summary>
    public const double Leading = 1.27;

    public static readonly TextStyle Provider = new(FontRole.Strong, 14, 7, Ink);
    public static readonly TextStyle Address = new(FontRole.Text, 9, 5, InkSoft);
    public static readonly TextStyle Title = new(FontRole.Display, 31, 20, Ink);
    public static readonly TextStyle Lead = new(FontRole.Text, 10.5, 8, InkSoft);
    public static readonly TextStyle Name = new(FontRole.Strong, 33, 8, Ink, IsBalanced: true);
    public static readonly TextStyle Scheme = new(FontRole.Strong, 19, 8, Ochre, IsBalanced: true);
    public static readonly TextStyle Body = new(FontRole.Text, 10.5, 6, Ink);
    public static readonly TextStyle Label = new(FontRole.Text, 8.5, 5.5, InkSoft);
    public static readonly TextStyle Date = new(FontRole.Strong, 15, 9, Ink);
    public static readonly TextStyle Value = new(FontRole.Strong, 10, 5, Ink);
    public static readonly TextStyle Note = new(FontRole.Text, 8, 5, InkSoft);
    public static readonly TextStyle Limit = new(FontRole.Strong, 9.5, 7, Ink);
    public static readonly TextStyle Serial = new(FontRole.Strong, 15, 7, Ink);
    public static readonly TextStyle Small = new(FontRole.Text, 8.5, 6.5, Ink);
    public static readonly TextStyle Stamp = new(FontRole.Strong, 12, 8, Ochre);
}

/// <summary>What a text is set in; the operator's faces fill the roles.</summary>
internal enum FontRole
{
    Display,
    Text,
    Strong,
}

/// <summary>How a text looks.</summary>
/// <param name="Role">Which face.</param>
/// <param name="Size">Greatest size, points.</param>
/// <param name="LeastSize">Least size that a text too long for its place may shrink to.</param>
/// <param name="Colour">Of the letters.</param>
/// <param name="IsBalanced">Lines of about one length, as for a name; else each line as full as it can be.</param>
internal sealed record TextStyle(FontRole Role, double Size, double LeastSize, XColor Colour, bool IsBalanced = false);
