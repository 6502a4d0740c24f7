using PdfSharp.Drawing;

namespace Training.Documents.Typesetting;

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
/// <param name="IsFirm">Never below <paramref name="LeastSize"/>: what does not fit at it is a problem of the page.</param>
internal sealed record TextStyle(FontRole Role, double Size, double LeastSize, XColor Colour, bool IsBalanced = false, bool IsFirm = false)
{
    /// <summary>A style of one size.</summary>
    public static TextStyle Of(FontRole role, double size, XColor colour) => new(role, size, size, colour, IsFirm: true);
}
