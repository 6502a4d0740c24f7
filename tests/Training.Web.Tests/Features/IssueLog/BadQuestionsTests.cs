using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.IssueLog;

public sealed class BadQuestionsTests(SharedSite shared)
{
    [Theory]
    [InlineData("/log/entries?from=-1")]
    [InlineData("/log/entries?from=x")]
    [InlineData("/log/entries?from=0&count=0")]
    [InlineData("/log/entries?from=0&count=1001")]
    [InlineData("/log/entries?from=99999999999999999999")]
    [InlineData("/log/heads?before=-1")]
    [InlineData("/log/heads?before=9223372036854775807")]
    [InlineData("/log/consistency")]
    [InlineData("/log/consistency?from=0&to=1")]
    [InlineData("/log/consistency?from=2&to=1")]
    [InlineData("/log/consistency?from=1&to=1000000")]
    public async Task What_makes_no_sense_is_a_bad_request(string path)
    {
        using var answer = await shared.Site.Client.GetAsync(path);

        Assert.Equal(400, (int)answer.StatusCode);
    }

    [Fact]
    public async Task One_network_reads_300_times_a_minute()
    {
        // Of its own: its counts are nobody else's.
        using var site = RunningSite.Start();
        for (var read = 0; read < 300; read++) Assert.Equal(200, (int)(await site.Client.GetAsync("/log/entries?from=0&count=1")).StatusCode);

        Assert.Equal(429, (int)(await site.Client.GetAsync("/log/entries?from=0&count=1")).StatusCode);
    }
}
