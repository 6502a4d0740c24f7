using Training.Certification;
using Training.Documents.Credentials;
using Training.Records;
using Training.Web.Features.Certificates;
using Training.Web.Shelf;

namespace Training.Web.Features.Credentials;

/// <summary>Reads what the machine-readable forms of a kept paper say.</summary>
public sealed class CredentialReading(RecordsContext records, CoursesByHash courses, PaperCredentials credentials)
{
    /// <summary>The record of one paper; null where it has no such forms.</summary>
    /// <param name="serial">Of the paper.</param>
    /// <param name="personId">Whose it must be; null: anybody's.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <exception cref="InvalidOperationException">The rules that it was decided by are not in the records.</exception>
    public async Task<IssuedCredential?> FindAsync(Serial serial, Guid? personId, CancellationToken cancellation)
    {
        if (await records.FindPaperForMachinesAsync(serial.Value, personId, cancellation) is not { } paper) return null;
        var course = await courses.FindAsync(records, paper.SchemeId, paper.CourseHash, cancellation)
            ?? throw new InvalidOperationException($"Paper {serial} was decided by snapshot {paper.CourseHash}, which was never kept.");
        return credentials.Of(serial, paper.PrintedName, course, paper.Period, paper.Zone, paper.IssuedAt, new(paper.StatusIndex, paper.SubjectId));
    }
}
