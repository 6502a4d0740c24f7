using System.Text.RegularExpressions;
using Training.Courses;

namespace Training.Web.Features.Species;

/// <summary>A sheet as another page names it.</summary>
/// <param name="Id">For its address.</param>
/// <param name="Name">Common name.</param>
/// <param name="RangeHtml">Where it lives in words, sources left off; null where no source was found.</param>
public sealed partial record SheetLink(string Id, string Name, string? RangeHtml)
{
    /// <summary>The link in one language.</summary>
    public static SheetLink To(SpeciesSheet sheet, Language language) => new(
        sheet.Id, sheet.Words[language].Name,
        sheet.Words[language].Texts.GetValueOrDefault(SpeciesTopic.Range) is { } range ? Note().Replace(range.Html, "") : null);

    /// <summary>A list has no foot: the numbers stay on the sheet.</summary>
    [GeneratedRegex("\u202F?<sup class=\"note\">.*?</sup>", RegexOptions.Singleline, 1000)]
    private static partial Regex Note();
}
