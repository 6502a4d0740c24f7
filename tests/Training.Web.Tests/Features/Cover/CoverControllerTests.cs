using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Tests.Features.Workforce;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Cover;

/// <summary>"Which site drops below its cover, and when?", on a Wednesday, 25 November 2026.</summary>
public sealed class CoverControllerTests(SharedSite shared)
{
    private RunningSite Site => shared.Site;

    private static Dictionary<string, string> Form(Guid site, string handlers = "2", string from = "2026-01-01", Guid? id = null) => new()
    {
        ["Id"] = (id ?? Guid.CreateVersion7()).ToString(), ["Place"] = site.ToString(), ["SchemeId"] = "handler", ["Handlers"] = handlers, ["StartsOn"] = from,
    };

    [Fact]
    public async Task The_first_line_says_which_site_drops_when_and_who_causes_it()
    {
        var (employer, site) = await Site.EmployerAsync();
        await Site.HandlerAsync(employer, site, "Marisol Munn", "2027-01-13");
        await Site.HandlerAsync(employer, site, "Later One", "2027-06-30");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));
        var path = $"/en/employers/{employer}/cover";
        Assert.Equal("Nobody has said yet how many handlers your sites need.", (await browser.GetAsync(path)).Says());

        var answer = await browser.PostAsync($"{path}/needs", Form(site), path);

        Assert.Equal((303, path), (answer.Status, answer.Location));
        var english = await browser.GetAsync(path);
        Assert.Equal("Rim Line East drops below the 2 handlers it needs on 14 January 2027, when Marisol Munn lapses.", english.Says());
        Assert.Equal(
            "Rim Line East baja de lo que necesita (2 manejadores) el 14 de enero de 2027, cuando vence la certificación de Marisol Munn.",
            (await browser.GetAsync($"/es/employers/{employer}/cover")).Says());
        Assert.Contains("Needs 2 from 1 January 2026. Said by <bdi>Delphine Marrow</bdi>.", english.Html, StringComparison.Ordinal);
        var first = await browser.GetAsync($"/en/employers/{employer}");
        Assert.Contains("drops below the 2 handlers it needs on 14 January 2027", first.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_seat_in_a_class_that_can_renew_prevents_it_and_is_said_to_be_no_pass()
    {
        var (employer, site) = await Site.EmployerAsync();
        var worker = await Site.HandlerAsync(employer, site, "Marisol Munn", "2027-01-13");
        await Site.AddAsync(new CoverNeed
        {
            Id = Guid.CreateVersion7(), SiteId = site, SchemeId = "handler", Handlers = 1, StartsOn = new(2026, 1, 1), SetById = worker, KeptAt = RunningSite.Now,
        });
        var day = new ClassRecord { Id = Guid.CreateVersion7(), SiteId = site, HeldOn = new(2026, 12, 10), CourseId = "handler", Capacity = 4 };
        await Site.AddAsync(day, new ClassAttendance { ClassId = day.Id, PersonId = worker });
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var answer = await browser.GetAsync($"/en/employers/{employer}/cover");

        Assert.Equal(
            "Rim Line East would drop below the one handler it needs on 14 January 2027, when Marisol Munn lapses. The seats in classes prevent it if each of them renews.",
            answer.Says());
        Assert.Contains("A seat is no pass.", answer.Text(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Place", "somewhere", "Choose a site or a crew.")]
    [InlineData("SchemeId", "no-such", "Choose a certification.")]
    [InlineData("Handlers", "-1", "Type a whole number from 0 to 500.")]
    [InlineData("Handlers", "501", "Type a whole number from 0 to 500.")]
    [InlineData("StartsOn", "soon", "Choose the first day.")]
    public async Task A_need_that_cannot_be_read_comes_back_with_what_was_typed(string field, string value, string told)
    {
        var (employer, site) = await Site.EmployerAsync();
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));
        var form = Form(site);
        form[field] = value;

        var answer = await browser.PostAsync($"/en/employers/{employer}/cover/needs", form, $"/en/employers/{employer}/cover");

        Assert.Equal(422, answer.Status);
        Assert.Contains(told, answer.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_form_twice_is_one_row_and_other_content_is_a_conflict()
    {
        var (employer, site) = await Site.EmployerAsync();
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));
        var (path, id) = ($"/en/employers/{employer}/cover/needs", Guid.CreateVersion7());
        var page = $"/en/employers/{employer}/cover";

        Assert.Equal(303, (await browser.PostAsync(path, Form(site, id: id), page)).Status);
        Assert.Equal(303, (await browser.PostAsync(path, Form(site, id: id), page)).Status);
        Assert.Equal(409, (await browser.PostAsync(path, Form(site, handlers: "3", id: id), page)).Status);

        await Site.RecordAsync(async records => Assert.Equal(1, await records.CoverNeeds.CountAsync(need => need.SiteId == site)));
    }
}
