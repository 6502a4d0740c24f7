using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Calibrations;

/// <summary>All instructors score the same recording; nobody sees another's marks before the round is closed.</summary>
public sealed class CalibrationsControllerTests : IDisposable
{
    private readonly RunningSite site = RunningSite.Start();

    public void Dispose() => site.Dispose();

    private Checklist Checklist => site.Shelf.Find("handler")!.Checklists.Single(checklist => checklist.Id == "move-to-bucket");

    [Fact]
    public async Task A_round_is_opened_marked_by_each_alone_closed_and_then_shown()
    {
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));
        using var oakley = await site.SignInAsync(await site.AppointedAsync(AppointedRole.Instructor, "Winifred Oakley"));
        using var soto = await site.SignInAsync(await site.AppointedAsync(AppointedRole.Instructor, "Néstor Güereña Soto"));
        var round = await OpenAsync(lead);

        Assert.Contains("Rounds that wait for your marks: 1.", (await oakley.GetAsync("/en/calibrations")).Html, StringComparison.Ordinal);
        Assert.Equal(303, (await MarkAsync(oakley, round, "Done")).Status);
        Assert.Equal(303, (await MarkAsync(soto, round, "NotDone")).Status);

        // While it is open neither the colleague nor the lead learns a mark.
        var open = (await oakley.GetAsync($"/en/calibrations/{round}")).Html;
        Assert.Contains("your marks are kept", open, StringComparison.Ordinal);
        Assert.DoesNotContain("not done", open, StringComparison.Ordinal);
        var leads = (await lead.GetAsync($"/en/programme/calibrations/{round}")).Html;
        Assert.Contains("2 instructors sent their marks", leads, StringComparison.Ordinal);
        Assert.DoesNotContain("not done", leads, StringComparison.Ordinal);

        Assert.Equal(303, (await lead.PostAsync($"/en/programme/calibrations/{round}/closing", [], page: $"/en/programme/calibrations/{round}")).Status);

        Assert.Contains("1 not done", (await oakley.GetAsync($"/en/calibrations/{round}")).Html, StringComparison.Ordinal);
        var critical = Checklist.Steps.Count(step => step.IsCritical);
        Assert.Contains($"opinions split on {critical} critical steps", (await lead.GetAsync($"/en/programme/calibrations/{round}")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_first_marks_stand()
    {
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));
        using var instructor = await site.SignInAsync(await site.AppointedAsync(AppointedRole.Instructor));
        var (round, id) = (await OpenAsync(lead), Guid.CreateVersion7());

        Assert.Equal(303, (await MarkAsync(instructor, round, "Done", id)).Status);
        Assert.Equal(303, (await MarkAsync(instructor, round, "Done", id)).Status);
        var second = await MarkAsync(instructor, round, "NotDone");

        Assert.Equal(422, second.Status);
        Assert.Contains("The first ones stand.", second.Html, StringComparison.Ordinal);
        await site.RecordAsync(async records => Assert.Single(await records.CalibrationSheets.Where(sheet => sheet.RoundId == round).ToListAsync()));
    }

    [Fact]
    public async Task A_step_without_a_mark_is_named_and_the_others_are_kept_in_the_form()
    {
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));
        using var instructor = await site.SignInAsync(await site.AppointedAsync(AppointedRole.Instructor));
        var round = await OpenAsync(lead);

        var refused = await MarkAsync(instructor, round, "Done", but: Checklist.Steps[2].Id);

        Assert.Equal(422, refused.Status);
        Assert.Contains($"id=\"{Checklist.Steps[2].Id}-mend\"", refused.Html, StringComparison.Ordinal);
        Assert.Equal(Checklist.Steps.Count - 1, refused.Html.Split("checked=\"checked\"").Length - 1);
    }

    [Fact]
    public async Task A_closed_round_takes_no_marks()
    {
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));
        using var instructor = await site.SignInAsync(await site.AppointedAsync(AppointedRole.Instructor));
        var round = await OpenAsync(lead);
        await lead.PostAsync($"/en/programme/calibrations/{round}/closing", [], page: $"/en/programme/calibrations/{round}");

        var late = await MarkAsync(instructor, round, "Done");

        Assert.Equal(422, late.Status);
        Assert.Contains("this round was closed without your marks", late.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_round_needs_a_name_and_a_place_of_the_recording()
    {
        using var lead = await site.SignInAsync(await site.AppointedAsync(AppointedRole.ProgrammeLead));

        var refused = await lead.PostAsync(
            "/en/programme/calibrations", new() { ["Id"] = Guid.CreateVersion7().ToString(), ["ChecklistId"] = "move-to-bucket" }, page: "/en/programme/calibrations");

        Assert.Equal(422, refused.Status);
        Assert.Contains("Give it a name.", refused.Html, StringComparison.Ordinal);
        Assert.Contains("Say where it is found.", refused.Html, StringComparison.Ordinal);
    }

    private static async Task<Guid> OpenAsync(PlainBrowser lead)
    {
        var id = Guid.CreateVersion7();
        var opened = await lead.PostAsync(
            "/en/programme/calibrations",
            new() { ["Id"] = id.ToString(), ["ChecklistId"] = "move-to-bucket", ["Title"] = "Lid slips once", ["Recording"] = "Shelf 2, card 1" },
            page: "/en/programme/calibrations");
        Assert.Equal((303, $"/en/programme/calibrations/{id}"), (opened.Status, opened.Location));
        return id;
    }

    private Task<Reply> MarkAsync(PlainBrowser instructor, Guid round, string mark, Guid? id = null, string? but = null)
    {
        var fields = new Dictionary<string, string> { ["Id"] = (id ?? Guid.CreateVersion7()).ToString() };
        foreach (var step in Checklist.Steps.Where(step => step.Id != but)) fields[$"Marks[{step.Id}]"] = mark;
        return instructor.PostAsync($"/en/calibrations/{round}/marks", fields, page: "/en/calibrations");
    }
}
