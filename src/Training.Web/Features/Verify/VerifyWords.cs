using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Web.Languages;

namespace Training.Web.Features.Verify;

/// <summary>Puts the answer of the register in words: one sentence that says it, one that says what to do.</summary>
public sealed class VerifyWords(IStringLocalizer<VerifyText> text)
{
    /// <summary>What was found.</summary>
    public string Says(VerifyPage page) => page.Verdict switch
    {
        Verdict.NotASerial => text["SaysNotASerial"],
        Verdict.Unknown => text["SaysUnknown"],
        Verdict.Superseded => text["SaysSuperseded"],
        Verdict.Genuine when page.Certificate!.Standing is null => text["SaysNotStarted"], // not null: there is a paper
        Verdict.Genuine => page.Certificate!.Standing.Value switch
        {
            Standing.Current or Standing.RenewalDue => text["SaysCurrent"],
            Standing.Lapsed => text["SaysLapsed", Written.Date(page.Certificate.CurrentThrough!.Value)], // not null: a period is over
            Standing.Suspended => text["SaysSuspended"],
            Standing.Withdrawn => text["SaysWithdrawn"],
        },
    };

    /// <summary>What to do about it.</summary>
    public string Does(VerifyPage page) => page.Verdict switch
    {
        Verdict.NotASerial => text["DoNotASerial"],
        Verdict.Unknown => text["DoUnknown"],
        Verdict.Superseded => text["DoSuperseded"],
        Verdict.Genuine => page.Certificate!.Standing is Standing.Current or Standing.RenewalDue ? text["DoCurrent"] : text["DoNotCurrent"],
    };
}
