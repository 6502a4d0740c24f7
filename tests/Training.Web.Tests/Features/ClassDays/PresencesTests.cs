using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.ClassDays;

public sealed class PresencesTests(SharedSite shared)
{
    private static Dictionary<string, string> Word(Guid person, bool isAbsent, string reason = "", Guid? id = null) => new()
    {
        ["Id"] = (id ?? Guid.CreateVersion7()).ToString(), ["PersonId"] = person.ToString(), ["IsAbsent"] = isAbsent ? "true" : "false", ["Reason"] = reason,
    };

    [Fact]
    public async Task Who_did_not_come_is_marked_and_was_not_taught()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        await shared.Site.AddAsync(new ClassTeaching { ClassId = room.ClassId, InstructorId = room.InstructorId });
        using var browser = await room.SignInAsync();
        var page = $"/en/class-days/{room.ClassId}";
        var word = Word(room.CandidateId, isAbsent: true, "Truck in the shop.");

        Assert.Equal(303, (await browser.PostAsync($"{page}/presences", word, page)).Status);
        Assert.Equal(303, (await browser.PostAsync($"{page}/presences", word, page)).Status);
        Assert.Equal(409, (await browser.PostAsync($"{page}/presences", new(word) { ["IsAbsent"] = "false" }, page)).Status);
        var absent = (await browser.GetAsync(page)).Html;
        await shared.Site.RecordAsync(async records => Assert.Empty(await records.TeachingsOfAsync(room.CandidateId, default)));
        Assert.Equal(303, (await browser.PostAsync($"{page}/presences", Word(room.CandidateId, isAbsent: false), page)).Status);

        Assert.Contains("Did not come (Truck in the shop.). It counts against nobody.", absent, StringComparison.Ordinal);
        Assert.Contains("<p>Came.</p>", (await browser.GetAsync(page)).Html, StringComparison.Ordinal);
        await shared.Site.RecordAsync(async records => Assert.NotEmpty(await records.TeachingsOfAsync(room.CandidateId, default)));
    }

    [Fact]
    public async Task Who_is_scored_here_stands_here_with_the_result_and_cannot_be_absent()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        await room.ScoreAsync(browser, new string('d', room.Checklist.Steps.Count));
        var page = $"/en/class-days/{room.ClassId}";

        var refused = await browser.PostAsync($"{page}/presences", Word(room.CandidateId, isAbsent: true), page);

        Assert.Equal(422, refused.Status);
        Assert.Contains("on the model, try 1, passed (Winifred Oakley)", refused.Html, StringComparison.Ordinal);
        Assert.DoesNotContain($"action=\"{page}/presences\"", refused.Html, StringComparison.Ordinal);
        using var lead = await shared.Site.SignInAsync(await shared.Site.AppointedAsync(AppointedRole.ProgrammeLead));
        Assert.Contains("on the model, try 1: passed (Winifred Oakley)", (await lead.GetAsync($"/en/programme/classes/{room.ClassId}")).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Somebody_who_comes_without_a_seat_gets_one_while_there_are_any()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        Guid employerId = default, siteId = default;
        await shared.Site.RecordAsync(async records =>
        {
            siteId = await records.Classes.Where(day => day.Id == room.ClassId).Select(day => day.SiteId).SingleAsync();
            employerId = await records.Sites.Where(site => site.Id == siteId).Select(site => site.EmployerId).SingleAsync();
        });
        var worker = await shared.Site.WorkerAsync(employerId, siteId, "Desmond Baca");
        var (otherEmployer, otherSite) = await shared.Site.EmployerAsync();
        var foreign = await shared.Site.WorkerAsync(otherEmployer, otherSite);
        using var browser = await room.SignInAsync();
        var page = $"/en/class-days/{room.ClassId}";
        Dictionary<string, string> Badge(string badge) => new() { ["Id"] = Guid.CreateVersion7().ToString(), ["Badge"] = badge };

        Assert.Equal(422, (await browser.PostAsync($"{page}/arrivals", Badge($"B-{foreign:N}"), page)).Status);
        Assert.Equal(422, (await browser.PostAsync($"{page}/arrivals", Badge(" "), page)).Status);
        Assert.Equal(303, (await browser.PostAsync($"{page}/arrivals", Badge($"b-{worker:N}"), page)).Status);

        await shared.Site.RecordAsync(async records =>
        {
            Assert.True(await records.SeatsHeld().AnyAsync(seat => seat.ClassId == room.ClassId && seat.PersonId == worker));
            Assert.Equal(Presence.Came, (await records.PresencesAsync(room.ClassId, default))[worker].Presence);
        });
    }

    [Fact]
    public async Task Before_its_day_nobody_can_have_come()
    {
        var room = await ClassRoom.OpenAsync(shared.Site, heldOn: ClassRoom.Today.AddDays(1));
        using var browser = await room.SignInAsync();
        var page = $"/en/class-days/{room.ClassId}";

        Assert.DoesNotContain($"action=\"{page}/presences\"", (await browser.GetAsync(page)).Html, StringComparison.Ordinal);
        Assert.Equal(422, (await browser.PostAsync($"{page}/presences", Word(room.CandidateId, isAbsent: false), page)).Status);
        Assert.Equal(422, (await browser.PostAsync($"{page}/arrivals", new() { ["Id"] = Guid.CreateVersion7().ToString(), ["Badge"] = "x" }, page)).Status);
    }

    [Fact]
    public async Task An_instructor_of_another_class_neither_marks_nor_prints()
    {
        var (room, other) = (await ClassRoom.OpenAsync(shared.Site), await ClassRoom.OpenAsync(shared.Site));
        using var browser = await other.SignInAsync();

        Assert.Equal(404, (await browser.PostAsync($"/en/class-days/{room.ClassId}/presences", Word(room.CandidateId, isAbsent: true), "/en/class-days")).Status);
        Assert.Equal(404, (await browser.GetAsync($"/en/class-days/{room.ClassId}/sign-in-sheet")).Status);
    }

    [Theory]
    [InlineData("en", "Sign in here:", "Ileana Prado-Whitt")]
    [InlineData("es", "Firme aquí:", "Ileana Prado-Whitt")]
    public async Task The_sign_in_sheet_says_who_is_expected_and_how_to_enter_it_back(string language, string says, string name)
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();

        var html = (await browser.GetAsync($"/{language}/class-days/{room.ClassId}/sign-in-sheet")).Html;

        Assert.Contains(says, html, StringComparison.Ordinal);
        Assert.Contains(name, html, StringComparison.Ordinal);
        Assert.Contains($"/{language}/class-days/{room.ClassId}", html, StringComparison.Ordinal);
        Assert.Contains(room.ClassId.ToString(), html, StringComparison.Ordinal);
        Assert.Equal(1 + 4, html[html.IndexOf("class=\"signatures\"", StringComparison.Ordinal)..html.IndexOf("id=\"back\"", StringComparison.Ordinal)].Split("<tr><td>").Length - 1);
    }
}
