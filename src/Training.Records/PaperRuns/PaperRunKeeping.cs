using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Starts runs of papers and keeps what could not be made.</summary>
public static class PaperRunKeeping
{
    /// <summary>Most papers of a run.</summary>
    public const int MostItems = 20_000;

    /// <summary>Starts a run: from here on it is known which papers it makes, whatever happens to the server. The same again is the same run.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="run">What is asked for.</param>
    /// <param name="today">Whose papers are not over, and who is employed.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <returns>Refused where no paper would be made, or more than <see cref="MostItems"/>.</returns>
    public static async Task<Kept> StartAsync(this RecordsContext records, PaperRun run, DateOnly today, CancellationToken cancellation)
    {
        if (await records.FindRunAsync(run.Id, cancellation) is { } before) return Repeat(before, run);
        var items = await records.ItemsOf(run, today).Take(MostItems + 1).ToListAsync(cancellation);
        if (items.Count == 0) return new Kept.Refused([RecordsProblems.At("run", RecordsProblems.NothingToPrint)]);
        if (items.Count > MostItems)
            return new Kept.Refused([RecordsProblems.At("run", RecordsProblems.TooManyPapers, MostItems.ToString(System.Globalization.CultureInfo.InvariantCulture))]);
        var rows = items.Index().Select(item => new PaperRunItem
        {
            RunId = run.Id, Position = item.Index + 1, DecisionId = item.Item.DecisionId, Revision = item.Item.Revision,
        });
        if (await records.TryInsertAsync(cancellation, [run, .. rows])) return new Kept.Stored(run.Id);
        return Repeat(await records.PaperRuns.AsNoTracking().SingleAsync(row => row.Id == run.Id, cancellation), run);
    }

    /// <summary>Keeps that a paper of a run cannot be made.</summary>
    public static Task KeepAsync(this RecordsContext records, PaperRunFailure failure, CancellationToken cancellation) =>
        records.TryInsertAsync(cancellation, failure);

    private static IQueryable<Item> ItemsOf(this RecordsContext records, PaperRun run, DateOnly today)
    {
        var periods = records.Periods.AsNoTracking();
        if (run.SchemeId is { } schemeId) periods = periods.Where(period => period.SchemeId == schemeId);
        if (run.EmployerId is { } employerId)
        {
            periods = periods.Where(period => records.Employments.Any(row =>
                row.PersonId == period.PersonId && row.EmployerId == employerId && row.StartsOn <= today && (row.EndsOn == null || row.EndsOn >= today)));
        }

        return run.Kind switch
        {
            PaperRunKind.Missing => periods.Where(period => !records.Papers.Any(paper => paper.DecisionId == period.DecisionId))
                .OrderBy(period => period.SchemeId).ThenBy(period => period.DecisionId).Select(period => new Item(period.DecisionId, 1)),
            PaperRunKind.Anew => from period in periods
                                 where period.ExpiresOn >= today && records.Papers.Any(paper => paper.DecisionId == period.DecisionId)
                                     && !records.Withdrawals.Any(row => row.PersonId == period.PersonId && row.SchemeId == period.SchemeId && row.PeriodNumber >= period.Number)
                                 orderby period.SchemeId, period.DecisionId
                                 select new Item(period.DecisionId, records.Papers.Where(paper => paper.DecisionId == period.DecisionId).Max(paper => paper.Revision) + 1),
        };
    }

    private static Kept Repeat(PaperRun stored, PaperRun run) =>
        (stored.Kind, stored.EmployerId, stored.SchemeId, stored.Reason, stored.LeadId) == (run.Kind, run.EmployerId, run.SchemeId, run.Reason, run.LeadId)
            ? new Kept.AlreadyStored(run.Id)
            : new Kept.Refused([RecordsProblems.At("run", RecordsProblems.OtherContent, run.Id.ToString())]);

    private sealed record Item(Guid DecisionId, int Revision);
}
