using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Training.Courses;
using Training.Records;
using Training.Web.Features.PaperRuns;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.PaperRuns;

/// <summary>A lead asks for many papers; the job makes each once, whatever happens to the server in between.</summary>
public sealed class PaperRunsTests : IAsyncLifetime
{
    private static readonly DateOnly Start = new(2026, 6, 1);

    private readonly RunningSite site = RunningSite.Start();
    private PlainBrowser lead = null!; // set before each test
    private Guid leadId;

    public async ValueTask InitializeAsync()
    {
        leadId = (await ProgrammeCast.CreateAsync(site)).Lead;
        lead = await site.SignInAsync(leadId);
    }

    public ValueTask DisposeAsync()
    {
        lead.Dispose();
        site.Dispose();
        return ValueTask.CompletedTask;
    }

    private static Dictionary<string, string> Fields(string kind, string reason = "Our address changed.", Guid? id = null) =>
        new(StringComparer.Ordinal) { ["Id"] = $"{id ?? Guid.CreateVersion7()}", ["Kind"] = kind, ["EmployerId"] = "", ["SchemeId"] = "awareness", ["Reason"] = reason };

    private Task WorkAsync() => site.Services.GetRequiredService<PaperRunJob>().RunAsync(CancellationToken.None);

    private async Task<int> CountAsync()
    {
        var count = 0;
        await site.RecordAsync(async records => count = await records.Papers.CountAsync());
        return count;
    }

    [Fact]
    public async Task New_revisions_are_made_once_and_take_the_place_of_the_old_ones()
    {
        var (serial, _, _) = await site.IssueAsync("awareness", Start, new(2028, 6, 1), "Ileana Prado-Whitt");
        await site.IssueAsync("awareness", Start, new(2028, 6, 1), "Tomas Okafor");

        var started = await lead.PostAsync("/en/programme/paper-runs", Fields("Anew"));
        Assert.Equal(303, started.Status);
        Assert.Contains("0 of 2 papers are made so far.", (await lead.GetAsync(started.Location!)).Html, StringComparison.Ordinal); // not null: 303
        await WorkAsync();
        await WorkAsync();

        Assert.Equal(4, await CountAsync());
        var page = (await lead.GetAsync(started.Location!)).Html; // not null: 303
        Assert.Contains("All 2 papers are made.", page, StringComparison.Ordinal);
        Assert.StartsWith("%PDF-", System.Text.Encoding.ASCII.GetString((await lead.GetAsync($"{started.Location}/volumes/1/es")).Bytes), StringComparison.Ordinal);
        Assert.Equal(404, (await lead.GetAsync($"{started.Location}/volumes/2/es")).Status);
        Assert.Contains("a newer one has replaced it", (await lead.GetAsync($"/en/verify/{serial.Value}")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_volume_is_also_printed_as_pocket_cards_of_those_papers_that_are_current()
    {
        await site.IssueAsync("awareness", Start, new(2028, 6, 1), "Ileana Prado-Whitt");
        await site.IssueAsync("awareness", Start, new(2028, 6, 1), "Tomas Okafor");
        await site.IssueAsync("awareness", Start, new(2026, 12, 1), "Anselm Pike");
        var started = await lead.PostAsync("/en/programme/paper-runs", Fields("Anew"));
        await WorkAsync();
        site.Clock.Now = new(2026, 12, 2, 18, 0, 0, TimeSpan.Zero);
        using var later = await site.SignInAsync(leadId);

        var cards = await later.GetAsync($"{started.Location}/volumes/1/en/cards.pdf");
        var text = Pdf.Read(cards, "cards-1-en.pdf");

        Assert.Contains($"href=\"{started.Location}/volumes/1/es/cards.pdf\"", (await later.GetAsync(started.Location!)).Html, StringComparison.Ordinal); // not null: 303
        Assert.All(["Ileana Prado-Whitt", "Tomas Okafor", "Revision 2", "2 December 2026"], fact => Assert.Contains(fact, text, StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("Anselm Pike", text, StringComparison.Ordinal);
        Assert.Equal(2, Pdf.Pages(cards.Bytes));
        Assert.Equal(404, (await later.GetAsync($"{started.Location}/volumes/2/en/cards.pdf")).Status);
    }

    [Fact]
    public async Task Where_no_paper_of_a_volume_is_current_it_is_told_what_to_do()
    {
        await site.IssueAsync("awareness", Start, new(2026, 12, 1), "Anselm Pike");
        var started = await lead.PostAsync("/en/programme/paper-runs", Fields("Anew"));
        await WorkAsync();
        site.Clock.Now = new(2026, 12, 2, 18, 0, 0, TimeSpan.Zero);
        using var later = await site.SignInAsync(leadId);

        var answer = await later.GetAsync($"{started.Location}/volumes/1/en/cards.pdf");

        Assert.Equal(422, answer.Status);
        Assert.Contains("None of these papers is current today, so there is no card to print.", answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_card_that_cannot_be_printed_is_told_and_the_others_are_printed_without_it()
    {
        var (_, unprintable, _) = await site.IssueAsync("awareness", Start, new(2028, 6, 1));
        await site.IssueAsync("awareness", Start, new(2028, 6, 1), "Tomas Okafor");
        var started = await lead.PostAsync("/en/programme/paper-runs", Fields("Anew"));
        await WorkAsync();
        // In letters that the face has not.
        await site.RecordAsync(records => records.PersonNames.Where(name => name.PersonId == unprintable)
            .ExecuteUpdateAsync(name => name.SetProperty(row => row.Text, "李小龍")));
        var cards = $"{started.Location}/volumes/1/en/cards.pdf";

        var told = await lead.GetAsync(cards);
        Assert.Equal(422, told.Status);
        var named = Assert.Single(Regex.Matches(told.Html, "(?<serial>[0-9A-Z]{12}), worker-name", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)));
        Assert.Contains($"<a href=\"{cards}?others=true\">Print the others (1)</a>", told.Html, StringComparison.Ordinal);

        var text = Pdf.Read(await lead.GetAsync($"{cards}?others=true"), "cards-1-en.pdf");
        Assert.Contains("Tomas Okafor", text, StringComparison.OrdinalIgnoreCase);
        Assert.Single(Regex.Matches(text, "Revision 2", RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1)));
        Assert.DoesNotContain(named.Groups["serial"].Value, text.Replace("-", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_run_is_started_before_the_provider_has_an_address()
    {
        using var early = RunningSite.Start(settings: [new("Training:Provider:Address", "")]);
        using var visitor = await early.SignInAsync((await ProgrammeCast.CreateAsync(early)).Lead);
        await early.IssueAsync("awareness", Start, new(2028, 6, 1));

        var answer = await visitor.PostAsync("/en/programme/paper-runs", Fields("Anew"));

        Assert.Equal(422, answer.Status);
        Assert.Contains("The provider has no address yet, and each paper names it.", answer.Html, StringComparison.Ordinal);
        await early.RecordAsync(async records => Assert.False(await records.PaperRuns.AnyAsync()));
    }

    [Fact]
    public async Task The_same_form_again_is_the_same_run()
    {
        await site.IssueAsync("awareness", Start, new(2028, 6, 1));
        var form = Fields("Anew");

        Assert.Equal((await lead.PostAsync("/en/programme/paper-runs", form)).Location, (await lead.PostAsync("/en/programme/paper-runs", form)).Location);
        await WorkAsync();

        Assert.Equal(2, await CountAsync());
    }

    [Fact]
    public async Task A_name_that_was_erased_is_told_and_the_others_are_made()
    {
        var (_, erased, _) = await site.IssueAsync("awareness", Start, new(2028, 6, 1));
        await site.IssueAsync("awareness", Start, new(2028, 6, 1));
        await site.RecordAsync(records => records.PersonNames.Where(name => name.PersonId == erased)
            .ExecuteUpdateAsync(name => name.SetProperty(row => row.Text, (string?)null)));

        var started = await lead.PostAsync("/en/programme/paper-runs", Fields("Anew"));
        await WorkAsync();

        var page = (await lead.GetAsync(started.Location!)).Html; // not null: 303
        Assert.Contains("1 of 2 papers are made, 1 cannot be made.", page, StringComparison.Ordinal);
        Assert.Equal(3, await CountAsync());
    }

    [Theory]
    [InlineData("", "Our address changed.", "Say which papers.")]
    [InlineData("Anew", "", "Say why.")]
    [InlineData("Missing", "Our address changed.", "There is no such paper to make.")]
    public async Task What_cannot_be_started_says_so_and_keeps_what_was_typed(string kind, string reason, string said)
    {
        var answer = await lead.PostAsync("/en/programme/paper-runs", Fields(kind, reason));

        Assert.Equal(422, answer.Status);
        Assert.Contains(said, answer.Html, StringComparison.Ordinal);
        Assert.Contains(reason, answer.Html, StringComparison.Ordinal);
    }
}
