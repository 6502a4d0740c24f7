using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Keeps which folders were made, and reads them back.</summary>
public static class AuditKeeping
{
    /// <summary>
    /// Keeps that a folder was made. The same id with the same folder is the one that is stored; with another, nothing is written: the
    /// records have moved on, or something else was asked for.
    /// </summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, AuditFolder folder, CancellationToken cancellation)
    {
        if (await records.TryInsertAsync(cancellation, folder)) return new Kept.Stored(folder.Id);
        var first = await records.AuditFolders.AsNoTracking().SingleAsync(row => row.Id == folder.Id, cancellation);
        return IsSame(first, folder)
            ? new Kept.AlreadyStored(folder.Id)
            : new Kept.Refused([RecordsProblems.At("folder", RecordsProblems.OtherContent, folder.Id.ToString())]);
    }

    /// <summary>The last folders about an employer's people, newest first; about anybody's where it is null.</summary>
    public static async Task<IReadOnlyList<AuditFolder>> AuditFoldersAsync(
        this RecordsContext records, Guid? employerId, int most, CancellationToken cancellation) =>
        await records.AuditFolders.AsNoTracking().Where(folder => employerId == null || folder.EmployerId == employerId)
            .OrderByDescending(folder => folder.MadeAt).ThenByDescending(folder => folder.Id).Take(most).ToListAsync(cancellation);

    private static bool IsSame(AuditFolder one, AuditFolder other) =>
        (one.MadeById, one.IsFull, one.EmployerId, one.SiteId, one.PersonId, one.StartsOn, one.EndsOn)
            == (other.MadeById, other.IsFull, other.EmployerId, other.SiteId, other.PersonId, other.StartsOn, other.EndsOn)
        && (one.Language, one.Files, one.IndexSha256) == (other.Language, other.Files, other.IndexSha256);
}
