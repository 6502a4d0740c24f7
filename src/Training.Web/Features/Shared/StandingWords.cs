using Microsoft.Extensions.Localization;
using Training.Certification;

namespace Training.Web.Features.Shared;

/// <summary>The word of a standing where a tag does not fit: in a file, in a list to choose from.</summary>
public sealed class StandingWords(IStringLocalizer<SharedText> text)
{
    /// <summary>In the page's language.</summary>
    public string this[Standing standing] => standing switch
    {
        Standing.Current => text["Current"],
        Standing.RenewalDue => text["RenewalDue"],
        Standing.Lapsed => text["Lapsed"],
        Standing.Suspended => text["Suspended"],
        Standing.Withdrawn => text["Withdrawn"],
    };
}
