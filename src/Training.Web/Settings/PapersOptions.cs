using System.ComponentModel.DataAnnotations;

namespace Training.Web.Settings;

/// <summary>Sheet sizes that papers can be printed on.</summary>
public enum PaperSize
{
    /// <summary>8.5 by 11 inches.</summary>
    UsLetter,

    /// <summary>210 by 297 mm.</summary>
    A4,
}

/// <summary>Section <c>Training:Papers</c>.</summary>
public sealed class PapersOptions
{
    /// <summary>Folder with TTF faces of your own. Empty, the default: the faces that come with the PDF library.</summary>
    public string FontFolder { get; init; } = "";

    /// <summary>Sheet size. Default <see cref="PaperSize.UsLetter"/>.</summary>
    [Required]
    public PaperSize Size { get; init; } = PaperSize.UsLetter;
}
