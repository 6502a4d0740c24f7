using Training.Courses;
using Training.Web.Features.Issuer;

namespace Training.Web.Features.Verify;

/// <summary>What the check of codes on a device goes by.</summary>
public static class CodeCheck
{
    /// <summary>Where the keys are that it believes.</summary>
    public const string KeysAddress = "/verify/keys";

    /// <summary>From how many days on a list of withdrawn papers is called old: it says itself that nobody should rely on it longer.</summary>
    public static int OldDays => StatusListPages.ValidFor.Days;

    /// <summary>For the browser's own names of months: the order of day and month that <see cref="Languages.Written"/> has.</summary>
    public static string DatesIn(Language language) => language switch
    {
        Language.English => "en-GB",
        Language.Spanish => "es",
    };
}
