using System.Security.Cryptography;
using System.Security.Cryptography.Pkcs;
using Training.Documents.Credentials;
using Training.Records;
using Training.Web.Keys;
using Training.Web.Provider;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Keys;

/// <summary>The keys of a server that runs, while they change under it.</summary>
public sealed class IssuerKeysTests : IDisposable
{
    private readonly KeyPlace place = new();

    public void Dispose() => place.Dispose();

    [Fact]
    public void A_rotation_by_the_command_counts_at_once()
    {
        var keys = place.Serve();
        var (credentials, badges, signer) = (keys.Credentials.Public.Kid, keys.Badges.Public.Kid, Assert.Single(keys.Signers).Thumbprint);

        foreach (var use in KeyUses.All) Assert.NotNull(place.Store().Rotate(use, KeyPlace.Provider, KeyPlace.First.AddDays(1), []));

        Assert.NotEqual((credentials, badges), (keys.Credentials.Public.Kid, keys.Badges.Public.Kid));
        Assert.Equal(4, keys.All.Count);
        Assert.Equal(2, keys.Signers.Count);
        Assert.NotEqual(signer, keys.PaperSigner(KeyPlace.First).Certificate.Thumbprint);
        Assert.Equal(
            [keys.Credentials.Public.Kid, keys.Badges.Public.Kid], keys.All.Where(key => key.RetiredAt is null).Select(key => key.Jwk.Kid));
    }

    [Fact]
    public void Keys_for_papers_are_none_that_speak_for_credentials()
    {
        var keys = place.Serve();

        Assert.Equal([keys.Credentials.Public, keys.Badges.Public], keys.All.Select(key => key.Jwk));
        Assert.DoesNotContain(RegisteredKey.KidOf(keys.Signers[0]), DidDocument.Write(keys.Issuer, keys.All), StringComparison.Ordinal);
    }

    [Fact]
    public void Heads_of_the_log_are_signed_by_the_key_of_credentials()
    {
        var keys = place.Serve();

        Assert.Equal(keys.Credentials.Public, PublicJwk.Of(keys.HeadKey));
    }

    [Fact]
    public void A_stolen_key_for_papers_is_told()
    {
        var keys = place.Serve();
        var stolen = Assert.Single(keys.Signers);
        Assert.Null(keys.NotBelievedSince(stolen));

        place.Store().Distrust(RegisteredKey.KidOf(stolen), KeyPlace.First, KeyPlace.Provider, KeyPlace.First.AddDays(1), []);

        Assert.Equal(KeyPlace.First, keys.NotBelievedSince(stolen));
        Assert.Null(keys.NotBelievedSince(keys.PaperSigner(KeyPlace.First).Certificate));
    }

    [Fact]
    public void The_paper_after_the_provider_was_renamed_is_signed_in_the_new_name()
    {
        var provider = new OurProvider(place.Options());
        var keys = place.Serve(provider: provider);
        Assert.Equal("CN=Quillback Field Safety", keys.PaperSigner(KeyPlace.First).Certificate.Subject);

        provider.Take(new ProviderDetails
        {
            Id = Guid.CreateVersion7(), LeadId = Guid.CreateVersion7(), SinceAt = KeyPlace.First, Name = "Peña & Quillback", Address = "", Zone = "America/Denver", Region = "US",
        });

        Assert.Equal("CN=Peña & Quillback", keys.PaperSigner(KeyPlace.First).Certificate.Subject);
        Assert.Equal(keys.PaperSigner(KeyPlace.First).Certificate.Thumbprint, keys.PaperSigner(KeyPlace.First).Certificate.Thumbprint);
        Assert.Equal(2, keys.Signers.Count);
    }

    [Fact]
    public void A_certificate_that_has_ended_is_exchanged_before_it_signs()
    {
        var keys = place.Serve();
        var first = keys.PaperSigner(KeyPlace.First).Certificate;

        place.Clock.Now = new(first.NotAfter.ToUniversalTime());
        Assert.Equal(first.Thumbprint, keys.PaperSigner(KeyPlace.First).Certificate.Thumbprint);
        place.Clock.Now = place.Clock.Now.AddSeconds(1);
        var second = keys.PaperSigner(place.Clock.Now).Certificate;

        Assert.NotEqual(first.Thumbprint, second.Thumbprint);
        Assert.True(second.NotBefore.ToUniversalTime() <= place.Clock.Now.UtcDateTime);
    }

    [Fact]
    public void A_register_that_breaks_while_it_runs_is_logged_once_and_the_keys_at_hand_go_on()
    {
        var keys = place.Serve();
        var kid = keys.Credentials.Public.Kid;

        File.WriteAllText(Path.Combine(place.Keys, "register.json"), "half of it");

        Assert.Equal([kid, kid], [keys.Credentials.Public.Kid, keys.Credentials.Public.Kid]);
        Assert.Single(place.Log.Lines, line => line.Event == "KeysUnreadable");
        Assert.DoesNotContain(place.Log.Lines, line => line.Line.Contains("PRIVATE", StringComparison.Ordinal));
    }

    [Fact]
    public void Keys_that_nobody_looked_at_before_serving_are_no_reason_to_sign_with_others()
    {
        place.Open();
        File.Delete(place.PrivateFiles[0]);

        Assert.Throws<InvalidOperationException>(() => place.Serve().Credentials);
    }

    [Fact]
    public async Task Many_threads_sign_with_one_key()
    {
        var keys = place.Serve();

        var tokens = await Task.WhenAll(Enumerable.Range(0, 200).Select(_ => Task.Run(() => CompactToken.Write(APaper.Of(), keys.Credentials))));

        var trust = new IssuerTrust { Issuer = APaper.Issuer, Keys = keys.All };
        Assert.All(tokens, token => Assert.IsType<TokenVerdict.Current>(TokenReading.Read(token, trust, KeyPlace.First.AddDays(1))));
    }

    [Fact]
    public void With_an_address_of_an_authority_it_vouches_for_the_time()
    {
        using var server = new TimeServer();
        var signer = place.Serve(new() { TimestampAddress = server.Address }).PaperSigner(KeyPlace.First);
        var value = RandomNumberGenerator.GetBytes(71);
        var request = Rfc3161TimestampRequest.CreateFromHash(SHA256.HashData(value), HashAlgorithmName.SHA256, nonce: signer.Timestamp!.Nonce, requestSignerCertificates: true);

        var token = request.ProcessResponse(signer.Timestamp.Ask(request.Encode()), out _);

        Assert.True(token.VerifySignatureForData(value, out var authority));
        Assert.Equal("CN=Invented Time", authority!.Subject);
        Assert.InRange(token.TokenInfo.Timestamp, TimeProvider.System.GetUtcNow().AddMinutes(-1), TimeProvider.System.GetUtcNow().AddMinutes(1));
    }

    [Fact]
    public void Without_an_address_nobody_is_asked() => Assert.Null(place.Serve().PaperSigner(KeyPlace.First).Timestamp);
}
