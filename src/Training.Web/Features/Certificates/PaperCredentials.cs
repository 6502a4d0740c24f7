using Training.Certification;
using Training.Courses;
using Training.Documents.Credentials;
using Training.Web.Demo;
using Training.Web.Provider;
using Training.Web.Settings;

namespace Training.Web.Features.Certificates;

/// <summary>Puts together what the machine-readable forms of a paper say: the one record that all of them are written from.</summary>
public sealed class PaperCredentials(TrainingOptions options, OurProvider provider, DemoMark demo)
{
    /// <summary>Who issues.</summary>
    public IssuerAddress Issuer => new(options.PublicPage(""));

    /// <summary>Whether all that is issued here is the demonstration's.</summary>
    public bool IsDemonstration => demo.IsOn;

    /// <summary>The record of one paper.</summary>
    /// <param name="serial">Of the paper.</param>
    /// <param name="holderName">As printed.</param>
    /// <param name="course">The text that the decision was made by.</param>
    /// <param name="period">The period that the paper shows.</param>
    /// <param name="zone">IANA zone of the decision.</param>
    /// <param name="issuedAt">UTC.</param>
    /// <param name="draw">What was drawn for it.</param>
    public IssuedCredential Of(
        Serial serial, string holderName, Course course, Period period, string zone, DateTimeOffset issuedAt, CredentialDraw draw) => new()
    {
        Serial = serial,
        HolderName = holderName,
        SchemeId = course.Id,
        SchemeTitles = course.Scheme.Words.ToDictionary(words => words.Key, words => words.Value.Title),
        ShownTexts = course.Scheme.Words.ToDictionary(words => words.Key, words => words.Value.ShownText),
        SchemeVersion = course.Hash,
        Kind = course.Scheme.Kind,
        EffectiveOn = period.StartsOn,
        ExpiresOn = period.ExpiresOn,
        Zone = TimeZoneInfo.FindSystemTimeZoneById(zone),
        IssuedAt = issuedAt,
        Issuer = Issuer,
        ProviderName = provider.Name,
        StatusIndex = draw.StatusIndex,
        SubjectId = draw.SubjectId,
        CheckPage = options.PublicPage($"verify/{serial}"),
        SchemePage = options.PublicPage($"schemes/{course.Id}/{course.Hash}"),
        IsDemonstration = demo.IsOn,
    };
}
