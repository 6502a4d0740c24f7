using Microsoft.EntityFrameworkCore;
using Training.Documents.Credentials;
using Training.Documents.IssueLog;
using Training.Records;
using Training.Web.Keys;

namespace Training.Web.Features.IssueLog;

/// <summary>Signs the state of the log: where there is news, and else once an hour, so that an old head is a sign that something is wrong.</summary>
/// <remarks>Safe to run twice and on several nodes: heads of one log agree, whoever signs them.</remarks>
public sealed class TreeHeadJob(IDbContextFactory<RecordsContext> factory, IssuerKeys keys, TimeProvider clock, ILogger<TreeHeadJob> logger)
{
    /// <summary>Longest time without a head where nothing happened.</summary>
    public static readonly TimeSpan Longest = TimeSpan.FromHours(1);

    /// <summary>One round.</summary>
    public async Task RunAsync(CancellationToken cancellation)
    {
        await using var records = await factory.CreateDbContextAsync(cancellation);
        var newest = await records.FindNewestHeadAsync(cancellation);
        var edge = await records.EdgeAsync(cancellation);
        var now = clock.GetUtcNow();
        if (newest is not null && !IsDue(newest, edge.Size, now)) return;
        var key = keys.HeadKey;
        var signed = new TreeHead(edge.Size, edge.Root, now).Sign(key);
        await records.KeepAsync(
            new TreeHeadRecord
            {
                Size = signed.Head.Size, At = signed.Head.At, Root = signed.Head.Root.ToArray(), Signature = signed.Signature.ToArray(),
                KeyId = PublicJwk.Of(key).Kid,
            },
            cancellation);
    }

    private bool IsDue(TreeHeadRecord newest, long size, DateTimeOffset now)
    {
        if (size >= newest.Size) return now > newest.At && (size > newest.Size || now - newest.At >= Longest);
        // A backup without the newest leaves was restored, or rows were deleted: signing that would prove us wrong to whoever kept the head.
        Log.LogWasCut(logger, size, newest.Size);
        return false;
    }
}
