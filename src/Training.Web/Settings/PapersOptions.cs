using System.ComponentModel.DataAnnotations;
using Training.Documents.Typesetting;

namespace Training.Web.Settings;

/// <summary>Section <c>Training:Papers</c>.</summary>
public sealed class PapersOptions
{
    /// <summary>Folder with TTF faces of your own. Empty, the default: the faces that come with the PDF library.</summary>
    public string FontFolder { get; init; } = "";

    /// <summary>Sheet size. Default <see cref="PaperSize.UsLetter"/>.</summary>
    [Required]
    public PaperSize Size { get; init; } = PaperSize.UsLetter;
}
