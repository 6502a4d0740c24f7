using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Health;

public sealed class RecordsHealthCheckTests(SharedSite shared)
{
    [Fact]
    public async Task A_site_that_can_serve_is_healthy() => Assert.Equal((200, "Healthy"), await shared.Site.GetAsync("/healthz"));

    [Fact]
    public async Task A_database_that_cannot_answer_makes_it_unhealthy_and_courses_still_serve()
    {
        using var site = RunningSite.Start();
        await site.RecordAsync(records => Tables.DropAsync(records, "Papers"));

        Assert.Equal((503, "Unhealthy"), await site.GetAsync("/healthz"));
        Assert.Equal(200, (await site.GetAsync("/en/courses/awareness")).Status);
    }
}
