using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Sittings;

/// <summary>A failed quiz may be tried again as the course says: awareness waits a day, and asks for the whole course after three failures in 30 days.</summary>
public sealed class RetestTests(SharedSite shared)
{
    private const string Quiz = "/en/my/courses/awareness/quiz";

    private static readonly DateOnly Today = new(2026, 11, 25);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private async Task<(Guid Person, PlainBrowser Browser)> FailedAsync(params int[] daysAgo)
    {
        var person = await shared.Site.PersonAsync("Ileana Prado-Whitt");
        var course = shared.Site.Shelf.Find("awareness")!; // not null: shipped
        await shared.Site.RecordAsync(async records =>
        {
            foreach (var ago in daysAgo)
            {
                var at = RunningSite.Now.AddDays(-ago);
                var sitting = new SittingRecord
                {
                    Id = Guid.CreateVersion7(), FormId = Guid.CreateVersion7(), Copy = 1, ContentHash = new string('0', 32) + Guid.CreateVersion7().ToString("N"),
                    PersonId = person, CourseHash = course.Hash, QuizId = course.Quiz.Id, Seed = 1, StartedAt = at, SubmittedAt = at,
                    TakenOn = Today.AddDays(-ago), Zone = "America/Phoenix", KeptAt = at,
                };
                records.Add(sitting);
                records.Add(new SittingResultRecord
                {
                    Id = Guid.CreateVersion7(), SittingId = sitting.Id, Number = 1, CourseHash = course.Hash, IsPassed = false, Points = 3, MaxPoints = 20,
                    Reasons = "{\"version\":1,\"items\":[]}", GradedAt = at,
                });
            }

            await records.SaveChangesAsync();
        });
        return (person, await shared.Site.SignInAsync(person));
    }

    private static Task<Reply> StartAsync(PlainBrowser browser) => browser.PostAsync(
        "/en/my/courses/awareness/sittings", new() { ["sittingId"] = Guid.CreateVersion7().ToString() }, "/en/my");

    [Fact]
    public async Task The_rules_for_another_try_stand_on_the_page_before_the_first()
    {
        var (_, browser) = await FailedAsync();
        using var mine = browser;

        var html = (await browser.GetAsync(Quiz)).Html;

        Assert.Contains("You can take another quiz after 1 day.", html, StringComparison.Ordinal);
        Assert.Contains("If 3 quizzes within 30 days are not passed, the whole course is read again first.", html, StringComparison.Ordinal);
        Assert.Contains("Si no se aprueba", (await browser.GetAsync(Quiz.Replace("/en/", "/es/", StringComparison.Ordinal))).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task On_the_day_of_a_failure_no_quiz_starts_and_the_page_says_from_when()
    {
        var (person, browser) = await FailedAsync(0);
        using var mine = browser;

        var html = (await browser.GetAsync(Quiz)).Html;
        Assert.Contains("You can take another quiz from 26 November 2026 on.", html, StringComparison.Ordinal);
        Assert.DoesNotContain("/sittings\"", html, StringComparison.Ordinal);
        Assert.Equal(Quiz, (await StartAsync(browser)).Location);
        await shared.Site.RecordAsync(async records => Assert.False(await records.StartedSittings.AnyAsync(row => row.PersonId == person, Cancel)));
    }

    [Fact]
    public async Task The_day_after_a_quiz_starts_again()
    {
        var (_, browser) = await FailedAsync(1);
        using var mine = browser;

        Assert.StartsWith("/en/my/sittings/", (await StartAsync(browser)).Location, StringComparison.Ordinal);
    }

    [Fact]
    public async Task After_three_failures_the_whole_course_is_read_again_and_said_so_once()
    {
        var (person, browser) = await FailedAsync(20, 9, 1);
        using var mine = browser;
        Assert.Contains("Read the whole course again before the next quiz.", (await browser.GetAsync(Quiz)).Html, StringComparison.Ordinal);
        Assert.Equal(Quiz, (await StartAsync(browser)).Location);

        var id = Guid.CreateVersion7().ToString();
        for (var again = 0; again < 2; again++)
            Assert.Equal(303, (await browser.PostAsync("/en/my/courses/awareness/rereadings", new() { ["id"] = id }, "/en/my")).Status);

        Assert.StartsWith("/en/my/sittings/", (await StartAsync(browser)).Location, StringComparison.Ordinal);
        await shared.Site.RecordAsync(async records => Assert.Equal(1, await records.CourseRereadings.CountAsync(row => row.PersonId == person, Cancel)));
    }

    [Fact]
    public async Task On_the_day_of_the_third_failure_nobody_says_that_it_was_read_again()
    {
        var (person, browser) = await FailedAsync(9, 1, 0);
        using var mine = browser;

        Assert.DoesNotContain("/rereadings\"", (await browser.GetAsync(Quiz)).Html, StringComparison.Ordinal);
        await browser.PostAsync("/en/my/courses/awareness/rereadings", new() { ["id"] = Guid.CreateVersion7().ToString() }, "/en/my");
        await shared.Site.RecordAsync(async records => Assert.False(await records.CourseRereadings.AnyAsync(row => row.PersonId == person, Cancel)));
    }
}
