using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records;

/// <summary>A paper with its files, ready to be issued.</summary>
/// <param name="DecisionId">The decision that granted the period it shows.</param>
/// <param name="Revision">1 for the first.</param>
/// <param name="Serial">Freshly drawn, upper-case.</param>
/// <param name="PersonNameId">The row that holds the name as printed; of the same person.</param>
/// <param name="Renderings">The files, one per language and format.</param>
public sealed record PaperToIssue(Guid DecisionId, int Revision, string Serial, Guid PersonNameId, IReadOnlyList<Rendering> Renderings);

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

    /// <summary>The serial belongs to another paper: draw again, render again.</summary>
    public sealed record SerialTaken : Issue;

    /// <summary>Nothing was written, for all of these reasons.</summary>
    public sealed record Refused(IReadOnlyList<Problem> Problems) : Issue;
}

/// <summary>Issues papers, each once.</summary>
public static class PaperKeeping
{
    /// <summary>Issues a paper with its files in one transaction; a second one for the same decision and revision is answered with the first.</summary>
    public static async Task<Issue> IssueAsync(this RecordsContext records, PaperToIssue paper, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await records.FindIssuedAsync(paper, cancellation) is { } before) return before;
        var problems = await records.ProblemsOfAsync(paper, cancellation);
        if (problems.Count > 0) return new Issue.Refused(problems);

        var row = new PaperRecord
        {
            Id = Guid.CreateVersion7(now),
            DecisionId = paper.DecisionId,
            Revision = paper.Revision,
            Serial = paper.Serial,
            PersonNameId = paper.PersonNameId,
            IssuedAt = now,
        };
        object[] rows = [row, .. paper.Renderings.Select(rendering => new RenderingRecord
        {
            PaperId = row.Id,
            Language = rendering.Language,
            Format = rendering.Format,
            Bytes = rendering.Bytes.ToArray(),
            Sha256 = Convert.ToHexStringLower(SHA256.HashData(rendering.Bytes.Span)),
        })];
        if (await records.TryInsertAsync(cancellation, rows)) return new Issue.Issued(row.Id, row.Serial);
        return await records.FindIssuedAsync(paper, cancellation) ?? new Issue.SerialTaken();
    }

    private static async Task<Issue?> FindIssuedAsync(this RecordsContext records, PaperToIssue paper, CancellationToken cancellation) =>
        await records.Papers.Where(other => other.DecisionId == paper.DecisionId && other.Revision == paper.Revision)
            .Select(other => new Issue.AlreadyIssued(other.Id, other.Serial)).SingleOrDefaultAsync(cancellation);

    private static async Task<List<Problem>> ProblemsOfAsync(this RecordsContext records, PaperToIssue paper, CancellationToken cancellation)
    {
        var problems = new List<Problem>();
        var personId = await records.Periods.Where(period => period.DecisionId == paper.DecisionId)
            .Select(period => (Guid?)period.PersonId).SingleOrDefaultAsync(cancellation);
        if (personId is null) problems.Add(RecordsProblems.At("decision", RecordsProblems.NothingGranted));
        var isNamed = await records.PersonNames.AnyAsync(
            name => name.Id == paper.PersonNameId && name.PersonId == personId && name.Text != null, cancellation);
        if (!isNamed) problems.Add(RecordsProblems.At("name", RecordsProblems.NameUnknown));
        var followsRevision = paper.Revision == 1 || await records.Papers.AnyAsync(
            other => other.DecisionId == paper.DecisionId && other.Revision == paper.Revision - 1, cancellation);
        if (!followsRevision)
            problems.Add(RecordsProblems.At("revision", RecordsProblems.RevisionSkipped, paper.Revision.ToString(System.Globalization.CultureInfo.InvariantCulture)));
        return problems;
    }
}
