using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>What the records hold of a paper for its machine-readable forms.</summary>
/// <param name="PrintedName">As printed.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="CourseHash">Snapshot whose rules decided.</param>
/// <param name="Period">The period that it shows.</param>
/// <param name="Zone">IANA zone of the decision.</param>
/// <param name="IssuedAt">UTC.</param>
/// <param name="StatusIndex">Its place in the status lists.</param>
/// <param name="SubjectId">Names the holder in this credential alone.</param>
public sealed record PaperForMachines(
    string PrintedName, string SchemeId, string CourseHash, Period Period, string Zone, DateTimeOffset IssuedAt, int StatusIndex, Guid SubjectId);

/// <summary>Finds papers that have machine-readable forms: those issued since there are status lists, whose name was not erased.</summary>
public static class CredentialQueries
{
    /// <summary>The paper of a serial, or null where it has no such forms.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="serial">Upper-case, without hyphens.</param>
    /// <param name="personId">Whose it must be; null: anybody's.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<PaperForMachines?> FindPaperForMachinesAsync(
        this RecordsContext records, string serial, Guid? personId, CancellationToken cancellation)
    {
        var found = await (from paper in records.Papers.AsNoTracking()
                           where paper.Serial == serial
                           join credential in records.PaperCredentials.AsNoTracking() on paper.Id equals credential.PaperId
                           join period in records.Periods.AsNoTracking() on paper.DecisionId equals period.DecisionId
                           where personId == null || period.PersonId == personId
                           join decision in records.Decisions.AsNoTracking() on paper.DecisionId equals decision.Id
                           join name in records.PersonNames.AsNoTracking() on paper.PersonNameId equals name.Id
                           select new { Paper = paper, Credential = credential, Period = period, decision.CourseHash, decision.Zone, name.Text })
            .SingleOrDefaultAsync(cancellation);
        return found?.Text is not { } holder
            ? null
            : new(
                holder, found.Period.SchemeId, found.CourseHash, DecisionRows.Read(found.Period), found.Zone, found.Paper.IssuedAt,
                found.Credential.StatusIndex, found.Credential.SubjectId);
    }

    /// <summary>Serials of those papers of a person that have such forms.</summary>
    public static async Task<IReadOnlySet<string>> SerialsForMachinesAsync(this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        (await (from period in records.Periods
                where period.PersonId == personId
                join paper in records.Papers on period.DecisionId equals paper.DecisionId
                join credential in records.PaperCredentials on paper.Id equals credential.PaperId
                join name in records.PersonNames on paper.PersonNameId equals name.Id
                where name.Text != null
                orderby paper.IssuedAt descending
                select paper.Serial).Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation)).ToHashSet(StringComparer.Ordinal);
}
