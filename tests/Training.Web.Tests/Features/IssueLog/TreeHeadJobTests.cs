using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Training.Records;
using Training.Web.Features.IssueLog;
using Training.Web.Keys;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.IssueLog;

public sealed class TreeHeadJobTests : IDisposable
{
    private static readonly DateOnly Start = new(2026, 1, 15);
    private static readonly DateOnly End = new(2027, 6, 1);

    private readonly RunningSite site = RunningSite.Start();

    public void Dispose() => site.Dispose();

    private async Task<IReadOnlyList<TreeHeadRecord>> RunAsync(TimeSpan later = default)
    {
        site.Clock.Now += later;
        await site.Services.GetRequiredService<TreeHeadJob>().RunAsync(CancellationToken.None);
        IReadOnlyList<TreeHeadRecord> heads = [];
        await site.RecordAsync(async records => heads = await records.AllHeads().ToListAsync());
        return heads;
    }

    [Fact]
    public async Task The_first_round_signs_with_the_issuers_key_even_an_empty_log()
    {
        var head = Assert.Single(await RunAsync());

        var key = site.Services.GetRequiredService<IssuerKeys>().Credentials.Public;
        Assert.Equal((0, key.Kid), (head.Size, head.KeyId));
        Assert.True(head.Read().IsSignedBy(key));
    }

    [Fact]
    public async Task Without_news_a_head_is_signed_once_an_hour_and_with_news_at_the_next_look()
    {
        await RunAsync();

        Assert.Single(await RunAsync(TimeSpan.FromMinutes(55)));
        Assert.Equal(2, (await RunAsync(TimeSpan.FromMinutes(5))).Count);
        await site.IssueSignedAsync(Start, End);
        Assert.Equal([0, 0, 1], (await RunAsync(TimeSpan.FromMinutes(5))).Select(head => head.Size));
        Assert.Equal(3, (await RunAsync()).Count);
    }

    [Fact]
    public async Task A_log_that_lost_its_end_is_not_signed_and_somebody_is_told()
    {
        for (var paper = 0; paper < 3; paper++) await site.IssueSignedAsync(Start, End);
        await RunAsync();
        await site.RecordAsync(records => records.TakeOutAsync(index: 2));

        Assert.Single(await RunAsync(TimeSpan.FromHours(3)));
        Assert.Contains(site.Log.Lines, line => line.Event == "LogWasCut" && line.Line.Contains("has 2 leaves, fewer than the 3", StringComparison.Ordinal));
    }
}
