using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Keys;

/// <summary>A paper waits for its authority only so long.</summary>
public sealed class TimestampAskingTests : IDisposable
{
    private static readonly Rfc3161TimestampRequest Request =
        Rfc3161TimestampRequest.CreateFromHash(RandomNumberGenerator.GetBytes(32), HashAlgorithmName.SHA256, nonce: new byte[] { 1, 2, 3, 4 }, requestSignerCertificates: true);

    private readonly KeyPlace place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public void One_that_nobody_answers_for_is_left_alone_for_a_minute()
    {
        using var asking = place.Timestamps(place.Options(new() { TimestampAddress = new("http://127.0.0.1:1/") }));

        Assert.True(asking.Find()!.Ask(Request.Encode()).IsEmpty);

        Assert.Null(asking.Find());
        place.Clock.Now = KeyPlace.First.AddSeconds(59);
        Assert.Null(asking.Find());
        place.Clock.Now = KeyPlace.First.AddSeconds(60);
        Assert.NotNull(asking.Find());
        Assert.Single(place.Log.Lines, line => line.Event == "TimestampMissing");
    }

    [Theory]
    [InlineData("an answer to another request")]
    [InlineData("words")]
    [InlineData("a changed signature")]
    [InlineData("nothing")]
    public void An_answer_that_is_not_for_what_was_asked_is_none(string answer)
    {
        using var server = new TimeServer();
        using var asking = place.Timestamps(place.Options(new() { TimestampAddress = server.Address }));
        byte[]? first = null;
        server.Falsify = reply => answer switch
        {
            "an answer to another request" => first ??= reply,
            "words" => "not now"u8.ToArray(),
            "a changed signature" => [.. reply[..^1], (byte)(reply[^1] ^ 1)],
            _ => [],
        };
        var other = Rfc3161TimestampRequest.CreateFromHash(RandomNumberGenerator.GetBytes(32), HashAlgorithmName.SHA256, requestSignerCertificates: true);
        if (answer == "an answer to another request") Assert.False(asking.Find()!.Ask(other.Encode()).IsEmpty);

        Assert.True(asking.Find()!.Ask(Request.Encode()).IsEmpty);

        Assert.Null(asking.Find());
        Assert.Single(place.Log.Lines, line => line.Event == "TimestampUnusable");
    }

    [Fact]
    public void An_answer_without_end_is_not_read_to_its_end()
    {
        using var server = new TimeServer { Falsify = _ => new byte[50_000_000] };
        using var asking = place.Timestamps(place.Options(new() { TimestampAddress = server.Address }));

        Assert.True(asking.Find()!.Ask(Request.Encode()).IsEmpty);

        Assert.Single(place.Log.Lines, line => line.Event == "TimestampMissing");
    }
}
