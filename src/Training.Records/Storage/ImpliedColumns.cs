using System.Security.Cryptography;
using Microsoft.EntityFrameworkCore;
using Training.Documents.Credentials;
using Training.Documents.IssueLog;

namespace Training.Records;

/// <summary>Brings a database up to date before it serves.</summary>
public static class ImpliedColumns
{
    private const int Rows = 500;

    /// <summary>
    /// Migrates, then fills what older rows imply and have no column or row for yet. Months are counted in C#, never by an engine, so a migration
    /// cannot do it. Safe to be killed, and to run twice or on two servers at once: what is filled is not touched.
    /// </summary>
    /// <param name="records">What.</param>
    /// <param name="now">UTC; when papers of before the log are entered in it.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task BringUpToDateAsync(this RecordsContext records, DateTimeOffset now, CancellationToken cancellation)
    {
        await records.Database.MigrateAsync(cancellation);
        await records.FillPeriodsAsync(cancellation);
        await records.FillNamesAsync(cancellation);
        await records.EnterPapersAsync(now, cancellation);
    }

    // A migration gives old rows the first day there is. Rows with one last day and one calendar share what follows from them.
    private static async Task FillPeriodsAsync(this RecordsContext records, CancellationToken cancellation)
    {
        while (true)
        {
            var left = await records.Periods.Where(period => period.GraceEndsOn == DateOnly.MinValue)
                .Select(period => new { period.ExpiresOn, period.Window, period.Grace }).Distinct().OrderBy(alike => alike.ExpiresOn).Take(Rows).ToListAsync(cancellation);
            if (left.Count == 0) return;
            foreach (var alike in left)
            {
                var (opensOn, endsOn) = (alike.Window.Before(alike.ExpiresOn), alike.Grace.After(alike.ExpiresOn));
                await records.Periods
                    .Where(period => period.GraceEndsOn == DateOnly.MinValue && period.ExpiresOn == alike.ExpiresOn && period.Window == alike.Window && period.Grace == alike.Grace)
                    .ExecuteUpdateAsync(period => period.SetProperty(row => row.WindowOpensOn, opensOn).SetProperty(row => row.GraceEndsOn, endsOn), cancellation);
            }
        }
    }

    private static async Task FillNamesAsync(this RecordsContext records, CancellationToken cancellation)
    {
        while (true)
        {
            var left = await records.PersonNames.AsNoTracking().Where(name => name.Text != null && name.TextOrder == null).Take(Rows).ToListAsync(cancellation);
            if (left.Count == 0) return;
            foreach (var name in left)
            {
                // The name is asked for again: one that was erased meanwhile stays erased.
                var (id, text, order) = (name.Id, name.Text, name.TextOrder);
                await records.PersonNames.Where(row => row.Id == id && row.Text == text)
                    .ExecuteUpdateAsync(row => row.SetProperty(one => one.TextOrder, order), cancellation);
            }
        }
    }

    // Papers of before there was a log: their leaves tell when they were entered, not when they were issued.
    private static async Task EnterPapersAsync(this RecordsContext records, DateTimeOffset now, CancellationToken cancellation)
    {
        while (true)
        {
            var left = await (from paper in records.Papers
                              where !records.PaperCredentials.Any(credential => credential.PaperId == paper.Id)
                              join period in records.Periods on paper.DecisionId equals period.DecisionId
                              join decision in records.Decisions on paper.DecisionId equals decision.Id
                              orderby paper.IssuedAt, paper.Id
                              select new { Paper = paper, Period = period, decision.CourseHash }).AsNoTracking().Take(Rows).ToListAsync(cancellation);
            if (left.Count == 0) return;
            var taken = (await records.PaperCredentials.Select(credential => credential.StatusIndex).ToListAsync(cancellation)).ToHashSet();
            var places = StatusList.SizeFor(taken.Count + left.Count);
            var credentials = left.ConvertAll(one => new PaperCredential { PaperId = one.Paper.Id, StatusIndex = DrawFree(places, taken), SubjectId = Guid.NewGuid() });
            var events = left.ConvertAll(one => IssueLogKeeping.EventOf(one.Paper, one.Period, one.CourseHash, IssueEvent.Issued, now));
            // Where another server got through first, what is left is read again.
            await records.TryInsertLoggedAsync(events, cancellation, [.. credentials]);
        }
    }

    private static int DrawFree(int places, HashSet<int> taken)
    {
        int place;
        do place = RandomNumberGenerator.GetInt32(places);
        while (!taken.Add(place));
        return place;
    }
}
