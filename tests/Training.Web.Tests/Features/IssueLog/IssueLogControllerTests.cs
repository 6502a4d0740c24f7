using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using Training.Certification;
using Training.Records;
using Training.Web.Features.IssueLog;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.IssueLog;

/// <summary>The log as strangers read it; the judge is <c>docs/watch-log.mjs</c>, written from RFC 6962 and RFC 9162 with what node brings.</summary>
public sealed class IssueLogControllerTests : IDisposable
{
    private static readonly DateOnly Start = new(2026, 1, 15);
    private static readonly DateOnly End = new(2027, 6, 1);

    // Of its own: a log has one end, and others would append to it.
    private readonly RunningSite site = RunningSite.Start(settings: [new("Training:Verify:ChecksPerMinute", "10000")]);
    private readonly string saved = Path.Combine(Directory.CreateTempSubdirectory("training-log-").FullName, "head.json");

    public void Dispose()
    {
        site.Dispose();
        Directory.Delete(Path.GetDirectoryName(saved)!, recursive: true); // not null: it lies in a folder
    }

    private Task SignHeadAsync() => site.Services.GetRequiredService<TreeHeadJob>().RunAsync(CancellationToken.None);

    private Task<(int Code, string Said)> WatchAsync(string serial = "") =>
        Script.RunAsync("node", [Repository.Path("docs/watch-log.mjs"), site.Client.BaseAddress!.ToString(), saved, serial]); // not null: it runs

    private async Task<JsonElement> ReadAsync(string path) => JsonSerializer.Deserialize<JsonElement>(await site.Client.GetStringAsync(path));

    [Fact]
    public async Task A_stranger_with_a_script_follows_the_log_and_proves_a_paper()
    {
        var first = await site.IssueSignedAsync(Start, End);
        await SignHeadAsync();
        Assert.Equal((0, "1 leaves, signed 2026-11-25T17:44:00.000Z: good.\n"), await WatchAsync());
        for (var more = 0; more < 6; more++) await site.IssueSignedAsync(Start, End);
        site.Clock.Now += TimeSpan.FromMinutes(5);
        await SignHeadAsync();

        var (code, said) = await WatchAsync(first.Serial.ToString());

        Assert.Equal(
            (0, "leaf 0: issued 2026-11-25T17:44:00.000Z, 2026-01-15 to 2027-06-01\n7 leaves, signed 2026-11-25T17:49:00.000Z: good.\n"), (code, said));
    }

    [Fact]
    public async Task A_head_that_we_never_signed_and_a_log_that_was_changed_are_noticed()
    {
        for (var paper = 0; paper < 3; paper++) await site.IssueSignedAsync(Start, End);
        await SignHeadAsync();
        await WatchAsync();
        var head = await File.ReadAllTextAsync(saved);
        var root = JsonSerializer.Deserialize<PublishedHead>(head, JsonSerializerOptions.Web)!.Root;

        await File.WriteAllTextAsync(saved, head.Replace(root, new string('0', 64), StringComparison.Ordinal));
        Assert.Contains("is not signed by a key of this issuer", (await WatchAsync()).Said, StringComparison.Ordinal);
        await File.WriteAllTextAsync(saved, head);
        // Changed with everything that is stored about it, and signed anew: only whoever kept a head notices.
        await site.RecordAsync(records => records.RewriteAsync(index: 1));
        site.Clock.Now += TimeSpan.FromHours(2);
        await SignHeadAsync();

        var (code, said) = await WatchAsync();
        Assert.Equal((1, "The log was changed before leaf 3.\n"), (code, said));
    }

    [Fact]
    public async Task Every_leaf_comes_in_its_order_and_says_no_name()
    {
        for (var paper = 0; paper < 3; paper++) await site.IssueSignedAsync(Start, End);

        var entries = await ReadAsync("/log/entries?from=1&count=5");

        Assert.Equal(1, entries.GetProperty("from").GetInt64());
        var leaves = entries.GetProperty("entries").EnumerateArray().Select(leaf => leaf.GetString()!).ToList();
        Assert.Equal(2, leaves.Count);
        Assert.All(leaves, leaf => Assert.Matches("^01[0-9a-f]{64}$", leaf));
        Assert.Empty((await ReadAsync("/log/entries?from=3")).GetProperty("entries").EnumerateArray());
    }

    [Fact]
    public async Task A_suspension_that_is_over_is_not_opened_to_strangers()
    {
        var paper = await site.IssueSignedAsync(Start, End);
        var (lead, other) = (await site.AppointedAsync(AppointedRole.ProgrammeLead), await site.AppointedAsync(AppointedRole.ProgrammeLead, "Theodora Vance"));
        await site.RecordAsync(records => records.SuspendAsync(
            Guid.CreateVersion7(), paper.PersonId, "handler", new(new(2026, 11, 1), lead, "Looked at.", new(2026, 12, 1), null), RunningSite.Now, CancellationToken.None));
        await SignHeadAsync();

        Assert.Equal(["issued", "suspended"], await EventsAsync(paper.Serial));
        await site.RecordAsync(records => records.ReinstateAsync(
            paper.PersonId, "handler", new(new(2026, 11, 10), other, "Nothing found."), RunningSite.Now, CancellationToken.None));
        Assert.Equal(["issued"], await EventsAsync(paper.Serial));
        await site.RecordAsync(records => records.WithdrawAsync(
            Guid.CreateVersion7(), paper.PersonId, "handler", new(new(2026, 11, 20), lead, other, "Somebody else sat."), RunningSite.Now, CancellationToken.None));
        Assert.Equal(["issued", "withdrawn"], await EventsAsync(paper.Serial));
    }

    [Fact]
    public async Task A_leaf_that_no_head_has_yet_is_shown_without_a_proof()
    {
        await SignHeadAsync();
        var paper = await site.IssueSignedAsync(Start, End);

        var leaf = Assert.Single((await ReadAsync($"/log/proofs/{paper.Serial}")).GetProperty("leaves").EnumerateArray());

        Assert.Equal(JsonValueKind.Null, leaf.GetProperty("path").ValueKind);
    }

    [Fact]
    public async Task Before_the_first_head_there_is_none_and_of_an_unknown_serial_nothing()
    {
        Assert.Equal(404, (await site.GetAsync("/log/head")).Status);
        await SignHeadAsync();

        Assert.Equal(404, (await site.GetAsync($"/log/proofs/{Papers.ASerial().Value}")).Status);
        Assert.Equal(404, (await site.GetAsync("/log/proofs/not-a-serial")).Status);
        Assert.Equal(0, (await ReadAsync("/log/head")).GetProperty("size").GetInt64());
    }

    [Fact]
    public async Task Older_heads_are_found_page_by_page()
    {
        for (var head = 0; head < 3; head++)
        {
            await SignHeadAsync();
            site.Clock.Now += TimeSpan.FromHours(1);
        }

        var newest = (await ReadAsync("/log/heads")).GetProperty("heads").EnumerateArray().Select(head => head.GetProperty("timestamp").GetInt64()).ToList();
        var older = (await ReadAsync($"/log/heads?before={newest[1]}")).GetProperty("heads").EnumerateArray().Select(head => head.GetProperty("timestamp").GetInt64());

        Assert.Equal(newest.OrderDescending(), newest);
        Assert.Equal([newest[2]], older);
    }

    [Fact]
    public async Task What_cannot_change_any_more_may_be_kept_and_what_is_about_a_paper_may_not()
    {
        var paper = await site.IssueSignedAsync(Start, End);
        await SignHeadAsync();

        Assert.Equal(TimeSpan.FromDays(1), (await CacheAsync("/log/entries?from=0&count=1")).MaxAge);
        Assert.Equal(TimeSpan.FromMinutes(1), (await CacheAsync("/log/entries?from=0&count=2")).MaxAge);
        Assert.Equal(TimeSpan.FromMinutes(1), (await CacheAsync("/log/head")).MaxAge);
        Assert.True((await CacheAsync($"/log/proofs/{paper.Serial}")).NoStore);
    }

    [Fact]
    public async Task The_page_says_in_plain_words_how_old_the_newest_head_is()
    {
        Assert.Contains("not yet", (await site.GetAsync("/en/log")).Html, StringComparison.Ordinal);
        await site.IssueSignedAsync(Start, End);
        await SignHeadAsync();
        site.Clock.Now += TimeSpan.FromMinutes(12);

        Assert.Contains("25 November 2026, 10:44", (await site.GetAsync("/en/log")).Html, StringComparison.Ordinal);
        Assert.Contains("(12 minutes ago)", (await site.GetAsync("/en/log")).Html, StringComparison.Ordinal);
        Assert.Contains("(hace 12 minutos)", (await site.GetAsync("/es/log")).Html, StringComparison.Ordinal);
        site.Clock.Now += TimeSpan.FromHours(1);
        Assert.Contains("older than we promise", (await site.GetAsync("/en/log")).Html, StringComparison.Ordinal);
    }

    private async Task<IReadOnlyList<string>> EventsAsync(Serial serial)
    {
        var proofs = await ReadAsync($"/log/proofs/{serial}");
        return
        [
            .. proofs.GetProperty("leaves").EnumerateArray().Select(leaf => Convert.FromHexString(leaf.GetProperty("opening").GetString()!))
                .Select(opening => System.Text.Encoding.UTF8.GetString(opening)).Select(text => LogEvents.Single(name => text.Contains(name, StringComparison.Ordinal))),
        ];
    }

    private static readonly string[] LogEvents = ["issued", "superseded", "suspended", "reinstated", "withdrawn"];

    private async Task<System.Net.Http.Headers.CacheControlHeaderValue> CacheAsync(string path)
    {
        using var answer = await site.Client.GetAsync(path);
        return answer.Headers.CacheControl!;
    }
}
