using System.Text;
using Training.Courses;
using Training.Records;
using Training.Web.Shelf;

namespace Training.Web.Features.AuditFolders;

/// <summary>What became of a folder that was written.</summary>
/// <param name="People">In it.</param>
/// <param name="Files">That its index names.</param>
/// <param name="Bytes">Of those files.</param>
/// <param name="IndexSha256">Of <c>index.csv</c>.</param>
public sealed record WrittenFolder(int People, int Files, long Bytes, string IndexSha256);

/// <summary>
/// Puts the evidence of a scope into a zip: each record for people (HTML) and for programs (JSON), stored certificates as they are, and an index
/// with the hash of every file. The same scope on the same records is the same folder, byte by byte.
/// </summary>
public sealed class AuditFolderWriter(CoursesByHash courses, PersonFiles persons, ClassFiles classes, RuleFiles rules, FolderIndex contents)
{
    /// <summary>Most people of a folder.</summary>
    public const int MostPeople = 2_000;

    private const int PeopleABatch = 50;

    /// <summary>Writes the folder; null where it has more people than <see cref="MostPeople"/>.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="scope">Whom and which days it covers.</param>
    /// <param name="isFull">For a lead: with questions, answers and keys.</param>
    /// <param name="title">What it covers, in words.</param>
    /// <param name="language">Of its pages.</param>
    /// <param name="file">Where to.</param>
    /// <param name="cancellation">Ends the writing.</param>
    /// <exception cref="AuditFolderTooLargeException">It does not fit into its bounds.</exception>
    public async Task<WrittenFolder?> WriteAsync(
        RecordsContext records, AuditScope scope, bool isFull, string title, Language language, Stream file, CancellationToken cancellation)
    {
        var people = await records.AuditedPeopleAsync(scope, MostPeople, cancellation);
        if (people.Count > MostPeople) return null;
        using var zip = new AuditZip(file, scope.Through);
        var folder = new FolderBeingWritten(records, courses, zip, scope, isFull, language);
        foreach (var batch in people.Chunk(PeopleABatch)) await persons.AddAsync(folder, batch, cancellation);
        await classes.AddAsync(folder, cancellation);
        await rules.AddAsync(folder, cancellation);
        var index = await zip.AddAsync("index.csv", "index", "", FolderIndex.Csv(folder), cancellation);
        var (files, bytes) = (zip.Entries.Count - 1, zip.Bytes - index.Bytes);
        await zip.AddAsync("index.html", "index", "", contents.Page(folder, title, index).ToBytes(), cancellation);
        var sums = string.Concat(zip.Entries.Select(entry => $"{entry.Sha256}  {entry.Path}\n"));
        await zip.AddAsync("sha256sums.txt", "index", "", Encoding.UTF8.GetBytes(sums), cancellation);
        return new(people.Count, files, bytes, index.Sha256);
    }
}
