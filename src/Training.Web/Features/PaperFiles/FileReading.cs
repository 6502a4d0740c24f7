using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Net.Http.Headers;

namespace Training.Web.Features.PaperFiles;

/// <summary>Reads the file of a form into memory, and no more of the request than it may hold. Nothing is written to a disk or logged.</summary>
public static class FileReading
{
    /// <summary>Largest file.</summary>
    public const int MostMegabytes = 20;

    /// <summary>Largest file, in bytes.</summary>
    public const int MostBytes = MostMegabytes * 1024 * 1024;

    /// <summary>Name of the field.</summary>
    public const string Field = "file";

    // The form around the file.
    private const int MostAround = 64 * 1024;

    // So much is thrown away unread, so that a browser that is still sending sees the answer and not a broken connection.
    private const long MostDiscarded = 128L * 1024 * 1024;

    private const int LongestBoundary = 70;
    private const int MostParts = 8;

    /// <summary>The file, or why there is none.</summary>
    /// <exception cref="OperationCanceledException">It took too long, or whoever sent it went away.</exception>
    /// <exception cref="BadHttpRequestException">The server itself refused the request.</exception>
    public static async Task<SentFile> ReadAsync(HttpRequest request, CancellationToken cancellation)
    {
        if (request.ContentLength > MostBytes + MostAround)
        {
            if (request.HttpContext.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size) size.MaxRequestBodySize = MostDiscarded;
            return new SentFile.TooLarge();
        }

        if (FindBoundary(request.ContentType) is not { } boundary) return new SentFile.Missing();
        try
        {
            return await ReadAsync(new MultipartReader(boundary, request.Body), (int)(request.ContentLength ?? MostBytes), cancellation);
        }
        catch (Exception e) when (e is InvalidDataException || (e is IOException and not BadHttpRequestException))
        {
            // Not written as such a form is, or cut off.
            return new SentFile.Missing();
        }
    }

    private static async Task<SentFile> ReadAsync(MultipartReader form, int most, CancellationToken cancellation)
    {
        for (var part = 0; part < MostParts && await form.ReadNextSectionAsync(cancellation) is { } section; part++)
        {
            var isFile = ContentDispositionHeaderValue.TryParse(section.ContentDisposition, out var disposition)
                && disposition.IsFileDisposition() && HeaderUtilities.RemoveQuotes(disposition.Name) == Field;
            if (isFile) return await ReadAsync(section.Body, most, cancellation);
        }

        return new SentFile.Missing();
    }

    private static async Task<SentFile> ReadAsync(Stream body, int most, CancellationToken cancellation)
    {
        // Room at once: a buffer that grows leaves its smaller ones lying.
        using var file = new MemoryStream(most);
        var part = new byte[MostAround];
        for (int read; (read = await body.ReadAsync(part, cancellation)) > 0;)
        {
            if (file.Length + read > MostBytes) return new SentFile.TooLarge();
            file.Write(part.AsSpan(0, read));
        }

        return file.Length == 0 ? new SentFile.Missing() : new SentFile.Read(file.GetBuffer().AsMemory(0, (int)file.Length));
    }

    private static string? FindBoundary(string? contentType)
    {
        if (!MediaTypeHeaderValue.TryParse(contentType, out var type) || !type.MediaType.Equals("multipart/form-data", StringComparison.OrdinalIgnoreCase)) return null;
        var boundary = HeaderUtilities.RemoveQuotes(type.Boundary).Value;
        return boundary?.Length is > 0 and <= LongestBoundary ? boundary : null;
    }
}
