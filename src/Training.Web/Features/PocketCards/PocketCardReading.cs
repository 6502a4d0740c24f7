using System.Diagnostics;
using System.Globalization;
using Training.Certification;
using Training.Courses;
using Training.Documents.PocketCards;
using Training.Records;
using Training.Web.Features.Shared;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Features.PocketCards;

/// <summary>Reads what the pocket cards of kept papers say. Only a paper that a gate would let pass today has one: a card tells nobody that it lapsed.</summary>
public sealed class PocketCardReading(RecordsContext records, CoursesByHash courses, PrintedPapers papers, TrainingOptions options, TimeProvider clock)
{
    /// <summary>The cards of these papers, in their order; those that are not current are left out.</summary>
    /// <param name="serials">Upper-case, without hyphens; at most <see cref="PocketCardWriter.MostCards"/>.</param>
    /// <param name="personId">Whose they must be; null: anybody's.</param>
    /// <param name="language">Of the cards.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <exception cref="InvalidOperationException">The rules that a paper was decided by are not in the records.</exception>
    public async Task<IReadOnlyList<PocketCardPage>> ReadAsync(
        IReadOnlyList<string> serials, Guid? personId, Language language, CancellationToken cancellation)
    {
        var cards = new List<PocketCardPage>();
        foreach (var paper in await records.CurrentPapersAsync(serials, clock.GetUtcNow(), cancellation))
        {
            if (personId is { } own && paper.PersonId != own) continue;
            // From memory but for the first of each text.
            var course = await courses.FindAsync(records, paper.SchemeId, paper.CourseHash, cancellation)
                ?? throw new InvalidOperationException($"Paper {paper.Serial} was decided by snapshot {paper.CourseHash}, which was never kept.");
            cards.Add(Of(paper, course.Scheme, language));
        }

        return cards;
    }

    // As the certificate says it (CertificateIssue), from what was kept with the paper. The plain address: the long code of the certificate fits no card.
    private PocketCardPage Of(CurrentPaper paper, Scheme scheme, Language language)
    {
        var serial = Serial.TryParse(paper.Serial, out var read) ? read : throw new UnreachableException();
        return new()
        {
            Language = language,
            Kind = scheme.Kind,
            ProviderName = papers.ProviderName,
            WorkerName = paper.PrintedName,
            SchemeTitle = scheme.Words[language].Title,
            ExpiresOn = paper.ExpiresOn,
            Serial = serial.Value,
            Revision = paper.Revision.ToString(CultureInfo.InvariantCulture),
            CheckAddress = options.PublicPage($"verify/{serial}").ToString(),
            PrintedOn = paper.Today,
            IsDemonstration = papers.IsDemonstration,
        };
    }
}
