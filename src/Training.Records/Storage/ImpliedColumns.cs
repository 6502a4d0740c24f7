using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Brings a database up to date before it serves.</summary>
public static class ImpliedColumns
{
    private const int Rows = 500;

    /// <summary>
    /// Migrates, then fills what older rows imply and have no column for yet. Months are counted in C#, never by an engine, so a migration
    /// cannot do it. Safe to be killed, and to run twice or on two servers at once: what is filled is not touched.
    /// </summary>
    public static async Task BringUpToDateAsync(this RecordsContext records, CancellationToken cancellation)
    {
        await records.Database.MigrateAsync(cancellation);
        await records.FillPeriodsAsync(cancellation);
        await records.FillNamesAsync(cancellation);
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
}
