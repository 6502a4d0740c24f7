using Training.Certification;
using Training.Courses;

namespace Training.Web.Features.Verify;

/// <summary>A paper as the records have it: no more than the check page needs.</summary>
/// <param name="NameAsPrinted">The holder's name on this paper; null where it was erased on request.</param>
/// <param name="SchemeTitle">Title of the scheme on the day of the decision, by language.</param>
/// <param name="Kind">Certificate of training, or certification.</param>
/// <param name="Revision">1 for the first paper of a decision.</param>
/// <param name="IsSuperseded">True where a newer paper took its place.</param>
/// <param name="Held">The certification that it belongs to.</param>
/// <param name="TimeZone">IANA name of the zone kept with the decision: its calendar decides what today is.</param>
public sealed record Paper(
    string? NameAsPrinted,
    IReadOnlyDictionary<Language, string> SchemeTitle,
    SchemeKind Kind,
    int Revision,
    bool IsSuperseded,
    HeldCertification Held,
    string TimeZone);
