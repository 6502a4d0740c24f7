using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using Training.Certification;
using Training.Courses;
using Training.Documents.Certificates;
using Training.Documents.Fonts;
using Training.Records;
using Training.Web.Demo;
using Training.Web.Provider;
using Training.Web.Settings;

namespace Training.Web.Features.Certificates;

/// <summary>Issues the paper of a granted decision, in every language, once.</summary>
public sealed class CertificateIssue(TrainingOptions options, OurProvider provider, FontFaces faces, DemoMark demo)
{
    private const int RevisionHashLength = 8;

    // So many collisions of random serials in a row do not happen; a fault in the records would loop for ever.
    private const int MostDraws = 20;

    /// <summary>Issues revision 1 of the paper; a second call answers with the serial of the first.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="made">A granted decision, as kept.</param>
    /// <param name="course">The course that it was decided by.</param>
    /// <param name="countedFrom">The day that its validity was counted from.</param>
    /// <param name="now">UTC.</param>
    /// <param name="problems">Receives everything for which no paper can be issued.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <returns>The serial, or null where a problem was found.</returns>
    /// <exception cref="ArgumentException">Nothing was granted.</exception>
    public async Task<Serial?> IssueAsync(
        RecordsContext records, MadeDecision made, Course course, DateOnly countedFrom, DateTimeOffset now, ICollection<Problem> problems,
        CancellationToken cancellation)
    {
        if (made.Decision is not Decision.Granted granted) throw new ArgumentException("Nothing was granted.", nameof(made));
        var name = await records.FindNameAsync(made.PersonId, made.DecidedOn, cancellation);
        if (name?.Text is null)
        {
            problems.Add(new(RecordsProblems.NameUnknown, Place.Of("person"), made.PersonId.ToString()));
            return null;
        }

        var holder = await ReadHolderAsync(records, made, name.Text, cancellation);
        for (var draw = 0; draw < MostDraws; draw++)
        {
            var serial = Serial.Draw(RandomNumberGenerator.GetInt32);
            var renderings = Render(made, granted.Period, course, countedFrom, holder, serial, problems);
            if (renderings.Count == 0) return null;
            var issue = await records.IssueAsync(new(made.Id, 1, serial.Value, name.Id, renderings), now, cancellation);
            if (issue is not Issue.SerialTaken) return Read(issue, problems);
        }

        throw new InvalidOperationException($"{MostDraws} serials in a row were taken.");
    }

    /// <summary>Finds everything for which <see cref="IssueAsync"/> would issue no paper, without writing anything.</summary>
    public async Task CheckAsync(
        RecordsContext records, MadeDecision made, Course course, DateOnly countedFrom, ICollection<Problem> problems, CancellationToken cancellation)
    {
        if (made.Decision is not Decision.Granted granted) throw new ArgumentException("Nothing was granted.", nameof(made));
        var name = await records.FindNameAsync(made.PersonId, made.DecidedOn, cancellation);
        if (name?.Text is null)
        {
            problems.Add(new(RecordsProblems.NameUnknown, Place.Of("person"), made.PersonId.ToString()));
            return;
        }

        var holder = await ReadHolderAsync(records, made, name.Text, cancellation);
        var serial = Serial.Draw(RandomNumberGenerator.GetInt32);
        foreach (var language in LanguageTags.All)
            CertificateChecks.CanPrint(Page(made, granted.Period, course, countedFrom, holder, serial, language), faces, problems);
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

    private static async Task<Holder> ReadHolderAsync(
        RecordsContext records, MadeDecision made, string name, CancellationToken cancellation)
    {
        var site = await records.FindSiteAsync(made.PersonId, made.DecidedOn, cancellation);
        var decidedBy = made.Decider is Decider.Lead lead
            ? (await records.FindNameAsync(lead.PersonId, made.DecidedOn, cancellation))?.Text
            : null;
        return new(name, TraineeNumber(made.PersonId), site?.Name, decidedBy);
    }

    // The random half of the id: 62 random bits tell every trainee apart, and the time that the other half holds is nobody's business.
    private static string TraineeNumber(Guid personId) =>
        string.Join('-', personId.ToString("N")[16..].ToUpperInvariant().Chunk(4).Select(group => new string(group)));

    private List<Rendering> Render(
        MadeDecision made, Period period, Course course, DateOnly countedFrom, Holder holder, Serial serial, ICollection<Problem> problems)
    {
        var renderings = new List<Rendering>();
        foreach (var language in LanguageTags.All)
        {
            var page = Page(made, period, course, countedFrom, holder, serial, language);
            if (!CertificateChecks.CanPrint(page, faces, problems)) return [];
            renderings.Add(new(language, RenderingFormat.CertificatePdf, CertificateWriter.Write(page, faces)));
        }

        return renderings;
    }

    private CertificatePage Page(
        MadeDecision made, Period period, Course course, DateOnly countedFrom, Holder holder, Serial serial, Language language) => new()
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
        DecidedOn = made.DecidedOn,
        EffectiveOn = period.StartsOn,
        CountedFrom = countedFrom,
        Validity = period.Terms.Validity,
        ExpiresOn = period.ExpiresOn,
        Serial = serial.Value,
        Revision = 1.ToString(CultureInfo.InvariantCulture),
        CheckAddress = options.PublicPage($"verify/{serial}").ToString(),
        IsDemonstration = demo.IsOn,
    };

    /// <summary>What the paper says of people and places.</summary>
    private sealed record Holder(string Name, string Number, string? Place, string? DecidedBy);
}
