using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Tests.Features.Workforce;
using Training.Web.Tests.House;
using static Training.Web.Tests.Features.Workforce.OwnPeople;

namespace Training.Web.Tests.Features.CrewRosters;

/// <summary>The roster of a site for the wall of its office.</summary>
public sealed class CrewRostersControllerTests(SharedSite shared)
{
    private static readonly DateOnly Long = new(2020, 1, 1);

    private RunningSite Site => shared.Site;

    [Fact]
    public async Task It_says_who_works_at_the_site_and_how_they_stand_there_today()
    {
        var (employer, site) = await Site.EmployerAsync();
        await Site.HandlerAsync(employer, site, "Ileana Prado-Whitt", "2026-12-07");
        await Site.HandlerAsync(employer, site, "Anselm Pike", "2026-11-24");
        await Site.WorkerAsync(employer, site, "Solveig Amaro");
        await Site.WorkerAsync(employer, await OtherSiteAsync(employer), "Desmond Baca");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var text = Pdf.Read(await browser.GetAsync($"/en/employers/{employer}/sites/{site}/roster.pdf"), "roster-2026-11-25.pdf");

        Assert.Contains("Quillback Field Safety", text, StringComparison.Ordinal);
        Assert.Contains($"Roster: Employer {employer:N}, Rim Line East", text, StringComparison.Ordinal);
        Assert.Contains("Current in at least one scheme: 1 of 3", text, StringComparison.Ordinal);
        Assert.Contains("As of 25 November 2026, 10:44 (UTC-07:00)", text, StringComparison.Ordinal);
        Assert.Matches("Ileana Prado-Whitt .* renewal due 7 December 2026", text);
        Assert.Matches("Anselm Pike .* lapsed ended on 24 November 2026", text);
        Assert.Matches("Solveig Amaro .* nothing yet", text);
        Assert.DoesNotContain("Desmond Baca", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_language_of_the_page_is_the_language_of_the_paper()
    {
        var (employer, site) = await Site.EmployerAsync();
        await Site.HandlerAsync(employer, site, "Ileana Prado-Whitt", "2026-12-07");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var text = Pdf.Text((await browser.GetAsync($"/es/employers/{employer}/sites/{site}/roster.pdf")).Bytes);

        Assert.Contains(Site.Shelf.Find("handler")!.Scheme.Words[Language.Spanish].Title, text, StringComparison.Ordinal); // not null: shipped
        Assert.Contains("7 de diciembre de 2026", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_crew_has_a_roster_of_its_own()
    {
        var (employer, site) = await Site.EmployerAsync();
        var north = await CrewAsync(site, "North");
        var theirs = await Site.HandlerAsync(employer, site, "Ileana Prado-Whitt", "2026-12-07");
        await Site.AddAsync(new CrewAssignment { Id = Guid.CreateVersion7(), PersonId = theirs, CrewId = north, StartsOn = Long });
        await Site.HandlerAsync(employer, site, "Anselm Pike", "2027-11-24");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var text = Pdf.Text((await browser.GetAsync($"/en/employers/{employer}/sites/{site}/roster.pdf?crew={north}")).Bytes);

        Assert.Contains($"Crew roster: Employer {employer:N}, Rim Line East, North", text, StringComparison.Ordinal);
        Assert.Contains("Ileana Prado-Whitt", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Anselm Pike", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_hold_stands_on_no_paper()
    {
        var cast = await ProgrammeCast.CreateAsync(Site);
        await cast.HoldAsync();
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(cast.Employer));
        var before = Pdf.Text((await browser.GetAsync($"/en/employers/{cast.Employer}/sites/{cast.Site}/roster.pdf")).Bytes);
        var encounter = new EncounterRecord
        {
            Id = Guid.CreateVersion7(), SiteId = cast.Site, ReporterId = cast.Worker, Kind = EncounterKind.NearMiss, MetOn = ProgrammeCast.Today, MetAt = null, Place = "At the gate",
            Latitude = null, Longitude = null, SpeciesId = null, Done = "", FollowUp = "", CourseId = null, ReportedOn = ProgrammeCast.Today, KeptAt = RunningSite.Now,
            Handling = EncounterHandling.Named, HandlerId = cast.Worker,
        };
        await Site.RecordAsync(async records =>
            Assert.IsType<Kept.Stored>(await records.KeepAsync(encounter, null, new HashSet<string> { "handler" }, CancellationToken.None)));

        var after = Pdf.Text((await browser.GetAsync($"/en/employers/{cast.Employer}/sites/{cast.Site}/roster.pdf")).Bytes);

        Assert.Contains("On hold", (await browser.GetAsync($"/en/employers/{cast.Employer}/crew-lists")).Html, StringComparison.Ordinal);
        Assert.Equal(before, after);
    }

    [Fact]
    public async Task Another_s_site_and_another_site_s_crew_are_not_there()
    {
        var ((employer, site), (other, elsewhere)) = (await Site.EmployerAsync(), await Site.EmployerAsync());
        var crew = await CrewAsync(elsewhere, "North");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        foreach (var path in new[] { $"{other}/sites/{elsewhere}/roster.pdf", $"{employer}/sites/{elsewhere}/roster.pdf", $"{employer}/sites/{site}/roster.pdf?crew={crew}", $"{employer}/sites/{site}/roster.pdf?crew=x" })
            Assert.Equal((path, 404), (path, (await browser.GetAsync($"/en/employers/{path}")).Status));
    }

    [Fact]
    public async Task It_is_offered_where_one_site_is_chosen()
    {
        var (employer, site) = await Site.EmployerAsync();
        var crew = await CrewAsync(site, "North");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));
        var roster = $"/en/employers/{employer}/sites/{site}/roster.pdf";

        var all = (await browser.GetAsync($"/en/employers/{employer}/matrix")).Html;
        var one = (await browser.GetAsync($"/en/employers/{employer}/matrix?site={site}")).Html;

        Assert.DoesNotContain("roster.pdf", all, StringComparison.Ordinal);
        Assert.Contains("choose the site above", all, StringComparison.Ordinal);
        Assert.Contains($"href=\"{roster}\"", one, StringComparison.Ordinal);
        Assert.Contains($"href=\"{roster}?crew={crew}\"", one, StringComparison.Ordinal);
    }

    [Fact]
    public async Task More_people_than_it_takes_are_printed_crew_by_crew()
    {
        var (employer, site) = await Site.EmployerAsync();
        await Site.AddAsync([.. Enumerable.Range(1, 501).SelectMany(_ => Worker(employer, site))]);
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var answer = await browser.GetAsync($"/en/employers/{employer}/sites/{site}/roster.pdf");

        Assert.Equal(422, answer.Status);
        Assert.Contains("501 people work here, and a roster takes 500. Print it crew by crew", answer.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_name_that_cannot_be_printed_is_told_with_its_row()
    {
        var (employer, site) = await Site.EmployerAsync();
        await Site.WorkerAsync(employer, site, "Anselm Pike");
        await Site.WorkerAsync(employer, site, "Rey 🐍 Salazar");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var answer = await browser.GetAsync($"/en/employers/{employer}/sites/{site}/roster.pdf");

        Assert.Equal(422, answer.Status);
        Assert.Contains("name 2 : The faces have no glyph for 🐍.", answer.Text(), StringComparison.Ordinal);
    }

    private static IEnumerable<object> Worker(Guid employer, Guid site)
    {
        var id = Guid.CreateVersion7();
        return
        [
            new Person { Id = id, Language = Language.English },
            new Employment { Id = Guid.CreateVersion7(), PersonId = id, EmployerId = employer, StartsOn = Long },
            new SiteAssignment { Id = Guid.CreateVersion7(), PersonId = id, SiteId = site, StartsOn = Long },
        ];
    }

    private async Task<Guid> OtherSiteAsync(Guid employer)
    {
        var id = Guid.CreateVersion7();
        await Site.AddAsync(new Records.Site { Id = id, EmployerId = employer, Name = "Rim Line West", Zone = "America/Chicago", Region = "US" });
        return id;
    }

    private async Task<Guid> CrewAsync(Guid site, string name)
    {
        var id = Guid.CreateVersion7();
        await Site.AddAsync(new Crew { Id = id, SiteId = site, Name = name });
        return id;
    }
}
