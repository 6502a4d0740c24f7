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
}
