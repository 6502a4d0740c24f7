using System.Globalization;

namespace Training.Web.Shelf;

/// <summary>What can be told of the courses folder without reading its files.</summary>
public static class FolderStamp
{
    /// <summary>Changes whenever a file was added, removed, renamed or written; null where the folder cannot be listed now.</summary>
    public static string? Find(string folder)
    {
        try
        {
            var files = new DirectoryInfo(folder).EnumerateFiles("*", SearchOption.AllDirectories)
                .OrderBy(file => file.FullName, StringComparer.Ordinal)
                .Select(file => string.Create(CultureInfo.InvariantCulture, $"{file.FullName}|{file.Length}|{file.LastWriteTimeUtc.Ticks}"));
            return string.Join('\n', files);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // An editor renames and deletes while we look; the next look is seconds away.
            return null;
        }
    }

    /// <summary>Names of the folders in it: the ids of the courses that somebody means to have.</summary>
    public static IReadOnlySet<string> CourseIds(string folder) =>
        Directory.EnumerateDirectories(folder).Select(path => Path.GetFileName(path)).ToHashSet(StringComparer.Ordinal);
}
