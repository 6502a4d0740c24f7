using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Scoresheets;

/// <summary>A scoresheet as it was signed, to print.</summary>
public sealed class ScoresheetPapersControllerTests(SharedSite shared)
{
    private async Task<(ClassRoom Room, PlainBrowser Browser, string Sheet)> SignedAsync(string? letters = null, string candidate = "Ileana Prado-Whitt")
    {
        var room = await ClassRoom.OpenAsync(shared.Site, candidate);
        var browser = await room.SignInAsync();
        return (room, browser, await room.ScoreAsync(browser, letters ?? new('d', room.Checklist.Steps.Count)));
    }

    [Fact]
    public async Task It_says_who_was_seen_doing_what_and_what_it_came_to()
    {
        var (room, browser, sheet) = await SignedAsync();
        using var _ = browser;
        await browser.PostAsync($"{sheet}/candidate-word", new() { ["Id"] = $"{Guid.CreateVersion7()}", ["Word"] = "Agreed", ["CandidateName"] = "Ileana Prado-Whitt" }, sheet);

        var text = Pdf.Read(await browser.GetAsync($"{sheet}/signed.pdf"), "scoresheet-2026-11-25.pdf");

        var (words, points) = (room.Checklist.Words[Language.English], 2 * room.Checklist.Steps.Count);
        var hash = "";
        await shared.Site.RecordAsync(async records =>
        {
            var id = ClassRoom.IdOf(sheet);
            hash = await records.Scoresheets.Where(row => row.FormId == id).Select(row => row.ContentHash).SingleAsync();
        });
        Assert.All(
            [
                $"Passed with {points} of {points} points.", "Candidate Ileana Prado-Whitt", $"Practical {words.Title}, on the model, try 1", "Scored by Winifred Oakley",
                "Rim Line East", "Dry gravel, low sun", "Air 24 °C", "25 November 2026, 10:44 (UTC-07:00)", "Signed: Winifred Oakley", "Agrees with what was written.",
                $"Record {ClassRoom.IdOf(sheet)}", hash[..20],
            ],
            fact => Assert.Contains(fact, text, StringComparison.Ordinal));
        Assert.All(words.StepText.Values, step => Assert.Contains(step, text, StringComparison.Ordinal));
        Assert.DoesNotContain("<", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_stopped_it_stands_on_it_in_the_language_of_the_page()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var critical = room.Checklist.Steps.Index().First(step => step.Item.IsCritical).Index;
        var sheet = await room.ScoreAsync(browser, new string('d', critical) + "n");

        var english = Pdf.Text((await browser.GetAsync($"{sheet}/signed.pdf")).Bytes);
        var spanish = Pdf.Text((await browser.GetAsync($"{sheet.Replace("/en/", "/es/", StringComparison.Ordinal)}/signed.pdf")).Bytes);

        Assert.Contains($"Not passed: stopped at step {critical + 1}.", english, StringComparison.Ordinal);
        Assert.Contains($"No aprobado: alto en el paso {critical + 1}.", spanish, StringComparison.Ordinal);
        Assert.All(room.Checklist.Words[Language.Spanish].StepText.Values, step => Assert.Contains(step, spanish, StringComparison.Ordinal));
    }

    [Fact]
    public async Task It_is_offered_beside_each_sheet_that_was_signed()
    {
        var (room, browser, sheet) = await SignedAsync();
        using var _ = browser;
        using var lead = await shared.Site.SignInAsync(await shared.Site.AppointedAsync(AppointedRole.ProgrammeLead));

        Assert.Contains($"href=\"{sheet}/signed.pdf\"", (await browser.GetAsync(sheet)).Html, StringComparison.Ordinal);
        Assert.Contains($"href=\"{sheet}/signed.pdf\"", (await browser.GetAsync("/en/sent-scoresheets")).Html, StringComparison.Ordinal);
        Assert.Contains(
            $"href=\"/en/programme/scoresheets/{ClassRoom.IdOf(sheet)}/signed.pdf\"", (await lead.GetAsync($"/en/programme/people/{room.CandidateId}")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_is_for_who_scored_and_for_leads()
    {
        var (room, browser, sheet) = await SignedAsync();
        using var _ = browser;
        var id = ClassRoom.IdOf(sheet);
        using var other = await (await ClassRoom.OpenAsync(shared.Site)).SignInAsync();
        using var candidate = await shared.Site.SignInAsync(room.CandidateId);
        using var lead = await shared.Site.SignInAsync(await shared.Site.AppointedAsync(AppointedRole.ProgrammeLead));

        Assert.Contains("Winifred Oakley", Pdf.Text((await lead.GetAsync($"/en/programme/scoresheets/{id}/signed.pdf")).Bytes), StringComparison.Ordinal);
        foreach (var stranger in new[] { other, candidate })
        {
            Assert.Equal(404, (await stranger.GetAsync($"{sheet}/signed.pdf")).Status);
            Assert.Equal(404, (await stranger.GetAsync($"/en/programme/scoresheets/{id}/signed.pdf")).Status);
        }
    }

    [Fact]
    public async Task What_is_not_signed_is_no_paper()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);

        Assert.Equal(404, (await browser.GetAsync($"{sheet}/signed.pdf")).Status);
    }

    [Fact]
    public async Task A_name_that_cannot_be_printed_is_told_with_its_field()
    {
        var (_, browser, sheet) = await SignedAsync(candidate: "Rey 🐍 Salazar");
        using var _ = browser;

        var answer = await browser.GetAsync($"{sheet}/signed.pdf");

        Assert.Equal(422, answer.Status);
        Assert.Contains("candidate-name", answer.Html, StringComparison.Ordinal);
        Assert.Contains("The faces have no glyph for 🐍.", answer.Html, StringComparison.Ordinal);
    }
}
