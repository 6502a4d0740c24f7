using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using Training.Certification;
using Training.Courses;
using Training.Documents.Certificates;
using Training.Documents.Credentials;
using Training.Documents.Fonts;
using Training.Records;
using Training.Web.Keys;
using Training.Web.Provider;
using Training.Web.Settings;

namespace Training.Web.Features.Certificates;

/// <summary>Issues papers of granted decisions, in every language, each once.</summary>
public sealed class CertificateIssue(TrainingOptions options, OurProvider provider, FontFaces faces, PaperCredentials credentials, IssuerKeys keys)
{
    private const int RevisionHashLength = 8;

    // So many collisions of random draws in a row do not happen; a fault in the records would loop for ever.
    private const int MostDraws = 20;

    /// <summary>Issues a paper; a second call for the same decision and revision answers with the serial of the first.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="order">Of a decision as kept.</param>
    /// <param name="course">The course that it was decided by.</param>
    /// <param name="now">UTC.</param>
    /// <param name="problems">Receives everything for which no paper can be issued.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <returns>The serial, or null where a problem was found.</returns>
    public async Task<Serial?> IssueAsync(
        RecordsContext records, PaperOrder order, Course course, DateTimeOffset now, ICollection<Problem> problems, CancellationToken cancellation)
    {
        if (await FindNameAsync(records, order, now, problems, cancellation) is not { } name) return null;
        var holder = await ReadHolderAsync(records, order, name.Text, cancellation);
        var placesGiven = await records.PlacesGivenAsync(cancellation);
        for (var draw = 0; draw < MostDraws; draw++)
        {
            var paper = new Drawn(Serial.Draw(RandomNumberGenerator.GetInt32), CredentialDraw.Next(placesGiven), now);
            // Asked before anything is printed and signed for it; whoever takes it meanwhile is found when the paper is kept.
            if (await records.IsPlaceGivenAsync(paper.Credential.StatusIndex, cancellation)) continue;
            var renderings = Render(order, course, holder, paper, problems);
            if (renderings.Count == 0) return null;
            var issue = await records.IssueAsync(
                new(order.DecisionId, order.Revision, paper.Serial.Value, name.Id, paper.Credential.StatusIndex, paper.Credential.SubjectId, renderings), now, cancellation);
            if (issue is not Issue.DrawTaken) return Read(issue, problems);
        }

        throw new InvalidOperationException($"{MostDraws} draws in a row were taken.");
    }

    /// <summary>Finds everything for which <see cref="IssueAsync"/> would issue no paper, without writing anything.</summary>
    public async Task CheckAsync(
        RecordsContext records, PaperOrder order, Course course, DateTimeOffset now, ICollection<Problem> problems, CancellationToken cancellation)
    {
        if (await FindNameAsync(records, order, now, problems, cancellation) is not { } name) return;
        var holder = await ReadHolderAsync(records, order, name.Text, cancellation);
        var serial = Serial.Draw(RandomNumberGenerator.GetInt32);
        foreach (var language in LanguageTags.All)
            CertificateChecks.CanPrint(Page(order, course, holder, serial, CheckAddress(serial), language), faces, problems);
    }

    // The first paper has the name of the day of the decision, a revision that of today: a new name is what most revisions are for.
    private static async Task<(Guid Id, string Text)?> FindNameAsync(
        RecordsContext records, PaperOrder order, DateTimeOffset now, ICollection<Problem> problems, CancellationToken cancellation)
    {
        var day = order.Revision == 1 ? order.DecidedOn : DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(order.Zone));
        var name = await records.FindNameAsync(order.PersonId, day, cancellation);
        if (name?.Text is { } text) return (name.Id, text);
        problems.Add(new(RecordsProblems.NameUnknown, Place.Of("person"), order.PersonId.ToString()));
        return null;
    }

    private static Serial? Read(Issue issue, ICollection<Problem> problems)
    {
        switch (issue)
        {
            case Issue.Issued issued:
                return Serial.TryParse(issued.Serial, out var fresh) ? fresh : throw new UnreachableException();
            case Issue.AlreadyIssued before:
                return Serial.TryParse(before.Serial, out var first) ? first : throw new UnreachableException();
            case Issue.Refused refused:
                foreach (var problem in refused.Problems) problems.Add(problem);
                return null;
            default:
                throw new UnreachableException();
        }
    }

    private static async Task<Holder> ReadHolderAsync(RecordsContext records, PaperOrder order, string name, CancellationToken cancellation)
    {
        var site = await records.FindSiteAsync(order.PersonId, order.DecidedOn, cancellation);
        var decidedBy = order.LeadId is { } lead ? (await records.FindNameAsync(lead, order.DecidedOn, cancellation))?.Text : null;
        return new(name, TraineeNumber(order.PersonId), site?.Name, decidedBy);
    }

    // The random half of the id: 62 random bits tell every trainee apart, and the time that the other half holds is nobody's business.
    private static string TraineeNumber(Guid personId) =>
        string.Join('-', personId.ToString("N")[16..].ToUpperInvariant().Chunk(4).Select(group => new string(group)));

    private List<Rendering> Render(PaperOrder order, Course course, Holder holder, Drawn paper, ICollection<Problem> problems)
    {
        var renderings = new List<Rendering>();
        var code = CodeAddress(credentials.Of(paper.Serial, holder.Name, course, order.Period, order.Zone, paper.IssuedAt, paper.Credential));
        foreach (var language in LanguageTags.All)
        {
            var page = Page(order, course, holder, paper.Serial, code, language);
            if (!CertificateChecks.CanPrint(page, faces, problems)) return [];
            renderings.Add(new(language, RenderingFormat.CertificatePdf, CertificateWriter.Write(page, faces, keys.PaperSigner(paper.IssuedAt))));
        }

        return renderings;
    }

    private string CheckAddress(Serial serial) => options.PublicPage($"verify/{serial}").ToString();

    // A name in a script of three bytes a letter may be too long for modules that scan: then the code leads to the register alone.
    private string CodeAddress(IssuedCredential credential)
    {
        var address = CompactToken.Address(credential, CompactToken.Write(credential, keys.Credentials)).AbsoluteUri;
        return address.Length <= CertificatePage.LongestCodeAddress ? address : CheckAddress(credential.Serial);
    }

    private CertificatePage Page(PaperOrder order, Course course, Holder holder, Serial serial, string code, Language language) => new()
    {
        Language = language,
        Paper = options.Papers.Size,
        Kind = course.Scheme.Kind,
        ProviderName = provider.Name,
        ProviderAddress = provider.Address,
        WorkerName = holder.Name,
        TraineeNumber = holder.Number,
        SchemeTitle = course.Scheme.Words[language].Title,
        SchemeEffectiveFrom = course.Scheme.EffectiveFrom,
        SchemeRevision = course.Hash[..RevisionHashLength],
        ShownText = course.Scheme.Words[language].ShownText,
        Place = holder.Place,
        Hours = null,
        DecidedBy = holder.DecidedBy,
        DecidedOn = order.DecidedOn,
        EffectiveOn = order.Period.StartsOn,
        CountedFrom = order.CountedFrom,
        Validity = order.Period.Terms.Validity,
        ExpiresOn = order.Period.ExpiresOn,
        Serial = serial.Value,
        Revision = order.Revision.ToString(CultureInfo.InvariantCulture),
        CheckAddress = CheckAddress(serial),
        CodeAddress = code,
        IsDemonstration = credentials.IsDemonstration,
    };

    /// <summary>What is drawn for a paper, and when.</summary>
    private sealed record Drawn(Serial Serial, CredentialDraw Credential, DateTimeOffset IssuedAt);

    /// <summary>What the paper says of people and places.</summary>
    private sealed record Holder(string Name, string Number, string? Place, string? DecidedBy);
}
