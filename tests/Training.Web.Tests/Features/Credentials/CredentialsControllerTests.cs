using System.Text;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using Training.Web.Keys;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Credentials;

/// <summary>Certificates as files for programs; whether others can read them is asked where the pages for strangers are.</summary>
public sealed class CredentialsControllerTests(SharedSite shared)
{
    private readonly RunningSite site = shared.Site;

    [Fact]
    public async Task A_holder_takes_along_a_badge_in_each_language_and_a_credential()
    {
        var cast = await ProgrammeCast.CreateAsync(site);
        var serial = (await cast.HoldAsync()).Serial;
        await site.GiveCredentialAsync(serial);
        using var worker = await site.SignInAsync(cast.Worker);

        foreach (var (path, type, name) in new[]
        {
            ($"/en/my/certificates/{serial.Value}/badge.jwt", "application/jwt", $"{serial}-en-badge.jwt"),
            ($"/es/my/certificates/{serial.Value}/badge.jwt", "application/jwt", $"{serial}-es-badge.jwt"),
            ($"/es/my/certificates/{serial.Value}/credential.jwt", "application/vc+jwt", $"{serial}-credential.jwt"),
        })
        {
            var answer = await worker.GetAsync(path);

            Assert.Equal((200, type), (answer.Status, answer.Headers["Content-Type"]));
            Assert.Contains($"attachment; filename={name}", answer.Headers["Content-Disposition"], StringComparison.Ordinal);
            Assert.Equal("no-store", answer.Headers["Cache-Control"]);
        }

        var english = Payload(await worker.GetAsync($"/en/my/certificates/{serial.Value}/badge.jwt"));
        var spanish = Payload(await worker.GetAsync($"/es/my/certificates/{serial.Value}/badge.jwt"));
        Assert.Equal(cast.Handler.Scheme.Words[Courses.Language.English].Title, english.GetProperty("name").GetString());
        Assert.Equal(cast.Handler.Scheme.Words[Courses.Language.Spanish].Title, spanish.GetProperty("name").GetString());
    }

    [Fact]
    public async Task They_say_what_the_records_say()
    {
        var cast = await ProgrammeCast.CreateAsync(site);
        var serial = (await cast.HoldAsync()).Serial;
        var place = await site.GiveCredentialAsync(serial);
        using var worker = await site.SignInAsync(cast.Worker);

        var credential = Payload(await worker.GetAsync($"/en/my/certificates/{serial.Value}/credential.jwt"));

        var subject = credential.GetProperty("credentialSubject");
        Assert.Equal(("Íñigo Peña-Ruiz", serial.Value), (subject.GetProperty("name").GetString(), subject.GetProperty("licenseNumber").GetString()));
        Assert.Equal("2026-08-25T00:00:00-06:00", credential.GetProperty("validFrom").GetString());
        Assert.Equal("2027-08-25T23:59:59-06:00", credential.GetProperty("validUntil").GetString());
        Assert.Equal("Quillback Field Safety", credential.GetProperty("issuer").GetProperty("name").GetString());
        Assert.All(credential.GetProperty("credentialStatus").EnumerateArray(), entry => Assert.Equal($"{place}", entry.GetProperty("statusListIndex").GetString()));

        // R-OB-01: the criteria lead to a page that is there.
        var criteria = new Uri(subject.GetProperty("achievement").GetProperty("criteria").GetProperty("id").GetString()!);
        Assert.Equal(200, (await site.GetAsync(criteria.AbsolutePath)).Status);
        Assert.Equal(200, (await site.GetAsync(new Uri(credential.GetProperty("id").GetString()!).AbsolutePath)).Status);
    }

    [Fact]
    public async Task They_are_signed_by_the_keys_of_today()
    {
        var cast = await ProgrammeCast.CreateAsync(site);
        var serial = (await cast.HoldAsync()).Serial;
        await site.GiveCredentialAsync(serial);
        using var worker = await site.SignInAsync(cast.Worker);
        var keys = site.Services.GetRequiredService<IssuerKeys>();

        var badge = Header(await worker.GetAsync($"/en/my/certificates/{serial.Value}/badge.jwt"));
        var credential = Header(await worker.GetAsync($"/en/my/certificates/{serial.Value}/credential.jwt"));

        Assert.Equal($"https://training.example.org/keys/{keys.Badges.Public.Kid}", badge.GetProperty("kid").GetString());
        Assert.Equal($"did:web:training.example.org#{keys.Credentials.Public.Kid}", credential.GetProperty("kid").GetString());
    }

    [Fact]
    public async Task They_are_offered_only_where_a_paper_has_them()
    {
        var cast = await ProgrammeCast.CreateAsync(site);
        var (old, current) = ((await site.HoldAsync(cast.Worker, "awareness", new(2026, 1, 15), new(2028, 1, 15))).Serial, (await cast.HoldAsync()).Serial);
        await site.GiveCredentialAsync(current);
        using var worker = await site.SignInAsync(cast.Worker);
        using var lead = await site.SignInAsync(cast.Lead);

        var own = (await worker.GetAsync("/en/my")).Html;
        var person = (await lead.GetAsync($"/en/programme/people/{cast.Worker}")).Html;

        foreach (var file in new[] { "badge.jwt", "credential.jwt" })
        {
            Assert.Contains($"href=\"/en/my/certificates/{current.Value}/{file}\"", own, StringComparison.Ordinal);
            Assert.DoesNotContain($"{old.Value}/{file}", own, StringComparison.Ordinal);
            Assert.Contains($"href=\"/en/programme/certificates/{current.Value}/{file}\"", person, StringComparison.Ordinal);
            Assert.DoesNotContain($"{old.Value}/{file}", person, StringComparison.Ordinal);
            Assert.Equal(404, (await worker.GetAsync($"/en/my/certificates/{old.Value}/{file}")).Status);
            Assert.Equal(404, (await lead.GetAsync($"/en/programme/certificates/{old.Value}/{file}")).Status);
            Assert.Equal(200, (await lead.GetAsync($"/en/programme/certificates/{current.Value}/{file}")).Status);
        }

        Assert.Contains("Nobody needs them: the paper and its code are enough at a gate.", own, StringComparison.Ordinal);
        Assert.Contains("Nadie los necesita", (await worker.GetAsync("/es/my")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_somebody_elses_erased_or_no_serial_is_not_there()
    {
        var (cast, other) = (await ProgrammeCast.CreateAsync(site), await ProgrammeCast.CreateAsync(site));
        var (mine, theirs) = ((await cast.HoldAsync()).Serial, (await other.HoldAsync()).Serial);
        foreach (var serial in new[] { mine, theirs }) await site.GiveCredentialAsync(serial);
        using var worker = await site.SignInAsync(cast.Worker);
        using var lead = await site.SignInAsync(cast.Lead);

        Assert.Equal(404, (await worker.GetAsync($"/en/my/certificates/{theirs.Value}/badge.jwt")).Status);
        Assert.Equal(404, (await worker.GetAsync("/en/my/certificates/x/credential.jwt")).Status);
        Assert.Equal(404, (await worker.GetAsync($"/en/programme/certificates/{mine.Value}/badge.jwt")).Status);

        await site.RecordAsync(async records =>
        {
            records.PersonNames.Single(name => name.PersonId == other.Worker).Text = null;
            await records.SaveChangesAsync();
        });
        Assert.Equal(404, (await lead.GetAsync($"/en/programme/certificates/{theirs.Value}/credential.jwt")).Status);
        Assert.DoesNotContain("credential.jwt", (await lead.GetAsync($"/en/programme/people/{other.Worker}")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_demonstration_says_so_in_every_form()
    {
        using var demo = RunningSite.Start(isDemo: true);
        var cast = await ProgrammeCast.CreateAsync(demo);
        var serial = (await cast.HoldAsync()).Serial;
        await demo.GiveCredentialAsync(serial);
        using var worker = await demo.SignInAsync(cast.Worker);

        foreach (var file in new[] { "badge.jwt", "credential.jwt" })
            Assert.Contains("DEMO: ", Payload(await worker.GetAsync($"/en/my/certificates/{serial.Value}/{file}")).GetRawText(), StringComparison.Ordinal);
    }

    private static JsonElement Payload(Reply token) => Part(token, 1);

    private static JsonElement Header(Reply token) => Part(token, 0);

    private static JsonElement Part(Reply token, int part) =>
        JsonSerializer.Deserialize<JsonElement>(System.Buffers.Text.Base64Url.DecodeFromChars(Encoding.ASCII.GetString(token.Bytes).Split('.')[part]));
}
