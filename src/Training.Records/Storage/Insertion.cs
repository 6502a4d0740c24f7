using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Writes rows that belong together: all of them or none.</summary>
internal static class Insertion
{
    /// <summary>Inserts the rows and what hangs on them in one transaction (or one savepoint of the caller's).</summary>
    /// <returns>False where a unique index refused; nothing was written then, and the caller reads what is there.</returns>
    /// <exception cref="InvalidOperationException">The context holds unsaved changes, which would be written or lost along with these.</exception>
    internal static async Task<bool> TryInsertAsync(this RecordsContext records, CancellationToken cancellation, params object[] rows)
    {
        if (records.ChangeTracker.HasChanges()) throw new InvalidOperationException("Save or drop earlier changes first.");
        records.AddRange(rows);
        var added = records.ChangeTracker.Entries().Where(entry => entry.State == EntityState.Added).ToList();
        try
        {
            await records.SaveChangesAsync(cancellation);
            return true;
        }
        catch (DbUpdateException exception) when (UniqueViolation.Is(exception))
        {
            return false;
        }
        finally
        {
            // Evidence is never changed, so nothing needs to follow it; a long replay stays small.
            foreach (var entry in added) entry.State = EntityState.Detached;
        }
    }

    /// <summary>
    /// Inserts a row that no index can judge (an overlap, a seat): counts the version of what it hangs on up in the same transaction, so that
    /// of two at once one starts again.
    /// </summary>
    /// <param name="records">Where to.</param>
    /// <param name="holder">What it hangs on, as it was looked at.</param>
    /// <param name="row">The row.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <param name="parts">Its own rows, named one by one: letting go of a row after a first attempt empties its lists.</param>
    /// <returns>False where another got through first, or a unique index refused; nothing was written then.</returns>
    /// <exception cref="InvalidOperationException">The context holds unsaved changes.</exception>
    internal static async Task<bool> TryInsertUnderAsync<THolder>(
        this RecordsContext records, THolder holder, object row, CancellationToken cancellation, params object[] parts)
        where THolder : class, IVersioned
    {
        if (records.ChangeTracker.HasChanges()) throw new InvalidOperationException("Save or drop earlier changes first.");
        // What is tracked already cannot be attached a second time; nothing of it is unsaved.
        foreach (var tracked in records.ChangeTracker.Entries<THolder>().ToList()) tracked.State = EntityState.Detached;
        records.AddRange([row, .. parts]);
        var added = records.ChangeTracker.Entries().Where(entry => entry.State == EntityState.Added).ToList();
        var touched = records.Attach(holder);
        touched.Property(entity => entity.Version).IsModified = true;
        try
        {
            return await records.TrySaveAsync(cancellation);
        }
        finally
        {
            foreach (var entry in added) entry.State = EntityState.Detached;
            touched.State = EntityState.Detached;
        }
    }

    /// <summary>Saves what is tracked; false where another changed it first, or a unique index refused.</summary>
    internal static async Task<bool> TrySaveAsync(this RecordsContext records, CancellationToken cancellation)
    {
        try
        {
            await records.SaveChangesAsync(cancellation);
            return true;
        }
        catch (DbUpdateConcurrencyException)
        {
            return false;
        }
        catch (DbUpdateException exception) when (UniqueViolation.Is(exception))
        {
            return false;
        }
    }
}
