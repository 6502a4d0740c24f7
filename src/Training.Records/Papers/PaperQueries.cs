using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records;

/// <summary>What took a paper's place.</summary>
public enum Supersession
{
    /// <summary>Nothing: it is the latest.</summary>
    None,

    /// <summary>A later revision for the same decision.</summary>
    Revised,

    /// <summary>A paper for a later period of the same certification.</summary>
    Renewed,
}

/// <summary>A paper as the public check page needs it.</summary>
/// <param name="Id">Our own key; not for strangers.</param>
/// <param name="Serial">As issued.</param>
/// <param name="PrintedName">As printed, or null where it was erased.</param>
/// <param name="PersonId">Whose; not for strangers.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="CourseHash">Snapshot whose rules decided: the scheme's words of that day.</param>
/// <param name="Revision">1 for the first.</param>
/// <param name="IssuedAt">UTC.</param>
/// <param name="Zone">IANA time zone of the decision: "today" for its standing is a day in it.</param>
/// <param name="Period">The period that it shows.</param>
/// <param name="Supersession">Whether a later paper took its place.</param>
/// <param name="Held">The certification as a whole, for its standing on any day.</param>
public sealed record FoundPaper(
    Guid Id,
    string Serial,
    string? PrintedName,
    Guid PersonId,
    string SchemeId,
    string CourseHash,
    int Revision,
    DateTimeOffset IssuedAt,
    string Zone,
    Period Period,
    Supersession Supersession,
    HeldCertification Held);

/// <summary>A stored file.</summary>
public sealed record StoredRendering(ReadOnlyMemory<byte> Bytes, string Sha256);

/// <summary>Looks papers up.</summary>
public static class PaperQueries
{
    /// <summary>The paper of a serial, or null where no such paper was issued. Case and outer spaces do not matter.</summary>
    public static async Task<FoundPaper?> FindPaperAsync(this RecordsContext records, string serial, CancellationToken cancellation)
    {
        var key = KeyText.Of(serial);
        var found = await (from issued in records.Papers.AsNoTracking()
                           where issued.Serial == key
                           join granted in records.Periods.AsNoTracking() on issued.DecisionId equals granted.DecisionId
                           join decision in records.Decisions.AsNoTracking() on issued.DecisionId equals decision.Id
                           join name in records.PersonNames.AsNoTracking() on issued.PersonNameId equals name.Id
                           select new { Paper = issued, Period = granted, decision.CourseHash, decision.Zone, name.Text })
            .SingleOrDefaultAsync(cancellation);
        if (found is null) return null;
        var (paper, period) = (found.Paper, found.Period);
        var held = await records.HeldCertificationsAsync(period.PersonId, cancellation);
        return new(
            paper.Id, paper.Serial, found.Text, period.PersonId, period.SchemeId, found.CourseHash, paper.Revision, paper.IssuedAt, found.Zone,
            DecisionRows.Read(period), await records.SupersessionAsync(paper, period, cancellation),
            held.Single(certification => certification.SchemeId == period.SchemeId));
    }

    /// <summary>The stored file of a paper, or null where it was not rendered so.</summary>
    public static Task<StoredRendering?> FindRenderingAsync(
        this RecordsContext records, Guid paperId, Language language, RenderingFormat format, CancellationToken cancellation) =>
        records.Renderings.Where(rendering => rendering.PaperId == paperId && rendering.Language == language && rendering.Format == format)
            .Select(rendering => new StoredRendering(rendering.Bytes, rendering.Sha256)).SingleOrDefaultAsync(cancellation);

    /// <summary>The serial of the paper that a file is of, byte for byte; null where no file of ours has this hash.</summary>
    /// <param name="records">Where to look.</param>
    /// <param name="sha256">Of the file's bytes, lower-case hexadecimal.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static Task<string?> FindSerialOfFileAsync(this RecordsContext records, string sha256, CancellationToken cancellation) =>
        (from rendering in records.Renderings
         where rendering.Sha256 == sha256
         join paper in records.Papers on rendering.PaperId equals paper.Id
         orderby paper.Id
         select paper.Serial).FirstOrDefaultAsync(cancellation);

    /// <summary>The latest paper for a decision, or null where none was issued.</summary>
    public static Task<PaperRecord?> FindLatestPaperAsync(this RecordsContext records, Guid decisionId, CancellationToken cancellation) =>
        records.Papers.AsNoTracking().Where(paper => paper.DecisionId == decisionId)
            .OrderByDescending(paper => paper.Revision).FirstOrDefaultAsync(cancellation);

    private static async Task<Supersession> SupersessionAsync(
        this RecordsContext records, PaperRecord paper, PeriodRecord period, CancellationToken cancellation)
    {
        var isRenewed = await (from later in records.Periods
                               where later.PersonId == period.PersonId && later.SchemeId == period.SchemeId && later.Number > period.Number
                               join other in records.Papers on later.DecisionId equals other.DecisionId
                               select other.Id).AnyAsync(cancellation);
        if (isRenewed) return Supersession.Renewed;
        var isRevised = await records.Papers.AnyAsync(
            other => other.DecisionId == paper.DecisionId && other.Revision > paper.Revision, cancellation);
        return isRevised ? Supersession.Revised : Supersession.None;
    }
}
