using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;

namespace Training.Web.Features.MyTraining;

/// <summary>What a worker's own pages ask the records; every query starts from the person.</summary>
public static class MyTrainingQueries
{
    private const int MostPapers = 200;

    /// <summary>Certificates of the person, the newest first.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="personId">Whose.</param>
    /// <param name="titles">Titles of schemes by id; a scheme that is no longer served keeps its id.</param>
    /// <param name="now">UTC.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<PaperLine>> PapersOfAsync(
        this RecordsContext records, Guid personId, IReadOnlyDictionary<string, string> titles, DateTimeOffset now, CancellationToken cancellation)
    {
        var rows = await (from period in records.Periods
                          where period.PersonId == personId
                          join paper in records.Papers on period.DecisionId equals paper.DecisionId
                          orderby period.StartsOn descending, period.Number descending, paper.Revision descending
                          select new { period.SchemeId, period.StartsOn, period.ExpiresOn, paper.Serial }).Take(MostPapers).ToListAsync(cancellation);
        var forMachines = await records.SerialsForMachinesAsync(personId, cancellation);
        var current = (await records.CurrentPapersAsync(rows.ConvertAll(row => row.Serial), now, cancellation)).Select(paper => paper.Serial).ToHashSet(StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return rows.ConvertAll(row => new PaperLine(
            titles.GetValueOrDefault(row.SchemeId) ?? row.SchemeId,
            Serial.TryParse(row.Serial, out var serial) ? serial : throw new UnreachableException(),
            row.StartsOn,
            row.ExpiresOn,
            IsLatest: seen.Add(row.SchemeId),
            IsForMachines: forMachines.Contains(row.Serial),
            IsCurrent: current.Contains(row.Serial)));
    }

    /// <summary>The file of a certificate if it is this person's, or null.</summary>
    public static async Task<StoredRendering?> FindCertificateAsync(
        this RecordsContext records, Guid personId, Serial serial, Language language, CancellationToken cancellation)
    {
        var paperId = await (from paper in records.Papers
                             where paper.Serial == serial.Value
                             join period in records.Periods on paper.DecisionId equals period.DecisionId
                             where period.PersonId == personId
                             select (Guid?)paper.Id).SingleOrDefaultAsync(cancellation);
        return paperId is { } id ? await records.FindRenderingAsync(id, language, RenderingFormat.CertificatePdf, cancellation) : null;
    }
}
