using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Kit;

public sealed class KitControllerTests(SharedSite shared)
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static string Label() => $"K-{Guid.CreateVersion7().ToString()[^8..]}";

    private static async Task<string> RegisterAsync(PlainBrowser browser, string label, Guid? id = null)
    {
        var answer = await browser.PostAsync(
            "/en/kit", new() { ["Id"] = (id ?? Guid.CreateVersion7()).ToString(), ["Label"] = label, ["Kind"] = "Tongs" }, "/en/kit");
        Assert.Equal(303, answer.Status);
        return answer.Location!; // not null: asserted
    }

    private static Task<Reply> InspectAsync(PlainBrowser browser, string piece, Dictionary<string, string> typed) => browser.PostAsync(
        $"{piece}/inspections", new(typed) { ["Id"] = typed.GetValueOrDefault("Id") ?? Guid.CreateVersion7().ToString() }, piece);

    [Fact]
    public async Task A_new_piece_is_not_to_be_used_until_it_was_found_fit()
    {
        using var browser = await shared.Site.SignInAsync(await shared.Site.AppointedAsync(AppointedRole.Instructor, "Winifred Oakley"));
        var label = Label();
        var piece = await RegisterAsync(browser, label);
        Assert.Contains("Not inspected yet.", (await browser.GetAsync(piece)).Html, StringComparison.Ordinal);

        var answer = await InspectAsync(browser, piece, new() { ["InspectedOn"] = "2026-11-24", ["Finding"] = "fit", ["NextDueOn"] = "2027-05-24" });

        Assert.Equal((303, piece), (answer.Status, answer.Location));
        var html = (await browser.GetAsync(piece)).Html;
        Assert.Contains("Found fit. The inspection holds through 24 May 2027.", html, StringComparison.Ordinal);
        Assert.Contains("24 November 2026: fit, holds through 24 May 2027.", html, StringComparison.Ordinal);
        Assert.Contains("By Winifred Oakley.", html, StringComparison.Ordinal);
        Assert.Contains(label, (await browser.GetAsync("/es/kit")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_cannot_be_used_stands_above_what_is_due_later()
    {
        using var browser = await shared.Site.SignInAsync(await shared.Site.AppointedAsync(AppointedRole.ProgrammeLead, "Odalys Ferrante"));
        var (late, soon, bent) = (Label(), Label(), Label());
        await InspectAsync(browser, await RegisterAsync(browser, late), new() { ["InspectedOn"] = "2026-11-01", ["Finding"] = "fit", ["NextDueOn"] = "2027-11-01" });
        await InspectAsync(browser, await RegisterAsync(browser, soon), new() { ["InspectedOn"] = "2026-11-01", ["Finding"] = "fit", ["NextDueOn"] = "2026-11-25" });
        await InspectAsync(browser, await RegisterAsync(browser, bent), new() { ["InspectedOn"] = "2026-11-01", ["Finding"] = "unfit", ["Reason"] = "Jaw bent." });

        var html = (await browser.GetAsync("/en/kit")).Html;

        int Place(string label) => html.IndexOf(label, StringComparison.Ordinal);
        Assert.True(Place(bent) < Place(soon) && Place(soon) < Place(late), $"{Place(bent)} {Place(soon)} {Place(late)}");
        Assert.Contains("must not be used until", html, StringComparison.Ordinal);
        Assert.Contains("Found not fit on 1 November 2026: Jaw bent.", html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-11-26", "fit", "2027-05-24", "", "and today is 25 November 2026")]
    [InlineData("soon", "fit", "2027-05-24", "", "The day of the inspection is missing")]
    [InlineData("2026-11-24", "", "2027-05-24", "", "It is not said whether the piece is fit.")]
    [InlineData("2026-11-24", "fit", "", "", "It is not said how long the inspection holds.")]
    [InlineData("2026-11-24", "fit", "2026-11-24", "", "which is no later day")]
    [InlineData("2026-11-24", "unfit", "", " ", "No reason is written.")]
    public async Task An_inspection_that_says_too_little_comes_back_with_what_was_typed(string on, string finding, string due, string reason, string told)
    {
        using var browser = await shared.Site.SignInAsync(await shared.Site.AppointedAsync(AppointedRole.Instructor, "Winifred Oakley"));
        var piece = await RegisterAsync(browser, Label());

        var answer = await InspectAsync(browser, piece, new() { ["InspectedOn"] = on, ["Finding"] = finding, ["NextDueOn"] = due, ["Reason"] = reason });

        Assert.Equal((422, true, true), (
            answer.Status, answer.Html.Contains(told, StringComparison.Ordinal), answer.Html.Contains($"value=\"{on}\"", StringComparison.Ordinal)));
        Assert.Contains("Not inspected yet.", (await browser.GetAsync(piece)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_post_twice_is_one_row_and_a_label_is_given_once()
    {
        using var browser = await shared.Site.SignInAsync(await shared.Site.AppointedAsync(AppointedRole.Instructor, "Winifred Oakley"));
        var (label, id, inspection) = (Label(), Guid.CreateVersion7(), Guid.CreateVersion7());
        var piece = await RegisterAsync(browser, label, id);
        Assert.Equal(piece, await RegisterAsync(browser, label, id));
        for (var again = 0; again < 2; again++)
        {
            Assert.Equal(303, (await InspectAsync(browser, piece, new()
            {
                ["Id"] = inspection.ToString(), ["InspectedOn"] = "2026-11-24", ["Finding"] = "fit", ["NextDueOn"] = "2027-05-24",
            })).Status);
        }

        var taken = await browser.PostAsync(
            "/en/kit", new() { ["Id"] = Guid.CreateVersion7().ToString(), ["Label"] = label.ToLowerInvariant(), ["Kind"] = "Hook" }, "/en/kit");
        Assert.Equal((422, true), (taken.Status, taken.Html.Contains("Another piece of kit has the label", StringComparison.Ordinal)));
        await shared.Site.RecordAsync(async records => Assert.Equal(1, await records.KitInspections.CountAsync(row => row.PieceId == id, Cancel)));
    }

    [Fact]
    public async Task A_piece_out_of_use_says_why_and_takes_no_inspection()
    {
        using var browser = await shared.Site.SignInAsync(await shared.Site.AppointedAsync(AppointedRole.Instructor, "Winifred Oakley"));
        var piece = await RegisterAsync(browser, Label());

        Assert.Equal(422, (await browser.PostAsync($"{piece}/retirement", new() { ["Why"] = " " }, piece)).Status);
        Assert.Equal(303, (await browser.PostAsync($"{piece}/retirement", new() { ["Why"] = "The handle is cracked." }, piece)).Status);
        await browser.PostAsync($"{piece}/retirement", new() { ["Why"] = "Lost." }, "/en/kit");
        var refused = await browser.PostAsync(
            $"{piece}/inspections", new() { ["Id"] = Guid.CreateVersion7().ToString(), ["InspectedOn"] = "2026-11-24", ["Finding"] = "fit", ["NextDueOn"] = "2027-05-24" }, "/en/kit");

        Assert.Equal((422, true), (refused.Status, refused.Html.Contains("is out of use since 25 November 2026.", StringComparison.Ordinal)));
        var html = (await browser.GetAsync(piece)).Html;
        Assert.Contains("Out of use since 25 November 2026: The handle is cracked.", html, StringComparison.Ordinal);
        Assert.DoesNotContain("/inspections\"", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_worker_sees_no_register()
    {
        using var browser = await shared.Site.SignInAsync(await shared.Site.PersonAsync("Ileana Prado-Whitt"));

        Assert.NotEqual(200, (await browser.GetAsync("/en/kit")).Status);
    }
}
