using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records;

/// <summary>How far a run has come.</summary>
/// <param name="Run">Which.</param>
/// <param name="All">Papers that it makes.</param>
/// <param name="Done">Of them, those that exist.</param>
/// <param name="Failed">Of them, those that cannot be made.</param>
public sealed record PaperRunProgress(PaperRun Run, int All, int Done, int Failed)
{
    /// <summary>Whether nothing is left to do.</summary>
    public bool IsOver => Done + Failed == All;
}

/// <summary>A paper that a run could not make.</summary>
/// <param name="PersonId">Whose.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="Problem">Why.</param>
public sealed record FailedPaper(Guid PersonId, string SchemeId, Problem Problem);

/// <summary>Reads runs of papers.</summary>
public static class PaperRunQueries
{
    /// <summary>A run, or null.</summary>
    public static Task<PaperRun?> FindRunAsync(this RecordsContext records, Guid id, CancellationToken cancellation) =>
        records.PaperRuns.AsNoTracking().SingleOrDefaultAsync(run => run.Id == id, cancellation);

    /// <summary>The last runs, newest first.</summary>
    public static async Task<IReadOnlyList<PaperRunProgress>> RunsAsync(this RecordsContext records, int most, CancellationToken cancellation) =>
        await records.ProgressOf(records.PaperRuns.OrderByDescending(run => run.StartedAt).ThenByDescending(run => run.Id).Take(most)).ToListAsync(cancellation);

    /// <summary>One run, or null.</summary>
    public static Task<PaperRunProgress?> FindProgressAsync(this RecordsContext records, Guid id, CancellationToken cancellation) =>
        records.ProgressOf(records.PaperRuns.Where(run => run.Id == id)).SingleOrDefaultAsync(cancellation);

    /// <summary>What is to be made next: of the oldest run first, in its order.</summary>
    public static async Task<IReadOnlyList<PaperRunItem>> NextItemsAsync(this RecordsContext records, int most, CancellationToken cancellation) =>
        await (from item in records.PaperRunItems.AsNoTracking()
               join run in records.PaperRuns on item.RunId equals run.Id
               where !records.Papers.Any(paper => paper.DecisionId == item.DecisionId && paper.Revision >= item.Revision)
                   && !records.PaperRunFailures.Any(failure => failure.RunId == item.RunId && failure.Position == item.Position)
               orderby run.StartedAt, run.Id, item.Position
               select item).Take(most).ToListAsync(cancellation);

    /// <summary>What a run could not make, in its order.</summary>
    public static async Task<IReadOnlyList<FailedPaper>> FailedPapersAsync(this RecordsContext records, Guid runId, int most, CancellationToken cancellation) =>
        [
            .. (await (from failure in records.PaperRunFailures
                       where failure.RunId == runId
                       join item in records.PaperRunItems on new { failure.RunId, failure.Position } equals new { item.RunId, item.Position }
                       join period in records.Periods on item.DecisionId equals period.DecisionId
                       orderby failure.Position
                       select new { Failure = failure, period.PersonId, period.SchemeId }).AsNoTracking().Take(most).ToListAsync(cancellation))
                .Select(row => new FailedPaper(row.PersonId, row.SchemeId, new(row.Failure.Code, Place.Of(row.Failure.Field), [.. row.Failure.Arguments]))),
        ];

    /// <summary>The files of a run from one position through another, in its order, each read when it is asked for.</summary>
    public static IAsyncEnumerable<byte[]> FilesOf(this RecordsContext records, Guid runId, int first, int last, Language language) =>
        (from item in records.PaperRunItems
         where item.RunId == runId && item.Position >= first && item.Position <= last
         join paper in records.Papers on new { item.DecisionId, item.Revision } equals new { paper.DecisionId, paper.Revision }
         join file in records.Renderings on paper.Id equals file.PaperId
         where file.Language == language && file.Format == RenderingFormat.CertificatePdf
         orderby item.Position
         select file.Bytes).AsNoTracking().AsAsyncEnumerable();

    /// <summary>Serials of a run's papers from one position through another, in its order; what is not made is left out.</summary>
    public static async Task<IReadOnlyList<string>> SerialsOfAsync(
        this RecordsContext records, Guid runId, int first, int last, CancellationToken cancellation) =>
        await (from item in records.PaperRunItems
               where item.RunId == runId && item.Position >= first && item.Position <= last
               join paper in records.Papers on new { item.DecisionId, item.Revision } equals new { paper.DecisionId, paper.Revision }
               orderby item.Position
               select paper.Serial).ToListAsync(cancellation);

    private static IQueryable<PaperRunProgress> ProgressOf(this RecordsContext records, IQueryable<PaperRun> runs) => runs.AsNoTracking().Select(run => new PaperRunProgress(
        run,
        records.PaperRunItems.Count(item => item.RunId == run.Id),
        records.PaperRunItems.Count(item => item.RunId == run.Id && records.Papers.Any(paper => paper.DecisionId == item.DecisionId && paper.Revision >= item.Revision)),
        records.PaperRunFailures.Count(failure => failure.RunId == run.Id
            && records.PaperRunItems.Any(item => item.RunId == run.Id && item.Position == failure.Position
                && !records.Papers.Any(paper => paper.DecisionId == item.DecisionId && paper.Revision >= item.Revision)))));
}
