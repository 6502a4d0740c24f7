using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;

namespace Training.Web.Features.AuditFolders;

/// <summary>One file of a folder.</summary>
/// <param name="Path">Within the folder.</param>
/// <param name="Kind">What it is, as the index says it.</param>
/// <param name="Id">Of the record that it shows; empty for the folder's own files.</param>
/// <param name="Bytes">How long it is.</param>
/// <param name="Sha256">Lower-case hex.</param>
/// <param name="KeptSha256">The hash that the records have kept since the file was made; null for a page that was made for this folder.</param>
public sealed record AuditEntry(string Path, string Kind, string Id, long Bytes, string Sha256, string? KeptSha256);

/// <summary>A folder does not fit into its bounds.</summary>
public sealed class AuditFolderTooLargeException : Exception;

/// <summary>Writes the files of a folder into a zip, one after the other, and remembers only their names and hashes.</summary>
/// <param name="file">Where to; on a disk, never in memory.</param>
/// <param name="stamp">The one date of all files, so that the same folder is the same bytes.</param>
public sealed class AuditZip(Stream file, DateOnly stamp) : IDisposable
{
    /// <summary>Most files of a folder.</summary>
    public const int MostFiles = 50_000;

    /// <summary>Most bytes of a folder's files, before they are compressed: 2 GiB.</summary>
    public const long MostBytes = 2L << 30;

    private readonly ZipArchive zip = new(file, ZipArchiveMode.Create, leaveOpen: true, Encoding.UTF8);
    private readonly List<AuditEntry> entries = [];

    /// <summary>What was written, in the order of the folder.</summary>
    public IReadOnlyList<AuditEntry> Entries => entries;

    /// <summary>Of all files.</summary>
    public long Bytes { get; private set; }

    /// <summary>Writes a file.</summary>
    /// <exception cref="AuditFolderTooLargeException">There are too many, or too large ones.</exception>
    public async Task<AuditEntry> AddAsync(string path, string kind, string id, ReadOnlyMemory<byte> content, CancellationToken cancellation, string? keptSha256 = null)
    {
        Bytes += content.Length;
        if (entries.Count >= MostFiles || Bytes > MostBytes) throw new AuditFolderTooLargeException();
        var entry = zip.CreateEntry(path);
        entry.LastWriteTime = new DateTimeOffset(stamp, TimeOnly.MinValue, TimeSpan.Zero);
        await using (var stream = entry.Open()) await stream.WriteAsync(content, cancellation);
        var written = new AuditEntry(path, kind, id, content.Length, Convert.ToHexStringLower(SHA256.HashData(content.Span)), keptSha256);
        entries.Add(written);
        return written;
    }

    /// <inheritdoc/>
    public void Dispose() => zip.Dispose();
}
