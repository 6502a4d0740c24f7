using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Records;
using Training.Web.Features.Encounters;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Encounters;

/// <summary>A crew reports what it met; help comes first, and what a report opens follows the rules.</summary>
public sealed class EncountersControllerTests(SharedSite shared)
{
    private const string New = "/en/encounters/new";

    private static Dictionary<string, string> Report(ProgrammeCast cast, EncounterKind kind, Guid? id = null, string handler = "") => new()
    {
        ["Id"] = (id ?? Guid.CreateVersion7()).ToString(), ["SiteId"] = cast.Site.ToString(), ["Kind"] = kind.ToString(), ["MetOn"] = "2026-11-24",
        ["MetAt"] = "06:40", ["Place"] = "Turbine 12, north door", ["Handler"] = handler, ["Done"] = "The door stayed shut until it had gone.",
    };

    private async Task<(ProgrammeCast Cast, Guid Colleague)> CrewAsync()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        return (cast, await shared.Site.WorkerAsync(cast.Employer, cast.Site, "Rosalind Teague"));
    }

    private async Task<Reply> SendAsync(Guid reporter, Dictionary<string, string> form)
    {
        using var browser = await shared.Site.SignInAsync(reporter);
        return await browser.PostAsync("/en/encounters", form, New);
    }

    private async Task<List<ReviewRecord>> ReviewsAsync(string eventId)
    {
        var (id, found) = (Guid.Parse(eventId), new List<ReviewRecord>());
        await shared.Site.RecordAsync(async records => found = await records.Reviews.AsNoTracking().Where(row => row.EventId == id).ToListAsync());
        return found;
    }

    private async Task<bool> IsOnHoldAsync(Guid person)
    {
        var isOn = false;
        await shared.Site.RecordAsync(async records => isOn = Holds.IsOn(await records.HoldsOfAsync(person, CancellationToken.None), ProgrammeCast.Today));
        return isOn;
    }

    [Theory]
    [InlineData("en", "Somebody was bitten? Call emergency services now.", "Whom to call from", "A report is never held against")]
    [InlineData("es", "¿Hubo una mordedura? Llame ya a los servicios de emergencia.", "A quién llamar desde", "Un informe nunca se usa contra")]
    public async Task Help_stands_before_the_form_and_the_form_asks_a_bite_for_little(string tag, string call, string whom, string never)
    {
        var (cast, _) = await CrewAsync();
        await shared.Site.AddAsync(new EmergencyNumbers
        {
            Id = Guid.CreateVersion7(), SiteId = cast.Site, EmergencyServices = "911", PoisonControl = "1-800-222-1222", OnSite = "Tower control, channel 2",
            WithoutSignal = "Channel 2", CheckedOn = ProgrammeCast.Today, LeadId = cast.Lead, KeptAt = RunningSite.Now,
        });
        using var browser = await shared.Site.SignInAsync(cast.Worker);

        var html = (await browser.GetAsync($"/{tag}/encounters/new?kind=Bite")).Html;

        int Place(string text) => html.IndexOf(text, StringComparison.Ordinal);
        Assert.All(new[] { call, whom, "Tower control, channel 2", never }, text => Assert.True(Place(text) > 0, text));
        Assert.True(Place(call) < Place("name=\"MetOn\"") && Place("Tower control, channel 2") < Place("name=\"MetOn\""));
        Assert.All(new[] { "SpeciesId", "Coordinates", "FollowUp", "CourseId", "DistanceMetres" }, field => Assert.True(Place($"name=\"{field}\"") < 0, field));
        Assert.Contains("name=\"DistanceMetres\"", (await browser.GetAsync($"/{tag}/encounters/new?kind=Moved")).Html, StringComparison.Ordinal);
        Assert.DoesNotContain("type=\"file\"", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_near_miss_while_a_certified_handler_handled_puts_them_on_hold_and_changes_no_standing()
    {
        var (cast, colleague) = await CrewAsync();
        await cast.HoldAsync();
        var form = Report(cast, EncounterKind.NearMiss, handler: cast.Worker.ToString());

        var answer = await SendAsync(colleague, form);

        Assert.Equal((303, $"/en/encounters/{form["Id"]}"), (answer.Status, answer.Location));

        Assert.Equal([(ReviewCause.NearMiss, (Guid?)cast.Worker)], (await ReviewsAsync(form["Id"])).Select(row => (row.Cause, row.PersonId)));
        Assert.Equal((true, false), (await IsOnHoldAsync(cast.Worker), await IsOnHoldAsync(colleague)));
        using var worker = await shared.Site.SignInAsync(cast.Worker);
        var own = (await worker.GetAsync("/en/my")).Html;
        Assert.Contains("<h1 class=\"says\">Do not handle a snake until a lead has reviewed what happened.</h1>", own, StringComparison.Ordinal);
        Assert.Contains("This is no punishment.", own, StringComparison.Ordinal);
        Assert.DoesNotContain("Rosalind", own, StringComparison.Ordinal);
        await shared.Site.RecordAsync(async records => Assert.Equal(
            Standing.Current, Standings.On(Assert.Single(await records.HeldCertificationsAsync(cast.Worker, CancellationToken.None)), ProgrammeCast.Today)));
    }

    [Fact]
    public async Task The_employer_sees_the_encounter_and_the_hold_and_nobody_by_name_in_the_report()
    {
        var (cast, colleague) = await CrewAsync();
        await cast.HoldAsync();
        await SendAsync(colleague, Report(cast, EncounterKind.NearMiss, handler: cast.Worker.ToString()));
        using var employer = await shared.Site.SignInAsync(await shared.Site.RepresentativeAsync(cast.Employer));

        var list = (await employer.GetAsync($"/en/employers/{cast.Employer}/encounters")).Html;
        var csv = (await employer.GetAsync($"/en/employers/{cast.Employer}/encounters.csv")).Html;

        Assert.Contains("One encounter was reported from 1 December 2025 through 25 November 2026, and it was close", list, StringComparison.Ordinal);
        Assert.Contains("Turbine 12, north door", list, StringComparison.Ordinal);
        Assert.Contains("2026-11-24,06:40,", csv, StringComparison.Ordinal);
        Assert.All(new[] { list, csv }, text => Assert.DoesNotMatch("Rosalind|Peña-Ruiz", text));
        Assert.Contains("On hold: does not handle until reviewed.", (await employer.GetAsync($"/en/employers/{cast.Employer}/people/{cast.Worker}")).Html, StringComparison.Ordinal);
        Assert.Contains("Do not ask these people to move a snake", (await employer.GetAsync($"/en/employers/{cast.Employer}/crew-lists")).Html, StringComparison.Ordinal);
        Assert.Equal(404, (await employer.GetAsync($"/en/employers/{(await CrewAsync()).Cast.Employer}/encounters")).Status);
    }

    [Fact]
    public async Task The_public_check_says_nothing_of_a_hold()
    {
        var (cast, colleague) = await CrewAsync();
        var (serial, _, _) = await cast.HoldAsync();
        var before = (await shared.Site.GetAsync($"/en/verify/{serial.Value}")).Html;

        await SendAsync(colleague, Report(cast, EncounterKind.Bite, handler: cast.Worker.ToString()));

        Assert.True(await IsOnHoldAsync(cast.Worker));
        Assert.Equal(before, (await shared.Site.GetAsync($"/en/verify/{serial.Value}")).Html);
    }

    [Fact]
    public async Task A_bite_of_somebody_who_did_not_handle_opens_a_review_of_the_site_and_holds_nobody()
    {
        var (cast, colleague) = await CrewAsync();
        await cast.HoldAsync();
        var form = Report(cast, EncounterKind.Bite);

        await SendAsync(colleague, form);

        Assert.Equal([(ReviewCause.Bite, (Guid?)null, (Guid?)cast.Site)], (await ReviewsAsync(form["Id"])).Select(row => (row.Cause, row.PersonId, row.SiteId)));
        Assert.False(await IsOnHoldAsync(cast.Worker));
    }

    [Theory]
    [InlineData(true, false)]   // by a current handler: nothing is opened
    [InlineData(false, true)]   // by a colleague without a certification: the cover of the site is looked at
    public async Task Who_moved_a_snake_decides_whether_the_cover_of_the_site_is_looked_at(bool isCertified, bool opens)
    {
        var (cast, colleague) = await CrewAsync();
        await cast.HoldAsync();
        var form = Report(cast, EncounterKind.Moved, handler: (isCertified ? cast.Worker : colleague).ToString());
        form["DistanceMetres"] = "80";

        await SendAsync(cast.Worker, form);

        Assert.Equal(opens ? [(ReviewCause.MovedWithoutHandler, (Guid?)null)] : [], (await ReviewsAsync(form["Id"])).Select(row => (row.Cause, row.PersonId)));
        Assert.Equal((false, false), (await IsOnHoldAsync(cast.Worker), await IsOnHoldAsync(colleague)));
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var html = (await lead.GetAsync($"/en/programme/encounters/{form["Id"]}")).Html;
        Assert.Contains(isCertified ? "on 24 November 2026" : "not who is to blame", html, StringComparison.Ordinal);
        Assert.Contains("<td>80</td>", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_form_twice_is_one_report_and_other_content_is_told()
    {
        var (cast, colleague) = await CrewAsync();
        await cast.HoldAsync();
        var form = Report(cast, EncounterKind.NearMiss, handler: cast.Worker.ToString());

        Assert.Equal(303, (await SendAsync(colleague, form)).Status);
        Assert.Equal(303, (await SendAsync(colleague, form)).Status);
        var other = await SendAsync(colleague, new(form) { ["Place"] = "Turbine 13" });

        Assert.Equal((409, true), (other.Status, other.Html.Contains("value=\"Turbine 13\"", StringComparison.Ordinal)));
        Assert.Single(await ReviewsAsync(form["Id"]));
    }

    [Theory]
    [InlineData("Place", " ", "The place is missing.")]
    [InlineData("MetOn", "", "The day is missing")]
    [InlineData("MetOn", "2026-11-26", "That day lies ahead; today is 25 November 2026 at the site.")]
    [InlineData("MetOn", "2025-11-23", "That is more than 366 days ago.")]
    [InlineData("MetAt", "quarter past", "The time could not be read.")]
    [InlineData("Coordinates", "33.4", "The coordinates could not be read.")]
    [InlineData("Coordinates", "91, 0", "The coordinates could not be read.")]
    [InlineData("Handler", "", "Choose who handled the snake.")]
    [InlineData("Handler", "01990000-0000-7000-8000-00000000ffff", "Choose who handled the snake.")]
    [InlineData("MinutesHeld", "1441", "Write a whole number from 0 to 1440")]
    public async Task What_is_to_be_mended_stands_beside_its_field_with_what_was_typed(string field, string typed, string told)
    {
        var (cast, colleague) = await CrewAsync();
        var answer = await SendAsync(colleague, new(Report(cast, EncounterKind.Moved, handler: cast.Worker.ToString())) { [field] = typed });

        Assert.Equal((422, true, true), (
            answer.Status, answer.Html.Contains(told, StringComparison.Ordinal), answer.Html.Contains("The door stayed shut until it had gone.", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task The_oldest_day_and_the_edges_of_the_numbers_are_kept()
    {
        var (cast, colleague) = await CrewAsync();
        var form = new Dictionary<string, string>(Report(cast, EncounterKind.Moved, handler: EncounterForm.SomebodyElse))
        {
            ["MetOn"] = "2025-11-24", ["Coordinates"] = "33.451234, -112.0731", ["MinutesHeld"] = "1440", ["AirTemperature"] = "-40", ["MetAt"] = "",
        };

        Assert.Equal(303, (await SendAsync(colleague, form)).Status);

        await shared.Site.RecordAsync(async records =>
        {
            var id = Guid.Parse(form["Id"]);
            var kept = await records.Encounters.AsNoTracking().SingleAsync(row => row.Id == id);
            Assert.Equal((33.45123m, -112.0731m, null, EncounterHandling.Other), (kept.Latitude, kept.Longitude, kept.MetAt, kept.Handling));
            var moved = await records.Relocations.AsNoTracking().SingleAsync(row => row.EncounterId == id);
            Assert.Equal((1440, -40, null), (moved.MinutesHeld, moved.AirTemperature, moved.DistanceMetres));
        });
    }

    [Fact]
    public async Task A_report_stays_as_it_was_sent_and_only_its_sender_adds_to_it()
    {
        var (cast, colleague) = await CrewAsync();
        var form = Report(cast, EncounterKind.Sighting);
        await SendAsync(colleague, form);
        var page = $"/en/encounters/{form["Id"]}";
        var words = new Dictionary<string, string> { ["Id"] = Guid.CreateVersion7().ToString(), ["Words"] = "It was turbine 14." };

        using (var sender = await shared.Site.SignInAsync(colleague))
        {
            Assert.Equal(422, (await sender.PostAsync($"{page}/additions", new(words) { ["Words"] = " " }, page)).Status);
            Assert.Equal(303, (await sender.PostAsync($"{page}/additions", words, page)).Status);
            Assert.Equal(303, (await sender.PostAsync($"{page}/additions", words, page)).Status);
            var html = (await sender.GetAsync(page)).Html;
            Assert.Single(html.Split("It was turbine 14.")[1..]);
            Assert.Contains("Turbine 12, north door", html, StringComparison.Ordinal);
            Assert.Contains("You have reported one encounter.", (await sender.GetAsync("/en/encounters")).Html, StringComparison.Ordinal);
        }

        using var other = await shared.Site.SignInAsync(cast.Worker);
        Assert.Equal(404, (await other.GetAsync(page)).Status);
        Assert.Equal(404, (await other.PostAsync($"{page}/additions", words, "/en/encounters")).Status);
    }

    [Fact]
    public async Task A_site_of_somebody_elses_employer_cannot_be_reported_from()
    {
        var (cast, _) = await CrewAsync();
        var (foreign, _) = await CrewAsync();

        Assert.Equal(404, (await SendAsync(cast.Worker, Report(foreign, EncounterKind.Sighting))).Status);
    }

    [Fact]
    public async Task A_species_that_is_not_on_the_list_waits_for_a_lead_until_it_is_added_or_looked_at()
    {
        var (cast, colleague) = await CrewAsync();
        Task ListAsync(DateTimeOffset at, params string[] species) => shared.Site.AddAsync(new Records.SiteSpecies
        {
            Id = Guid.CreateVersion7(), SiteId = cast.Site, SpeciesIds = species, LeadId = cast.Lead, KeptAt = at,
        });
        await ListAsync(RunningSite.Now.AddDays(-2), "western-diamondback");
        var (mojave, course) = (Report(cast, EncounterKind.Sighting), Report(cast, EncounterKind.Sighting));
        (mojave["SpeciesId"], course["SpeciesId"], course["CourseId"]) = ("mohave-rattlesnake", "western-diamondback", "awareness");
        await SendAsync(colleague, mojave);
        await SendAsync(colleague, course);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        async Task<(bool Mojave, bool Course)> WaitAsync()
        {
            var html = (await lead.GetAsync("/en/programme/encounters")).Html;
            var look = html.IndexOf("id=\"look\"", StringComparison.Ordinal) is var at and >= 0 ? html[at..html.IndexOf("<form", at, StringComparison.Ordinal)] : "";
            return (look.Contains(mojave["Id"], StringComparison.Ordinal), look.Contains(course["Id"], StringComparison.Ordinal));
        }

        Assert.Equal((true, true), await WaitAsync());
        var page = $"/en/programme/encounters/{course["Id"]}";
        Assert.Equal(303, (await lead.PostAsync($"{page}/look", new() { ["Words"] = "The part about gates is rewritten." }, page)).Status);
        Assert.Equal((true, false), await WaitAsync());
        await ListAsync(RunningSite.Now.AddDays(-1), "western-diamondback", "mohave-rattlesnake");
        Assert.Equal((false, false), await WaitAsync());
        Assert.Equal(409, (await lead.PostAsync($"{page}/look", new() { ["Words"] = "Other words." }, page)).Status);
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public async Task Every_page_of_encounters_ends_with_the_caution_that_defers(string tag)
    {
        string[] deferences = tag == "en" ? ["Site rules", "local law", "poison control", "licensed medical"] : ["reglas del sitio", "ley local", "control de envenenamientos", "médico"];
        var (cast, _) = await CrewAsync();
        var form = Report(cast, EncounterKind.Sighting);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        Assert.Equal(303, (await lead.PostAsync("/en/encounters", form, New)).Status);

        foreach (var path in new[]
                 {
                     "encounters", "encounters/new", $"encounters/new?siteId={cast.Site}", $"encounters/new?siteId={cast.Site}&kind=Moved", $"encounters/{form["Id"]}",
                     $"employers/{cast.Employer}/encounters", "programme/encounters", $"programme/encounters/{form["Id"]}", "my/capability",
                 })
        {
            var answer = await lead.GetAsync($"/{tag}/{path}");
            Assert.True(answer.Status == 200, $"{path}: {answer.Status}");
            var main = answer.Html[..answer.Html.IndexOf("</main>", StringComparison.Ordinal)];
            Assert.All(deferences, word => Assert.Contains(word, main[Math.Max(0, main.LastIndexOf("class=\"caution\"", StringComparison.Ordinal))..], StringComparison.Ordinal));
        }
    }
}
