using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Certificates;
using Training.Web.Shelf;

namespace Training.Web.Features.PaperRuns;

/// <summary>Makes the papers of runs, the oldest run first. It may be killed and run twice: a paper that exists is not made again.</summary>
public sealed class PaperRunJob(
    IDbContextFactory<RecordsContext> contexts, CoursesByHash courses, CertificateIssue papers, TimeProvider clock, ILogger<PaperRunJob> log)
{
    private const int Batch = 100;

    /// <summary>Works until nothing is left.</summary>
    public async Task RunAsync(CancellationToken cancellation)
    {
        var (made, failed) = (0, 0);
        while (true)
        {
            await using var records = await contexts.CreateDbContextAsync(cancellation);
            var items = await records.NextItemsAsync(Batch, cancellation);
            if (items.Count == 0) break;
            foreach (var item in items)
            {
                if (await MakeAsync(records, item, cancellation) is not { } problem)
                {
                    made++;
                    continue;
                }

                failed++;
                await records.KeepAsync(
                    new PaperRunFailure
                    {
                        RunId = item.RunId, Position = item.Position, Code = problem.Code, Field = problem.Place.Part ?? "", Arguments = problem.Arguments,
                        At = clock.GetUtcNow(),
                    },
                    cancellation);
            }
        }

        if (made + failed > 0) Log.PapersMade(log, made, failed);
    }

    /// <summary>Makes one paper; the first problem where that is not possible.</summary>
    private async Task<Problem?> MakeAsync(RecordsContext records, PaperRunItem item, CancellationToken cancellation)
    {
        var order = await records.FindOrderAsync(item.DecisionId, item.Revision, cancellation)
            ?? throw new InvalidOperationException($"Decision {item.DecisionId} granted nothing and stands in a run.");
        if (await courses.FindAsync(records, order.SchemeId, order.CourseHash, cancellation) is not { } course)
            return new(RecordsProblems.SnapshotUnknown, Place.Of("decision"), order.CourseHash);
        var problems = new List<Problem>();
        return await papers.IssueAsync(records, order, course, clock.GetUtcNow(), problems, cancellation) is null ? problems[0] : null;
    }
}
