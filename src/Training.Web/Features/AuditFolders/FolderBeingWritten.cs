using System.Globalization;
using Training.Courses;
using Training.Records;
using Training.Web.Shelf;

namespace Training.Web.Features.AuditFolders;

/// <summary>A folder while it is written: what it covers, and what its last files will need of the first.</summary>
/// <param name="records">Where from.</param>
/// <param name="courses">The texts of rules by their hashes.</param>
/// <param name="zip">Where to.</param>
/// <param name="scope">Whom and which days it covers.</param>
/// <param name="isFull">For a lead: with questions, answers and keys.</param>
/// <param name="language">Of its pages.</param>
public sealed class FolderBeingWritten(RecordsContext records, CoursesByHash courses, AuditZip zip, AuditScope scope, bool isFull, Language language)
{
    private readonly Dictionary<string, string?> courseIds = new(StringComparer.Ordinal);

    /// <summary>Where from.</summary>
    public RecordsContext Records => records;

    /// <summary>Where to.</summary>
    public AuditZip Zip => zip;

    /// <summary>Whom and which days it covers.</summary>
    public AuditScope Scope => scope;

    /// <summary>For a lead: with questions, answers and keys.</summary>
    public bool IsFull => isFull;

    /// <summary>Of its pages.</summary>
    public Language Language => language;

    /// <summary>Of the people written so far; null where a name was erased.</summary>
    public Dictionary<Guid, string?> Names { get; } = [];

    /// <summary>Who of them had a seat in which class.</summary>
    public List<(Guid ClassId, Guid PersonId)> Seats { get; } = [];

    /// <summary>The rules that the records written so far were made under.</summary>
    public HashSet<(string CourseId, string Hash)> Rules { get; } = [];

    /// <summary>Where the rules of a hash stand in the folder, without what the name ends with.</summary>
    public static string RulesPath(string courseId, string hash) => $"rules/{courseId}-{hash[..12]}";

    /// <summary>A new page in the folder's language.</summary>
    public AuditPage Page(string title) => new(language.Tag(), title);

    /// <summary>Adds a file.</summary>
    /// <exception cref="AuditFolderTooLargeException">It does not fit.</exception>
    public Task<AuditEntry> AddAsync(string path, string kind, object id, byte[] content, CancellationToken cancellation) =>
        zip.AddAsync(path, kind, string.Create(CultureInfo.InvariantCulture, $"{id}"), content, cancellation);

    /// <summary>The course of a hash, its rules remembered; null where the records do not have its text.</summary>
    public async Task<Course?> CourseAsync(string hash, CancellationToken cancellation)
    {
        if (!courseIds.TryGetValue(hash, out var courseId))
            courseIds[hash] = courseId = await records.FindCourseIdAsync(hash, cancellation);
        if (courseId is null) return null;
        Rules.Add((courseId, hash));
        return await courses.FindAsync(records, courseId, hash, cancellation);
    }
}
