using System.Text;

namespace Training.Courses;

/// <summary>All text files of a <c>courses/</c> folder, by path relative to it with forward slashes.</summary>
/// <remarks>
/// Texts are kept with line feeds only and without a byte order mark, so that a file saved on another system has the same hash. What
/// could not be taken in (too large, not UTF-8) is a finding of <see cref="Problems"/>, never an exception.
/// </remarks>
public sealed class CourseFiles
{
    /// <summary>Most characters of one file: 512 KiB.</summary>
    public const int MaxFileLength = 512 * 1024;

    /// <summary>Most files in all.</summary>
    public const int MaxFiles = 4_000;

    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
    private readonly SortedDictionary<string, string> texts = new(StringComparer.Ordinal);
    private readonly List<Problem> problems = [];

    /// <summary>Takes texts that are in memory already.</summary>
    /// <param name="texts">Text by path, such as <c>awareness/en/course.md</c>.</param>
    public CourseFiles(IEnumerable<KeyValuePair<string, string>> texts)
    {
        foreach (var (path, text) in texts) Add(path, text);
    }

    private CourseFiles()
    {
    }

    /// <summary>Paths in ordinal order.</summary>
    public IEnumerable<string> Paths => texts.Keys;

    /// <summary>What could not be taken in.</summary>
    public IReadOnlyList<Problem> Problems => problems;

    /// <summary>Reads the <c>.yaml</c>, <c>.md</c> and <c>.svg</c> files below a folder; hidden files and links are passed over.</summary>
    /// <param name="path">The courses folder.</param>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static CourseFiles FromFolder(string path)
    {
        var root = Path.GetFullPath(path);
        var options = new EnumerationOptions
        {
            RecurseSubdirectories = true,
            MaxRecursionDepth = 8,
            AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint,
            IgnoreInaccessible = false,
        };
        var found = Directory.EnumerateFiles(root, "*", options)
            .Where(file => Path.GetExtension(file) is ".yaml" or ".md" or ".svg")
            .Take(MaxFiles + 1)
            .Select(file => (Full: file, Relative: Path.GetRelativePath(root, file).Replace('\\', '/')))
            .OrderBy(file => file.Relative, StringComparer.Ordinal);
        var files = new CourseFiles();
        foreach (var (full, relative) in found) files.AddFrom(full, relative);
        return files;
    }

    /// <summary>The text of a file, or null where there is none.</summary>
    public string? Find(string path) => texts.GetValueOrDefault(path);

    private void AddFrom(string fullPath, string relativePath)
    {
        try
        {
            // A character is at most 4 bytes; the count of characters is checked once more after decoding.
            if (new FileInfo(fullPath).Length > MaxFileLength * 4L) Refuse(CourseProblems.FileTooLarge, relativePath);
            else Add(relativePath, StrictUtf8.GetString(File.ReadAllBytes(fullPath)));
        }
        catch (DecoderFallbackException)
        {
            Refuse(CourseProblems.FileNotText, relativePath);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Refuse(CourseProblems.FileUnreadable, relativePath);
        }
    }

    private void Add(string path, string text)
    {
        if (texts.Count >= MaxFiles) Refuse(CourseProblems.FilesTooMany, path, MaxFiles);
        else if (text.Length > MaxFileLength) Refuse(CourseProblems.FileTooLarge, path, MaxFileLength);
        else texts[path] = Normalise(text);
    }

    private void Refuse(string code, string path, int? limit = null) => problems.Add(new(
        code,
        new Place(path),
        limit is null ? [] : [limit.Value.ToString(System.Globalization.CultureInfo.InvariantCulture)]));

    private static string Normalise(string text) =>
        text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');
}
