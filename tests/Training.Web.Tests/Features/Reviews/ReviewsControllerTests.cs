using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Reviews;

/// <summary>Leads read and conclude reviews, enter events; people report what changed for them.</summary>
public sealed class ReviewsControllerTests(SharedSite shared)
{
    private async Task<ReviewRecord> OpenAsync(ProgrammeCast cast, Guid person, int daysAgo = 0)
    {
        var review = ReviewRecord.OfPerson(
            ReviewCause.NearMiss, Guid.CreateVersion7(), person, cast.Site, ProgrammeCast.Today.AddDays(-daysAgo), RunningSite.Now.AddDays(-daysAgo));
        await shared.Site.AddAsync(review.WithHold());
        return review;
    }

    private async Task<List<Hold>> HoldsAsync(Guid person)
    {
        List<Hold> found = [];
        await shared.Site.RecordAsync(async records => found = [.. await records.HoldsOfAsync(person, CancellationToken.None)]);
        return found;
    }

    [Fact]
    public async Task A_lead_finds_open_reviews_concludes_one_and_the_person_reads_what_was_concluded()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        var review = await OpenAsync(cast, cast.Worker, daysAgo: 15);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var page = $"/en/programme/reviews/{review.Id}";
        Assert.Contains(review.Id.ToString(), (await lead.GetAsync("/en/programme/reviews")).Html, StringComparison.Ordinal);
        Assert.Contains("was due by 24 November 2026", (await lead.GetAsync("/en/programme/reviews")).Html, StringComparison.Ordinal);
        Assert.Contains("A review is overdue", (await lead.GetAsync("/en/programme")).Html, StringComparison.Ordinal);

        Assert.Equal(422, (await lead.PostAsync($"{page}/conclusion", new() { ["Words"] = " " }, page)).Status);
        Assert.Equal(303, (await lead.PostAsync($"{page}/conclusion", new() { ["Words"] = "We walked it through; the lid comes first." }, page)).Status);
        Assert.Equal(303, (await lead.PostAsync($"{page}/conclusion", new() { ["Words"] = "We walked it through; the lid comes first." }, page)).Status);
        Assert.Equal(409, (await lead.PostAsync($"{page}/conclusion", new() { ["Words"] = "Something else." }, page)).Status);

        Assert.Equal((ProgrammeCast.Today, cast.Lead), Assert.Single(await HoldsAsync(cast.Worker)).Conclusion is { } end ? (end.On, end.By) : default);
        using var worker = await shared.Site.SignInAsync(cast.Worker);
        Assert.Contains("We walked it through; the lid comes first.", (await worker.GetAsync("/en/my")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lead_does_not_conclude_a_review_of_themselves()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        var review = await OpenAsync(cast, cast.Lead);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var page = $"/en/programme/reviews/{review.Id}";

        Assert.Contains("This review is about you.", (await lead.GetAsync(page)).Html, StringComparison.Ordinal);
        Assert.Equal(409, (await lead.PostAsync($"{page}/conclusion", new() { ["Words"] = "All is well." }, page)).Status);
        Assert.Null(Assert.Single(await HoldsAsync(cast.Lead)).Conclusion);
    }

    [Fact]
    public async Task A_new_tool_holds_the_current_handlers_who_are_not_trained_on_it_and_nobody_else()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        var (trained, visitor) = (await shared.Site.WorkerAsync(cast.Employer, cast.Site, "Rosalind Teague"), await shared.Site.WorkerAsync(cast.Employer, cast.Site, "Bertil Oakes"));
        await cast.HoldAsync();
        await cast.HoldAsync(trained);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var page = $"/en/programme/sites/{cast.Site}/events";
        var html = (await lead.GetAsync(page)).Html;
        Assert.Contains("Rosalind Teague", html, StringComparison.Ordinal);
        Assert.DoesNotContain("Bertil Oakes", html, StringComparison.Ordinal);
        var form = new Dictionary<string, string>
        {
            ["Id"] = Guid.CreateVersion7().ToString(), ["Cause"] = "NewTool", ["Words"] = "Tongs with a wider jaw, from Monday.", ["Trained"] = trained.ToString(),
        };

        Assert.Equal(422, (await lead.PostAsync(page, new(form) { ["Cause"] = "Bite" }, page)).Status);
        Assert.Equal(303, (await lead.PostAsync(page, form, page)).Status);
        Assert.Equal(303, (await lead.PostAsync(page, form, page)).Status);

        Assert.Equal(ReviewCause.NewTool, Assert.Single(await HoldsAsync(cast.Worker)).Cause);
        Assert.Empty(await HoldsAsync(trained));
        Assert.Empty(await HoldsAsync(visitor));
    }

    [Theory]
    [InlineData("NewSite", "true", false)]
    [InlineData("GuidanceChanged", "true", false)]
    [InlineData("Other", "", false)]
    [InlineData("Other", "true", true)]
    public async Task An_event_about_a_person_opens_a_review_and_a_hold_only_where_the_rule_leaves_it_to_the_lead(string cause, string hold, bool holds)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var page = $"/en/programme/people/{cast.Worker}/events";

        Assert.Equal(303, (await lead.PostAsync(page, new()
        {
            ["Id"] = Guid.CreateVersion7().ToString(), ["Cause"] = cause, ["Words"] = "Came over from the coast.", ["Hold"] = hold,
        }, page)).Status);

        Assert.Equal(holds, (await HoldsAsync(cast.Worker)).Count == 1);
        await shared.Site.RecordAsync(async records => Assert.Equal(
            cause, (await records.Reviews.AsNoTracking().SingleAsync(row => row.PersonId == cast.Worker)).Cause.ToString()));
    }

    [Fact]
    public async Task A_new_species_on_the_list_leads_to_who_is_trained_on_it()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var page = $"/en/programme/sites/{cast.Site}/species";
        async Task<string?> NameAsync(params string[] species) => (await lead.PostExactlyAsync(
            page, [await lead.TokenAsync(page), new("Id", Guid.CreateVersion7().ToString()), .. species.Select(id => new KeyValuePair<string, string>("SpeciesIds", id))])).Location;

        Assert.Equal(page, await NameAsync("western-diamondback"));
        Assert.Equal(
            $"/en/programme/sites/{cast.Site}/events?cause=NewSpecies&what=Mohave%20rattlesnake", await NameAsync("western-diamondback", "mohave-rattlesnake"));
        Assert.Equal(page, await NameAsync("western-diamondback"));
    }

    [Fact]
    public async Task Somebody_reports_what_changed_for_them_and_a_lead_closes_it_without_a_hold()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.HoldAsync();
        using var worker = await shared.Site.SignInAsync(cast.Worker);
        var form = new Dictionary<string, string> { ["Id"] = Guid.CreateVersion7().ToString(), ["Matter"] = "Health", ["Words"] = "" };
        Assert.Equal(422, (await worker.PostAsync("/en/my/capability", new(form) { ["Matter"] = "" }, "/en/my/capability")).Status);

        Assert.Equal(303, (await worker.PostAsync("/en/my/capability", form, "/en/my/capability")).Status);
        Assert.Equal(303, (await worker.PostAsync("/en/my/capability", form, "/en/my/capability")).Status);
        Assert.Equal(409, (await worker.PostAsync("/en/my/capability", new(form) { ["Matter"] = "Permit" }, "/en/my/capability")).Status);

        Assert.Contains("Your report is with a lead of the programme.", (await worker.GetAsync("/en/my/capability")).Html, StringComparison.Ordinal);
        Assert.Empty(await HoldsAsync(cast.Worker));
        Guid review = default;
        await shared.Site.RecordAsync(async records =>
        {
            review = (await records.Reviews.AsNoTracking().SingleAsync(row => row.PersonId == cast.Worker)).Id;
            Assert.Equal(Standing.Current, Standings.On(Assert.Single(await records.HeldCertificationsAsync(cast.Worker, CancellationToken.None)), ProgrammeCast.Today));
        });
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var page = $"/en/programme/reviews/{review}";
        Assert.Contains("Medical detail does not belong here.", (await lead.GetAsync(page)).Html, StringComparison.Ordinal);
        Assert.Equal(303, (await lead.PostAsync($"{page}/conclusion", new() { ["Words"] = "Talked; light duty until spring." }, page)).Status);
        Assert.Contains("reviewed on 25 November 2026", (await worker.GetAsync("/en/my/capability")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Somebody_on_hold_is_scored_on_the_model_and_not_with_a_live_snake()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await OpenAsync(cast, room.CandidateId);
        using var instructor = await room.SignInAsync();

        Assert.Contains("no live snake until a lead has reviewed", (await instructor.GetAsync($"/en/class-days/{room.ClassId}")).Html, StringComparison.Ordinal);
        var live = await instructor.PostAsync(room.StartPath, ClassRoom.LiveForm(cast.Lead), room.StartPath);
        Assert.Equal((422, true), (live.Status, live.Html.Contains("The candidate is on hold", StringComparison.Ordinal)));
        Assert.Equal(303, (await instructor.PostAsync(room.StartPath, ClassRoom.Form(), room.StartPath)).Status);
    }
}
