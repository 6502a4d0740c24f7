using Training.Certification;
using Training.Courses;
using Training.Web.Demo;

namespace Training.Web.Features.Verify;

/// <summary>What a check found about the paper itself.</summary>
public enum Verdict
{
    /// <summary>We issued it and nothing newer took its place.</summary>
    Genuine,

    /// <summary>We issued it; a newer paper took its place.</summary>
    Superseded,

    /// <summary>A serial of the right form that we never gave out.</summary>
    Unknown,

    /// <summary>Not of the form of our serials: a character is missing or wrong.</summary>
    NotASerial,
}

/// <summary>What the check page is given, and all that it may tell.</summary>
/// <param name="Verdict">About the paper.</param>
/// <param name="Serial">As printed; what was typed where it is no serial.</param>
/// <param name="CheckedAt">In the zone of the decision, else the provider's.</param>
/// <param name="Certificate">Null where there is no paper.</param>
public sealed record VerifyPage(Verdict Verdict, string Serial, DateTimeOffset CheckedAt, CheckedCertificate? Certificate)
{
    /// <summary>The page of a paper that the records have.</summary>
    /// <param name="serial">Its serial.</param>
    /// <param name="paper">What the records have.</param>
    /// <param name="now">The instant of the check.</param>
    /// <param name="demo">Whether papers here are invented.</param>
    /// <param name="language">Of the page.</param>
    public static VerifyPage Of(Serial serial, Paper paper, DateTimeOffset now, DemoMark demo, Language language)
    {
        var checkedAt = TimeZoneInfo.ConvertTimeBySystemTimeZoneId(now, paper.TimeZone);
        var today = DateOnly.FromDateTime(checkedAt.DateTime);
        var expiresOn = Standings.ExpiresOn(paper.Held, today);
        return new(
            paper.IsSuperseded ? Verdict.Superseded : Verdict.Genuine,
            serial.ToString(),
            checkedAt,
            new CheckedCertificate(
                paper.NameAsPrinted,
                paper.SchemeTitle[language],
                paper.Kind,
                Standings.On(paper.Held, today),
                expiresOn,
                expiresOn is null ? 0 : expiresOn.Value.DayNumber - today.DayNumber,
                paper.Revision,
                demo.IsOn));
    }
}

/// <summary>What a gate guard needs of a certificate; nothing else leaves the records.</summary>
/// <param name="NameAsPrinted">To compare with the person; null where it was erased.</param>
/// <param name="SchemeTitle">What was certified or trained, in the page's language.</param>
/// <param name="Kind">Which of the two.</param>
/// <param name="Standing">Today; null before the first period starts.</param>
/// <param name="CurrentThrough">Last day of the period; null before it starts.</param>
/// <param name="DaysLeft">From today to that day; negative after it.</param>
/// <param name="Revision">Of this paper.</param>
/// <param name="IsDemo">Invented: proves nothing.</param>
public sealed record CheckedCertificate(
    string? NameAsPrinted,
    string SchemeTitle,
    SchemeKind Kind,
    Standing? Standing,
    DateOnly? CurrentThrough,
    int DaysLeft,
    int Revision,
    bool IsDemo);
