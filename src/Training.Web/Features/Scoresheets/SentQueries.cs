using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.ClassDays;

namespace Training.Web.Features.Scoresheets;

/// <summary>What an instructor sent.</summary>
internal static class SentQueries
{
    private const int Most = 200;

    /// <summary>The visitor's own signed sheets, newest first; disputed copies stand with their first.</summary>
    public static async Task<IReadOnlyList<SentSheet>> SentScoresheetsOfAsync(this RecordsContext records, Visitor visitor, CancellationToken cancellation)
    {
        var rows = await records.Scoresheets
            .Where(sheet => sheet.InstructorId == visitor.PersonId
                && !records.Scoresheets.Any(earlier => earlier.FormId == sheet.FormId && earlier.Copy < sheet.Copy))
            .OrderByDescending(sheet => sheet.SignedAt).ThenBy(sheet => sheet.Id).Take(Most)
            .Select(sheet => new
            {
                sheet.FormId, sheet.CandidateId, sheet.Subject, sheet.Try, sheet.ScoredOn,
                Outcome = records.ScoresheetResults.Where(result => result.ScoresheetId == sheet.Id).OrderByDescending(result => result.Number)
                    .Select(result => (Training.Scoring.PracticalOutcome?)result.Outcome).FirstOrDefault(),
            }).ToListAsync(cancellation);
        var names = await records.NamesAsync([.. rows.Select(row => row.CandidateId)], visitor.Today, cancellation);
        return [.. rows.Select(row => new SentSheet(row.FormId, names[row.CandidateId], row.Subject, row.Try, row.ScoredOn, row.Outcome))];
    }
}
