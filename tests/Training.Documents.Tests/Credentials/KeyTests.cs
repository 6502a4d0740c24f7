using System.Security.Cryptography;
using System.Text.Json;
using Training.Documents.Credentials;
using static Training.Documents.Tests.Credentials.Cast;

namespace Training.Documents.Tests.Credentials;

public sealed class KeyTests
{
    // RFC 7638, 3.1: its example key and thumbprint.
    [Fact]
    public void The_published_example_has_its_published_thumbprint()
    {
        var example = new PublicJwk.Rsa(
            "0vx7agoebGcQSuuPiLJXZptN9nndrQmbXEps2aiAFbWhM78LhWx4cbbfAAtVT86zwu1RK7aPFFxuhDR1L6tSoc_BJECPebWKRXjBZCiFV4n3oknjhMstn64tZ_2W-5JsGY4Hc5n9yBXArwl93lqt7_RN5w6Cf0h4QyQ5v-65YGjQR0_FDW2QvzqY368QQMicAtaSqzs8KJZgnYb9c7d0zgdAZHzu6qMQvRL5hajrn1n91CbOpbISD08qNLyrdkt-bFTWhAI4vMQFh6WeZu0fM4lFd2NcRwr3XPksINHaQ-G_xBniIqbw0Ls1jF44-csFCur-kEgU8awapJzKnqDKgw",
            "AQAB");

        Assert.Equal("NzbLsXh8uDCcd-6MNwXF4W_7noWXFZAfHkxZsRGC9Xs", example.Kid);
    }

    [Fact]
    public void Weak_keys_and_keys_of_another_curve_sign_nothing()
    {
        using var small = RSA.Create(1024);
        using var other = ECDsa.Create(ECCurve.NamedCurves.nistP384);

        Assert.Throws<ArgumentException>(() => new SigningKey(small));
        Assert.Throws<ArgumentException>(() => new SigningKey(other));
    }

    // RFC 7518, 6.2.2 and 6.3.2: the names of private members.
    [Fact]
    public void No_document_holds_a_private_part()
    {
        foreach (var text in (string[])[JsonWebKeySet.WriteAll(Keys), JsonWebKeySet.WriteBelieved(Keys), DidDocument.Write(Provider, Keys)])
        {
            using var json = JsonDocument.Parse(text);
            Assert.Empty(Members(json.RootElement).Intersect(["d", "p", "q", "dp", "dq", "qi", "oth", "k"]));
        }
    }

    [Fact]
    public void A_retired_key_stays_listed_with_its_end()
    {
        var retired = KeyIn(JsonWebKeySet.WriteBelieved(Keys), OldGate)!.Value;

        Assert.Equal(new DateTimeOffset(2026, 3, 1, 0, 0, 0, TimeSpan.Zero).ToUnixTimeSeconds(), retired.GetProperty("exp").GetInt64());
        Assert.Contains(Provider.KeyName(OldGate.Public.Kid), Asserting());
    }

    [Fact]
    public void A_key_that_others_may_have_is_kept_from_strangers_and_asserts_nothing()
    {
        Assert.Null(KeyIn(JsonWebKeySet.WriteBelieved(Keys), LostGate));
        Assert.Equal(LostAt.ToUnixTimeSeconds(), KeyIn(JsonWebKeySet.WriteAll(Keys), LostGate)!.Value.GetProperty("revoked").GetProperty("revoked_at").GetInt64());
        Assert.DoesNotContain(Provider.KeyName(LostGate.Public.Kid), Asserting());
        Assert.Contains("\"revoked\":\"2026-06-01T12:00:00+00:00\"", DidDocument.Write(Provider, Keys), StringComparison.Ordinal);
    }

    [Fact]
    public void The_document_names_no_key_of_another_issuer() =>
        Assert.DoesNotContain(Foreign.Public.Kid, DidDocument.Write(Provider, Keys), StringComparison.Ordinal);

    // did:web Method Specification, "Method-specific identifier": its examples of a port and of a path, under another host.
    [Theory]
    [InlineData("https://training.quillback.example", "did:web:training.quillback.example")]
    [InlineData("http://localhost:5080/", "did:web:localhost%3A5080")]
    [InlineData("https://quillback.example:3000/user/alice", "did:web:quillback.example%3A3000:user:alice")]
    [InlineData("https://bücher.example", "did:web:xn--bcher-kva.example")]
    public void The_issuer_is_named_by_its_host(string address, string did) => Assert.Equal(did, new IssuerAddress(new(address)).Did);

    [Theory]
    [InlineData("ftp://quillback.example")]
    [InlineData("https://user@quillback.example")]
    [InlineData("https://quillback.example/?a=b")]
    [InlineData("https://quillback.example/#a")]
    public void Other_addresses_name_no_issuer(string address) => Assert.Throws<ArgumentException>(() => new IssuerAddress(new(address)));

    [Fact]
    public void Pages_of_the_issuer_lie_below_its_address()
    {
        var issuer = new IssuerAddress(new("https://quillback.example/training"));

        Assert.Equal("https://quillback.example/training/status/suspension", issuer.StatusListPage(StatusPurpose.Suspension).AbsoluteUri);
        Assert.Equal("https://quillback.example/training/keys/abc", issuer.KeyPage("abc").AbsoluteUri);
    }

    [Fact]
    public void Every_signature_has_the_low_s_and_its_twin_the_high_one()
    {
        for (var i = 0; i < 50; i++)
        {
            var data = BitConverter.GetBytes(i);
            var signature = Gate.Sign(data);

            Assert.True(LowS.Holds(signature));
            Assert.True(Gate.Public.Verifies(data, signature));
            Assert.False(LowS.Holds(LowS.Twin(signature)));
            Assert.True(Gate.Public.Verifies(data, LowS.Twin(signature)));
        }
    }

    private static string[] Asserting() => JsonDocument.Parse(DidDocument.Write(Provider, Keys)).RootElement.GetProperty("assertionMethod").Deserialize<string[]>()!;

    private static JsonElement? KeyIn(string keySet, SigningKey key) => JsonDocument.Parse(keySet).RootElement.GetProperty("keys").EnumerateArray()
        .Select(entry => (JsonElement?)entry).SingleOrDefault(entry => entry!.Value.GetProperty("kid").GetString() == key.Public.Kid);

    private static IEnumerable<string> Members(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.Object => json.EnumerateObject().SelectMany(member => Members(member.Value).Prepend(member.Name)),
        JsonValueKind.Array => json.EnumerateArray().SelectMany(Members),
        _ => [],
    };
}
