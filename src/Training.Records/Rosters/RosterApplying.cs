using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>A roster to be applied.</summary>
/// <param name="UploadId">The upload that it was read from.</param>
/// <param name="EmployerId">Whose.</param>
/// <param name="Roster">The file, without a bad row.</param>
/// <param name="Today">First day of what changes: of two sites' days the later one.</param>
/// <param name="Fingerprint">Of the difference that was looked at.</param>
/// <param name="Scope">Whether who is missing leaves.</param>
/// <param name="ById">Who applies it.</param>
/// <param name="At">When.</param>
public sealed record RosterApplication(
    Guid UploadId, Guid EmployerId, Roster Roster, DateOnly Today, string Fingerprint, RosterScope Scope, Guid ById, DateTimeOffset At);

/// <summary>Keeps roster files and applies them.</summary>
public static class RosterApplying
{
    /// <summary>How long a file is kept that nobody applied.</summary>
    public static readonly TimeSpan KeptUnapplied = TimeSpan.FromDays(30);

    /// <summary>Keeps a file; the same file from the same form is the stored one. Files of the employer that nobody applied for long go.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, RosterUpload upload, CancellationToken cancellation)
    {
        var before = upload.SentAt - KeptUnapplied;
        await records.RosterUploads.Where(row => row.EmployerId == upload.EmployerId && row.AppliedAt == null && row.SentAt < before)
            .ExecuteDeleteAsync(cancellation);
        if (await records.TryInsertAsync(cancellation, upload)) return new Kept.Stored(upload.Id);
        return new Kept.AlreadyStored(await records.RosterUploads
            .Where(row => row.EmployerId == upload.EmployerId && row.FormId == upload.FormId && row.Sha256 == upload.Sha256)
            .Select(row => row.Id).SingleAsync(cancellation));
    }

    /// <summary>
    /// Applies a roster: all of it in one transaction, once. Refused where the employer's people are no longer those that the difference
    /// was made from.
    /// </summary>
    public static async Task<Kept> ApplyAsync(this RecordsContext records, RosterApplication application, CancellationToken cancellation)
    {
        await using var transaction = await records.Database.BeginTransactionAsync(cancellation);
        var known = await records.KnownRosterAsync(application.EmployerId, application.Today, cancellation);
        var difference = RosterDifference.Between(known.People, application.Roster);
        var isApplied = await records.RosterUploads.AnyAsync(row => row.Id == application.UploadId && row.AppliedAt != null, cancellation);
        if (isApplied) return new Kept.AlreadyStored(application.UploadId);
        if (difference.Problems.Count > 0) return new Kept.Refused(difference.Problems);
        if (difference.Fingerprint() != application.Fingerprint) return Changed;
        if (!await records.ClaimAsync(application, difference, cancellation)) return new Kept.AlreadyStored(application.UploadId);
        try
        {
            await new RosterWriting(records, known).WriteAsync(difference, application.Scope, cancellation);
        }
        catch (DbUpdateConcurrencyException)
        {
            return Changed;
        }
        catch (DbUpdateException exception) when (UniqueViolation.Is(exception))
        {
            return Changed;
        }
        finally
        {
            records.ChangeTracker.Clear();
        }

        await transaction.CommitAsync(cancellation);
        return new Kept.Stored(application.UploadId);
    }

    private static Kept.Refused Changed => new([RecordsProblems.At("roster", RecordsProblems.RosterChanged)]);

    // Of two at the same moment one gets it: the row is changed only while nobody has applied it.
    private static async Task<bool> ClaimAsync(
        this RecordsContext records, RosterApplication application, RosterDifference difference, CancellationToken cancellation)
    {
        var leaving = application.Scope == RosterScope.Whole ? difference.Missing.Count : 0;
        return await records.RosterUploads
            .Where(row => row.Id == application.UploadId && row.EmployerId == application.EmployerId && row.AppliedAt == null)
            .ExecuteUpdateAsync(
                set => set.SetProperty(row => row.AppliedAt, application.At).SetProperty(row => row.AppliedById, application.ById)
                    .SetProperty(row => row.NewCount, difference.New.Count).SetProperty(row => row.ReturningCount, difference.Returning.Count)
                    .SetProperty(row => row.ChangedCount, difference.Changed.Count).SetProperty(row => row.LeavingCount, leaving)
                    .SetProperty(row => row.Version, row => row.Version + 1),
                cancellation) == 1;
    }
}
