using Training.Certification;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Sanctions;

public sealed class SanctionsControllerTests(SharedSite shared)
{
    private static string Path(Guid person, string what, string scheme = "handler") =>
        $"/en/programme/people/{person}/certifications/{scheme}/{what}";

    private static Dictionary<string, string> Form(string reason, string deadline = "2026-12-09", Guid? id = null) =>
        new() { ["Id"] = (id ?? Guid.CreateVersion7()).ToString(), ["Reason"] = reason, ["Deadline"] = deadline };

    private async Task<HeldCertification> HeldAsync(Guid person)
    {
        IReadOnlyList<HeldCertification> held = [];
        await shared.Site.RecordAsync(async records => held = await records.HeldCertificationsAsync(person, default));
        return held.Single(one => one.SchemeId == "handler");
    }

    private async Task<Guid> ProposalAsync(Guid person)
    {
        IReadOnlyList<OpenProposal> open = [];
        await shared.Site.RecordAsync(async records => open = await records.OpenProposalsAsync(person, default));
        return Assert.Single(open).Id;
    }

    [Fact]
    public async Task A_suspension_is_shown_with_its_deadline_and_ends_by_reinstatement()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.HoldAsync();
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var suspended = await browser.PostAsync(Path(cast.Worker, "suspensions"), Form("Hand inside reach; seen on site."));
        var programme = await browser.GetAsync("/en/programme");
        var person = await browser.GetAsync(suspended.Location!);

        Assert.Equal(303, suspended.Status);
        Assert.Contains("Settle by 9 December 2026", programme.Html, StringComparison.Ordinal);
        Assert.Contains("Íñigo Peña-Ruiz is suspended.", person.Html, StringComparison.Ordinal);
        Assert.Contains("by Odalys Ferrante; to be settled by 9 December 2026.", person.Html, StringComparison.Ordinal);
        Assert.Equal(303, (await browser.PostAsync(Path(cast.Worker, "reinstatements"), Form("Drill repeated and passed."))).Status);
        Assert.Equal("Drill repeated and passed.", Assert.Single((await HeldAsync(cast.Worker)).Suspensions).Reinstatement?.Reason);
    }

    [Fact]
    public async Task The_same_suspension_twice_is_one_and_another_is_refused_while_it_lasts()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.HoldAsync();
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var id = Guid.CreateVersion7();

        var first = await browser.PostAsync(Path(cast.Worker, "suspensions"), Form("Seen on site.", id: id));
        var again = await browser.PostAsync(Path(cast.Worker, "suspensions"), Form("Seen on site.", id: id));
        var other = await browser.PostAsync(Path(cast.Worker, "suspensions"), Form("Again."));
        var otherContent = await browser.PostAsync(Path(cast.Worker, "suspensions"), Form("Other words.", id: id));

        Assert.Equal((303, 303, 422, 409), (first.Status, again.Status, other.Status, otherContent.Status));
        Assert.Contains("There is an open suspension since 25 November 2026.", other.Html, StringComparison.Ordinal);
        Assert.Single((await HeldAsync(cast.Worker)).Suspensions);
    }

    [Fact]
    public async Task Nothing_is_suspended_or_reinstated_that_is_not_held_or_not_suspended()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var suspended = await browser.PostAsync(Path(cast.Worker, "suspensions"), Form("Seen on site."));
        var reinstated = await browser.PostAsync(Path(cast.Worker, "reinstatements"), Form("Settled."));
        var proposed = await browser.PostAsync(Path(cast.Worker, "withdrawal-proposals"), Form("False sheet."));

        Assert.Equal((422, 422, 422), (suspended.Status, reinstated.Status, proposed.Status));
        Assert.Contains("The person holds nothing under", suspended.Html, StringComparison.Ordinal);
        Assert.Contains("There is no open suspension to end.", reinstated.Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-11-24", "That day is over.")]
    [InlineData("", "Choose the day")]
    [InlineData("soon", "Choose the day")]
    public async Task A_deadline_before_today_is_refused_and_what_was_typed_stays(string deadline, string words)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.HoldAsync();
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var answer = await browser.PostAsync(Path(cast.Worker, "suspensions"), Form("Seen <on> site’s edge.", deadline));

        Assert.Equal(422, answer.Status);
        Assert.Contains(words, answer.Html, StringComparison.Ordinal);
        Assert.Contains("Seen <on> site’s edge.", answer.Html, StringComparison.Ordinal);
        Assert.Empty((await HeldAsync(cast.Worker)).Suspensions);
    }

    [Fact]
    public async Task A_reason_is_needed_and_has_a_bound()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.HoldAsync();
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        Assert.Equal(422, (await browser.PostAsync(Path(cast.Worker, "suspensions"), Form(" "))).Status);
        Assert.Equal(422, (await browser.PostAsync(Path(cast.Worker, "withdrawal-proposals"), Form(new('x', Bounds.Reason + 1)))).Status);
        Assert.Equal(303, (await browser.PostAsync(Path(cast.Worker, "withdrawal-proposals"), Form(new('x', Bounds.Reason)))).Status);
    }

    [Fact]
    public async Task A_withdrawal_takes_two_leads()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.HoldAsync();
        using var one = await shared.Site.SignInAsync(cast.Lead);
        using var other = await shared.Site.SignInAsync(cast.OtherLead);
        await one.PostAsync(Path(cast.Worker, "withdrawal-proposals"), Form("False scoresheet."));
        var proposal = await ProposalAsync(cast.Worker);

        var own = await one.PostAsync($"/en/programme/withdrawal-proposals/{proposal}/confirmation", []);
        var list = await other.GetAsync("/en/programme");
        var confirmed = await other.PostAsync($"/en/programme/withdrawal-proposals/{proposal}/confirmation", []);

        Assert.Equal(422, own.Status);
        Assert.Contains("A withdrawal needs two different leads. Have another lead confirm it.", own.Html, StringComparison.Ordinal);
        Assert.Contains("Proposed by Odalys Ferrante", list.Html, StringComparison.Ordinal);
        Assert.Equal(303, confirmed.Status);
        Assert.Equal(
            new Withdrawal(ProgrammeCast.Today, cast.Lead, cast.OtherLead, "False scoresheet."), Assert.Single((await HeldAsync(cast.Worker)).Withdrawals));
    }

    [Fact]
    public async Task Only_the_proposer_takes_a_proposal_back()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.HoldAsync();
        using var one = await shared.Site.SignInAsync(cast.Lead);
        using var other = await shared.Site.SignInAsync(cast.OtherLead);
        await one.PostAsync(Path(cast.Worker, "withdrawal-proposals"), Form("False scoresheet."));
        var path = $"/en/programme/withdrawal-proposals/{await ProposalAsync(cast.Worker)}";

        Assert.Equal(422, (await other.PostAsync($"{path}/retraction", [])).Status);
        Assert.Equal(303, (await one.PostAsync($"{path}/retraction", [])).Status);
        Assert.Equal(422, (await other.PostAsync($"{path}/confirmation", [])).Status);
        Assert.Empty((await HeldAsync(cast.Worker)).Withdrawals);
    }

    [Fact]
    public async Task No_lead_acts_on_what_they_hold_themselves()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.HoldAsync(cast.Lead);
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var page = await browser.GetAsync($"/en/programme/people/{cast.Lead}");
        var answer = await browser.PostAsync(Path(cast.Lead, "suspensions"), Form("Myself."));

        Assert.Contains("Nobody decides about themselves", page.Html, StringComparison.Ordinal);
        Assert.Equal(422, answer.Status);
        Assert.Empty((await HeldAsync(cast.Lead)).Suspensions);
    }

    [Fact]
    public async Task Who_does_not_exist_is_not_found_and_a_form_without_its_token_is_refused()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.HoldAsync();
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        foreach (var what in new[] { "suspensions", "reinstatements", "withdrawal-proposals" })
        {
            Assert.Equal(404, (await browser.PostAsync(Path(Guid.CreateVersion7(), what), Form("x"))).Status);
            Assert.Equal(400, (await browser.PostExactlyAsync(Path(cast.Worker, what), [.. Form("x")])).Status);
        }

        Assert.Equal(404, (await browser.PostAsync($"/en/programme/withdrawal-proposals/{Guid.CreateVersion7()}/confirmation", [])).Status);
        Assert.Equal(404, (await browser.PostAsync($"/en/programme/withdrawal-proposals/{Guid.CreateVersion7()}/retraction", [])).Status);
    }
}
