using Training.Certification;
using Training.Records;
using Training.Web.Shelf;

namespace Training.Web.Features.Verify;

/// <summary>What the check of certificates asks the records.</summary>
public static class VerifyQueries
{
    /// <summary>The paper of a serial, or null where none was issued.</summary>
    /// <exception cref="InvalidOperationException">The rules that it was decided by are not in the records.</exception>
    public static async Task<Paper?> FindPaperAsync(
        this RecordsContext records, Serial serial, CoursesByHash courses, CancellationToken cancellation)
    {
        var found = await records.FindPaperAsync(serial.Value, cancellation);
        if (found is null) return null;
        var scheme = (await courses.FindAsync(records, found.SchemeId, found.CourseHash, cancellation))?.Scheme
            ?? throw new InvalidOperationException($"Paper {found.Id} was decided by snapshot {found.CourseHash}, which was never kept.");
        return new(
            found.PrintedName,
            scheme.Words.ToDictionary(words => words.Key, words => words.Value.Title),
            scheme.Kind,
            found.Revision,
            found.Supersession != Supersession.None,
            found.Held,
            found.Zone);
    }
}
