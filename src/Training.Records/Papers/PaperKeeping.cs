using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Documents.IssueLog;

namespace Training.Records;

/// <summary>A paper with its files, ready to be issued.</summary>
/// <param name="DecisionId">The decision that granted the period it shows.</param>
/// <param name="Revision">1 for the first.</param>
/// <param name="Serial">Freshly drawn, upper-case.</param>
/// <param name="PersonNameId">The row that holds the name as printed; of the same person.</param>
/// <param name="StatusIndex">Its place in the status lists, freshly drawn.</param>
/// <param name="SubjectId">Names the holder in this credential alone, freshly drawn.</param>
/// <param name="Renderings">The files, one per language and format.</param>
public sealed record PaperToIssue(
    Guid DecisionId, int Revision, string Serial, Guid PersonNameId, int StatusIndex, Guid SubjectId, IReadOnlyList<Rendering> Renderings);

/// <summary>One file of a paper.</summary>
public sealed record Rendering(Language Language, RenderingFormat Format, ReadOnlyMemory<byte> Bytes);

/// <summary>What became of a paper that was to be issued. A closed family.</summary>
public abstract record Issue
{
    private Issue()
    {
    }

    /// <summary>Issued now.</summary>
    public sealed record Issued(Guid PaperId, string Serial) : Issue;

    /// <summary>That revision was issued before, under this serial; the files that came now were dropped.</summary>
    public sealed record AlreadyIssued(Guid PaperId, string Serial) : Issue;

    /// <summary>The serial or the place in the status lists belongs to another paper: draw again, render again.</summary>
    public sealed record DrawTaken : Issue;

    /// <summary>Nothing was written, for all of these reasons.</summary>
    public sealed record Refused(IReadOnlyList<Problem> Problems) : Issue;
}

/// <summary>Issues papers, each once.</summary>
public static class PaperKeeping
{
    /// <summary>
    /// Issues a paper with its files and its leaf in the log in one transaction; a second one for the same decision and revision is answered with
    /// the first. The paper whose place it takes is logged as superseded.
    /// </summary>
    public static async Task<Issue> IssueAsync(this RecordsContext records, PaperToIssue paper, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await records.FindIssuedAsync(paper, cancellation) is { } before) return before;
        var problems = new List<Problem>();
        var granted = await records.RequireGrantedAsync(paper, problems, cancellation);
        if (granted is null || problems.Count > 0) return new Issue.Refused(problems);

        var row = new PaperRecord
        {
            Id = Guid.CreateVersion7(now),
            DecisionId = paper.DecisionId,
            Revision = paper.Revision,
            Serial = paper.Serial,
            PersonNameId = paper.PersonNameId,
            IssuedAt = now,
        };
        var credential = new PaperCredential { PaperId = row.Id, StatusIndex = paper.StatusIndex, SubjectId = paper.SubjectId };
        object[] rows = [row, credential, .. paper.Renderings.Select(rendering => new RenderingRecord
        {
            PaperId = row.Id,
            Language = rendering.Language,
            Format = rendering.Format,
            Bytes = rendering.Bytes.ToArray(),
            Sha256 = Convert.ToHexStringLower(SHA256.HashData(rendering.Bytes.Span)),
        })];
        var issued = IssueLogKeeping.EventOf(row, granted.Period, granted.CourseHash, IssueEvent.Issued, now);
        var superseded = await records.FindSupersededAsync(paper, granted.Period, now, cancellation);
        if (await records.TryInsertLoggedAsync(superseded is null ? [issued] : [issued, superseded], cancellation, rows)) return new Issue.Issued(row.Id, row.Serial);
        return await records.FindIssuedAsync(paper, cancellation) ?? new Issue.DrawTaken();
    }

    private static async Task<Issue?> FindIssuedAsync(this RecordsContext records, PaperToIssue paper, CancellationToken cancellation) =>
        await records.Papers.Where(other => other.DecisionId == paper.DecisionId && other.Revision == paper.Revision)
            .Select(other => new Issue.AlreadyIssued(other.Id, other.Serial)).SingleOrDefaultAsync(cancellation);

    // What it takes the place of: the revision before, or the paper of the period before.
    private static async Task<LoggedEvent?> FindSupersededAsync(
        this RecordsContext records, PaperToIssue paper, PeriodRecord period, DateTimeOffset now, CancellationToken cancellation)
    {
        var number = paper.Revision > 1 ? period.Number : period.Number - 1;
        var before = await (from earlier in records.Periods
                            where earlier.PersonId == period.PersonId && earlier.SchemeId == period.SchemeId && earlier.Number == number
                            join row in records.Papers on earlier.DecisionId equals row.DecisionId
                            join decision in records.Decisions on row.DecisionId equals decision.Id
                            orderby row.Revision descending
                            select new { Paper = row, Period = earlier, decision.CourseHash }).AsNoTracking().FirstOrDefaultAsync(cancellation);
        return before is null ? null : IssueLogKeeping.EventOf(before.Paper, before.Period, before.CourseHash, IssueEvent.Superseded, now);
    }

    private static async Task<Grant?> RequireGrantedAsync(
        this RecordsContext records, PaperToIssue paper, List<Problem> problems, CancellationToken cancellation)
    {
        var granted = await (from period in records.Periods.AsNoTracking()
                             where period.DecisionId == paper.DecisionId
                             join decision in records.Decisions on period.DecisionId equals decision.Id
                             select new Grant(period, decision.CourseHash)).SingleOrDefaultAsync(cancellation);
        if (granted is null) problems.Add(RecordsProblems.At("decision", RecordsProblems.NothingGranted));
        var personId = granted?.Period.PersonId;
        var isNamed = await records.PersonNames.AnyAsync(
            name => name.Id == paper.PersonNameId && name.PersonId == personId && name.Text != null, cancellation);
        if (!isNamed) problems.Add(RecordsProblems.At("name", RecordsProblems.NameUnknown));
        var followsRevision = paper.Revision == 1 || await records.Papers.AnyAsync(
            other => other.DecisionId == paper.DecisionId && other.Revision == paper.Revision - 1, cancellation);
        if (!followsRevision)
            problems.Add(RecordsProblems.At("revision", RecordsProblems.RevisionSkipped, paper.Revision.ToString(System.Globalization.CultureInfo.InvariantCulture)));
        return granted;
    }

    private sealed record Grant(PeriodRecord Period, string CourseHash);
}
