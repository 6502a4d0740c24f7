using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using Training.Courses;
using Training.Documents.Credentials;
using Training.Records;
using Training.Web.Features.Certificates;
using Training.Web.Keys;
using Training.Web.Settings;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Issuer;

/// <summary>What strangers fetch, read by a library of others (npm jose) from a running site of its own.</summary>
public sealed class IssuerControllerTests : IDisposable
{
    private static readonly string[] Paths = ["/.well-known/jwks.json", "/.well-known/did.json", "/did.json", "/status/revocation", "/status/suspension"];

    private readonly RunningSite site = RunningSite.Start();

    private IssuerKeys Keys => site.Services.GetRequiredService<IssuerKeys>();

    private KeyStore Store => new(site.Services.GetRequiredService<TrainingOptions>());

    public void Dispose() => site.Dispose();

    [Fact]
    public async Task Tokens_of_the_key_before_and_after_a_rotation_verify_from_the_key_set()
    {
        var before = CompactToken.Write(APaper(), Keys.Credentials);
        var badge = OpenBadge.Write(APaper(), Language.English, Keys.Badges);
        foreach (var use in KeyUses.All) Store.Rotate(use, "Quillback Field Safety", RunningSite.Now.AddMinutes(1), []);
        var after = CompactToken.Write(APaper(), Keys.Credentials);

        var read = await ReadAsync([before, after], badge, VerifiableCredential.Write(APaper(), Keys.Credentials));

        Assert.All(read.GetProperty("tokens").EnumerateArray(), jti => Assert.Equal(12, jti.GetString()!.Length));
        Assert.StartsWith("https://training.example.org/verify/", read.GetProperty("badge").GetString(), StringComparison.Ordinal);
        Assert.StartsWith("https://training.example.org/verify/", read.GetProperty("credential").GetString(), StringComparison.Ordinal);
        Assert.Equal("did:web:training.example.org", read.GetProperty("did").GetString());
    }

    [Fact]
    public async Task A_key_that_is_not_believed_leaves_the_key_set_and_asserts_nothing()
    {
        var (gate, ofBadges) = (Keys.Credentials, Keys.Badges);
        var (token, credential) = (CompactToken.Write(APaper(), gate), VerifiableCredential.Write(APaper(), gate));
        Assert.Equal("did:web:training.example.org", (await ReadAsync([])).GetProperty("did").GetString());
        foreach (var key in new[] { gate, ofBadges }) Store.Distrust(key.Public.Kid, RunningSite.Now, "Quillback Field Safety", RunningSite.Now.AddMinutes(1), []);

        var read = await ReadAsync([token], badge: null, credential);

        Assert.Equal("ERR_JWKS_NO_MATCHING_KEY", Assert.Single(read.GetProperty("tokens").EnumerateArray()).GetString());
        Assert.Equal("NO_METHOD", read.GetProperty("credential").GetString());
        // The lists that were kept are not served on: the new key signed these.
        Assert.Equal(131_072, read.GetProperty("lists").GetProperty("suspension").GetProperty("length").GetInt32());
        Assert.Equal((410, 200, 404), (await StatusAsync($"/keys/{ofBadges.Public.Kid}"), await StatusAsync($"/keys/{Keys.Badges.Public.Kid}"), await StatusAsync("/keys/none")));
        Assert.Contains("\"revoked\"", (await site.GetAsync("/.well-known/did.json")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_place_is_set_and_cleared_by_what_leads_do()
    {
        var cast = await ProgrammeCast.CreateAsync(site);
        var place = await site.GiveCredentialAsync((await cast.HoldAsync()).Serial);
        using var one = await site.SignInAsync(cast.Lead);
        var certification = $"/en/programme/people/{cast.Worker}/certifications/handler";
        Dictionary<string, string> Form() => new() { ["Id"] = $"{Guid.CreateVersion7()}", ["Reason"] = "Seen alone.", ["Deadline"] = "2026-12-09" };

        await AssertSetAsync(place, revoked: false, suspended: false);
        Assert.Equal(303, (await one.PostAsync($"{certification}/suspensions", Form())).Status);
        await AssertSetAsync(place, revoked: false, suspended: true);
        Assert.Equal(303, (await one.PostAsync($"{certification}/reinstatements", Form())).Status);
        await AssertSetAsync(place, revoked: false, suspended: true);
        site.Clock.Now = RunningSite.Now.AddDays(1);
        await AssertSetAsync(place, revoked: false, suspended: false);

        using var again = await site.SignInAsync(cast.Lead);
        using var other = await site.SignInAsync(cast.OtherLead);
        Assert.Equal(303, (await again.PostAsync($"{certification}/withdrawal-proposals", Form())).Status);
        await AssertSetAsync(place, revoked: false, suspended: false);
        IReadOnlyList<OpenProposal> open = [];
        await site.RecordAsync(async records => open = await records.OpenProposalsAsync(cast.Worker, default));
        Assert.Equal(303, (await other.PostAsync($"/en/programme/withdrawal-proposals/{Assert.Single(open).Id}/confirmation", [])).Status);
        await AssertSetAsync(place, revoked: true, suspended: false);
    }

    [Fact]
    public async Task A_corrected_paper_revokes_the_one_before()
    {
        var (serial, personId, decisionId) = await site.IssueAsync("handler", new(2026, 1, 15), new(2027, 6, 1));
        var place = await site.GiveCredentialAsync(serial);
        var second = CredentialDraw.Next(1);
        await site.RecordAsync(async records =>
        {
            var name = (await records.FindNameAsync(personId, new(2026, 11, 25), default))!;
            Assert.IsType<Issue.Issued>(await records.IssueAsync(
                new(decisionId, 2, Papers.ASerial().Value, name.Id, second.StatusIndex, second.SubjectId, []), RunningSite.Now, default));
        });

        await AssertSetAsync(place, revoked: true, suspended: false);
        await AssertSetAsync(second.StatusIndex, revoked: false, suspended: false);
    }

    [Fact]
    public async Task A_list_tells_how_long_it_may_be_kept_and_relied_on()
    {
        var read = (await ReadAsync([])).GetProperty("lists").GetProperty("revocation");
        Assert.Equal("https://training.example.org/status/revocation", read.GetProperty("id").GetString());
        Assert.Equal("application/vc+jwt", read.GetProperty("type").GetString());
        Assert.Equal(("2026-11-25T17:44:00+00:00", "2026-12-02T17:44:00+00:00"), (read.GetProperty("validFrom").GetString(), read.GetProperty("validUntil").GetString()));
        Assert.Equal(131_072, read.GetProperty("length").GetInt32());

        // Kept here for a minute, and everywhere for fifteen from its own instant on: never longer than that.
        Assert.Equal(900, await MaxAgeAsync());
        site.Clock.Now = RunningSite.Now.AddSeconds(59);
        Assert.Equal(841, await MaxAgeAsync());
        site.Clock.Now = RunningSite.Now.AddSeconds(60);
        Assert.Equal(900, await MaxAgeAsync());
    }

    [Fact]
    public async Task Any_page_may_read_them_any_cache_may_keep_them_and_they_speak_no_language()
    {
        foreach (var path in Paths.Append($"/keys/{Keys.Badges.Public.Kid}"))
        {
            using var answer = await site.Client.GetAsync(path);

            Assert.Equal((path, 200, "*"), (path, (int)answer.StatusCode, string.Join(' ', answer.Headers.GetValues("Access-Control-Allow-Origin"))));
            Assert.True(answer.Headers.CacheControl is { Public: true, NoStore: false });
            Assert.Empty(answer.Headers.Vary);
            Assert.False(answer.Headers.Contains("Set-Cookie"));
        }
    }

    [Fact]
    public async Task Nothing_on_these_pages_tells_who_or_whose()
    {
        var cast = await ProgrammeCast.CreateAsync(site, "Quillon Ashgrove");
        var (serial, _, decisionId) = await cast.HoldAsync();
        await site.GiveCredentialAsync(serial);
        using var lead = await site.SignInAsync(cast.Lead);
        await lead.PostAsync(
            $"/en/programme/people/{cast.Worker}/certifications/handler/suspensions", new() { ["Id"] = $"{Guid.CreateVersion7()}", ["Reason"] = "Seen alone.", ["Deadline"] = "2026-12-09" });
        string[] secrets = ["Quillon", "Ashgrove", serial.Value, serial.ToString(), $"{cast.Worker}", $"{decisionId}", $"{cast.Lead}", $"{cast.Employer}", "Seen alone", "Salt Fork", "PRIVATE KEY", "\"d\""];

        foreach (var path in Paths.Append($"/schemes/handler/{cast.Handler.Hash}").Append($"/keys/{Keys.Credentials.Public.Kid}"))
        {
            var said = (await site.GetAsync(path)).Html;
            // What a token says, spelled out.
            if (path.StartsWith("/status/", StringComparison.Ordinal)) said += System.Text.Encoding.UTF8.GetString(System.Buffers.Text.Base64Url.DecodeFromChars(said.Split('.')[1]));

            Assert.All(secrets, secret => Assert.DoesNotContain(secret, said, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public async Task Another_purpose_has_no_list() => Assert.Equal(404, await StatusAsync("/status/message"));

    private static IssuedCredential APaper() => Tests.Keys.APaper.Of();

    private async Task<int> StatusAsync(string path) => (await site.GetAsync(path)).Status;

    private async Task<double> MaxAgeAsync()
    {
        using var answer = await site.Client.GetAsync("/status/revocation");
        return answer.Headers.CacheControl!.MaxAge!.Value.TotalSeconds;
    }

    private async Task AssertSetAsync(int place, bool revoked, bool suspended)
    {
        // Past the minute for which a list is kept.
        site.Clock.Now = site.Clock.Now.AddMinutes(1);
        var lists = (await ReadAsync([], places: place)).GetProperty("lists");
        Assert.Equal((revoked, suspended), (IsSet("revocation"), IsSet("suspension")));

        bool IsSet(string purpose) => lists.GetProperty(purpose).GetProperty("set").GetArrayLength() == 1;
    }

    private Task<JsonElement> ReadAsync(string[] tokens, string? badge = null, string? credential = null, params int[] places) =>
        Node.RunAsync("Features/Issuer/read-issuer.mjs", new { address = site.Client.BaseAddress!.AbsoluteUri, now = RunningSite.Now.AddDays(1), tokens, badge, credential, places });
}
