using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using Training.Documents.Signatures;
using Training.Web.Settings;

namespace Training.Web.Keys;

/// <summary>Asks the authority of the settings to vouch for times (RFC 3161, 3.4: over HTTP). Where it does not, papers go out without, and a warning is logged.</summary>
public sealed class TimestampAsking(TrainingOptions options, TimeProvider clock, ILogger<TimestampAsking> log) : IDisposable
{
    // As much as a paper has room for.
    private const int LongestAnswer = 12_288;
    private const int NonceSize = 16;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    // Somebody waits for the paper: an authority that is down is not waited for again and again.
    private static readonly TimeSpan Rest = TimeSpan.FromMinutes(1);

    private readonly HttpClient http = new(new SocketsHttpHandler { AllowAutoRedirect = false }) { Timeout = Patience, MaxResponseContentBufferSize = LongestAnswer };
    private long restsUntil;

    /// <summary>An authority for one signature; null where none is set, or where it did not answer just now.</summary>
    public TimestampAuthority? Find() =>
        options.Keys.TimestampAddress is { } address && clock.GetUtcNow().Ticks >= Interlocked.Read(ref restsUntil)
            ? new(RandomNumberGenerator.GetBytes(NonceSize), request => Ask(address, request))
            : null;

    /// <inheritdoc/>
    public void Dispose() => http.Dispose();

    private ReadOnlyMemory<byte> Ask(Uri address, ReadOnlyMemory<byte> request)
    {
        try
        {
            var answer = Send(address, request);
            if (IsFor(request, answer)) return answer;
            Log.TimestampUnusable(log);
        }
        catch (Exception refused) when (refused is HttpRequestException or OperationCanceledException or IOException)
        {
            Log.TimestampMissing(log, refused);
        }

        Interlocked.Exchange(ref restsUntil, (clock.GetUtcNow() + Rest).Ticks);
        return default;
    }

    private byte[] Send(Uri address, ReadOnlyMemory<byte> request)
    {
        using var asked = new HttpRequestMessage(HttpMethod.Post, address) { Content = new ReadOnlyMemoryContent(request) };
        asked.Content.Headers.ContentType = new MediaTypeHeaderValue("application/timestamp-query");
        using var answer = http.Send(asked);
        answer.EnsureSuccessStatusCode();
        using var body = answer.Content.ReadAsStream();
        using var bytes = new MemoryStream();
        body.CopyTo(bytes);
        return bytes.ToArray();
    }

    // The writer of papers throws at a token that its own check would refuse; here it is a paper without one.
    private static bool IsFor(ReadOnlyMemory<byte> request, byte[] answer)
    {
        try
        {
            return Rfc3161TimestampRequest.TryDecode(request, out var asked, out _)
                && asked.ProcessResponse(answer, out _).VerifySignatureForHash(asked.GetMessageHash().Span, HashAlgorithmName.SHA256, out _);
        }
        catch (CryptographicException)
        {
            return false;
        }
    }
}
