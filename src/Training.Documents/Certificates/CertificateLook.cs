using Training.Documents.Typesetting;
using static Training.Documents.Typesetting.Look;

namespace Training.Documents.Certificates;

/// <summary>Sizes and distances of the page, all in one place. Lengths are points (1/72 inch).</summary>
internal static class CertificateLook
{
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

    /// <summary>Height of the line drawing.</summary>
    public const double PlateHeight = 152;

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
