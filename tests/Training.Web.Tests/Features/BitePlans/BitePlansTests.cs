using System.Text.RegularExpressions;
using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.BitePlans;

/// <summary>The bite plan of a site: written by a lead, read where somebody may be bitten. Today is 25 November 2026.</summary>
public sealed partial class BitePlansTests(SharedSite shared)
{
    private static string Form(ProgrammeCast cast) => $"/en/programme/sites/{cast.Site}/bite-plan";

    private static string Plan(ProgrammeCast cast, string language = "en") => $"/{language}/sites/{cast.Site}/bite-plan";

    private static Dictionary<string, string> Filled() => new()
    {
        ["Id"] = Guid.CreateVersion7().ToString(), ["EmergencyServices"] = "911", ["PoisonControl"] = "1-800-222-1222", ["OnSite"] = "Shift lead, radio channel 2",
        ["WithoutSignal"] = "Radio channel 2: control calls", ["Coordinates"] = "34.89512, -117.02244", ["AccessWords"] = "Gate 2, code 4417.", ["ReviewOn"] = "2027-05-25",
        ["Hospitals[0].Name"] = "Ocotillo Regional", ["Hospitals[0].Contact"] = "200 Mesa Avenue; 760-555-0170", ["Hospitals[0].DriveMinutes"] = "70",
        ["Hospitals[1].Name"] = "Sagebrush District", ["Hospitals[1].Contact"] = "18 Juniper Street; 760-555-0119", ["Hospitals[1].DriveMinutes"] = "25",
        ["Hospitals[1].Said"] = "six vials", ["Hospitals[1].ToldBy"] = "Dana Whitlock", ["Hospitals[1].ToldOn"] = "2026-11-20",
        ["Hospitals[2].Name"] = "", ["Hospitals[2].Contact"] = " ", ["Hospitals[2].DriveMinutes"] = "",
    };

    private static async Task<ProgrammeCast> WithPlanAsync(RunningSite site, Action<Dictionary<string, string>>? change = null)
    {
        var cast = await ProgrammeCast.CreateAsync(site);
        using var lead = await site.SignInAsync(cast.Lead);
        var form = Filled();
        change?.Invoke(form);
        var answer = await lead.PostAsync(Form(cast), form, page: Form(cast));
        Assert.True(answer.Status == 303, Words(answer));
        Assert.Equal(Plan(cast), answer.Location);
        return cast;
    }

    [Fact]
    public async Task What_a_lead_checked_is_read_by_the_people_of_the_site_emergency_services_first_and_hospitals_by_drive_time()
    {
        var cast = await WithPlanAsync(shared.Site);
        using var worker = await shared.Site.SignInAsync(cast.Worker);

        var page = Words(await worker.GetAsync(Plan(cast)));

        string[] inOrder =
        [
            "Snakebite? Call 911 first.", "Emergency services decide where to go.", "Radio channel 2: control calls", "34.89512, -117.02244", "34° 53.707' north, 117° 01.346' west",
            "Gate 2, code 4417.", "Get out of reach.", "No tourniquet.", "1-800-222-1222", "Shift lead, radio channel 2", "Sagebrush District", "Ocotillo Regional",
            "six vials", "Told by Dana Whitlock on 20 November 2026; ask again.", "Last checked on 25 November 2026 by Odalys Ferrante.", "Next review by 25 May 2027.",
        ];
        Assert.Equal(inOrder, inOrder.OrderBy(words => page.IndexOf(words, StringComparison.Ordinal)));
        Assert.All(inOrder, words => Assert.Contains(words, page, StringComparison.Ordinal));
        Assert.DoesNotContain("overdue", page, StringComparison.Ordinal);
        Assert.Contains($"href=\"{Plan(cast)}\"", (await worker.GetAsync("/en/my")).Html, StringComparison.Ordinal);
        Assert.Contains("href=\"geo:34.89512,-117.02244\"", (await worker.GetAsync(Plan(cast))).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_paper_says_what_the_page_says_in_both_languages()
    {
        var cast = await WithPlanAsync(shared.Site);
        using var worker = await shared.Site.SignInAsync(cast.Worker);

        var paper = Pdf.Text((await worker.GetAsync($"{Plan(cast)}.pdf")).Bytes);
        var spanish = Pdf.Text((await worker.GetAsync($"{Plan(cast, "es")}.pdf")).Bytes);

        Assert.Contains("Snakebite? Call 911 first.", paper, StringComparison.Ordinal);
        Assert.Contains("Sagebrush District", paper, StringComparison.Ordinal);
        Assert.Contains("911", spanish, StringComparison.Ordinal);
        Assert.Contains("Aléjese y deje en paz a la serpiente", spanish, StringComparison.Ordinal);
    }

    [Fact]
    public async Task After_its_day_of_review_the_plan_says_first_that_it_is_overdue()
    {
        using var site = RunningSite.Start();
        var cast = await WithPlanAsync(site, form => form["ReviewOn"] = "2026-12-01");
        site.Clock.Now = new(2026, 12, 2, 18, 0, 0, TimeSpan.Zero);
        using var worker = await site.SignInAsync(cast.Worker);
        using var lead = await site.SignInAsync(cast.Lead);

        var page = Words(await worker.GetAsync(Plan(cast)));

        Assert.InRange(page.IndexOf("This plan is overdue for review.", StringComparison.Ordinal), 0, page.IndexOf("Snakebite? Call 911", StringComparison.Ordinal));
        Assert.Contains("It was to be reviewed by 1 December 2026, one day ago.", page, StringComparison.Ordinal);
        Assert.Contains("This plan is overdue for review.", Pdf.Text((await worker.GetAsync($"{Plan(cast)}.pdf")).Bytes), StringComparison.Ordinal);
        Assert.Contains("One site has no bite plan, or one that is overdue.", Words(await lead.GetAsync($"/en/employers/{cast.Employer}/bite-plans")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Coordinates", "north of the tank", "Coordinates-mend")]
    [InlineData("Coordinates", "91, 0", "Coordinates-mend")]
    [InlineData("AccessWords", " ", "AccessWords-mend")]
    [InlineData("EmergencyServices", "", "EmergencyServices-mend")]
    [InlineData("ReviewOn", "2026-11-25", "ReviewOn-mend")]
    [InlineData("ReviewOn", "2027-11-26", "ReviewOn-mend")]
    [InlineData("Hospitals[0].DriveMinutes", "an hour", "Hospitals[0].DriveMinutes-mend")]
    [InlineData("Hospitals[0].DriveMinutes", "0", "Hospitals[0].DriveMinutes-mend")]
    [InlineData("Hospitals[0].Contact", "", "Hospitals[0].Contact-mend")]
    [InlineData("Hospitals[1].ToldBy", "", "Hospitals[1].ToldBy-mend")]
    [InlineData("Hospitals[1].ToldOn", "2026-11-26", "Hospitals[1].ToldOn-mend")]
    public async Task What_is_wrong_stands_beside_its_field_and_nothing_typed_is_lost(string field, string typed, string mend)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var form = Filled();
        form[field] = typed;

        var answer = await lead.PostAsync(Form(cast), form, page: Form(cast));

        Assert.Equal(422, answer.Status);
        Assert.Single(MendIds().Matches(answer.Html), match => match.Groups["id"].Value == mend);
        Assert.Contains("Ocotillo Regional", answer.Html, StringComparison.Ordinal);
        Assert.Contains("six vials", answer.Html, StringComparison.Ordinal);
        await shared.Site.RecordAsync(async records => Assert.False(await records.BitePlans.AnyAsync(plan => plan.SiteId == cast.Site)));
    }

    [Fact]
    public async Task What_does_not_fit_one_page_is_not_kept_and_the_lead_is_told_by_how_much()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        var form = Filled();
        form["AccessWords"] = string.Concat(Enumerable.Repeat("turn left ", 50)).Trim();
        form["WithoutSignal"] = form["AccessWords"];
        foreach (var index in Enumerable.Range(0, 6))
        {
            foreach (var name in new[] { "Name", "Contact", "Said", "ToldBy" }) form[$"Hospitals[{index}].{name}"] = string.Concat(Enumerable.Repeat("long word ", 20)).Trim();
            (form[$"Hospitals[{index}].DriveMinutes"], form[$"Hospitals[{index}].ToldOn"]) = ("30", "2026-11-01");
        }

        var answer = await lead.PostAsync(Form(cast), form, page: Form(cast));

        Assert.Equal(422, answer.Status);
        Assert.Matches("All together is \\d+ mm more than one page holds", Words(answer));
        await shared.Site.RecordAsync(async records => Assert.False(await records.BitePlans.AnyAsync(plan => plan.SiteId == cast.Site)));
    }

    [Fact]
    public async Task A_hospital_reads_it_through_an_address_of_its_own_until_a_lead_ends_it()
    {
        var cast = await WithPlanAsync(shared.Site);
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        using var hospital = shared.Site.OpenBrowser();

        var made = await lead.PostAsync($"{Form(cast)}/addresses", new() { ["Id"] = Guid.CreateVersion7().ToString(), ["MadeFor"] = "Sagebrush District" }, page: Form(cast));
        var path = new Uri(AddressSpans().Match(made.Html).Groups["address"].Value).AbsolutePath;
        var open = await hospital.GetAsync(path);
        var paper = await hospital.GetAsync($"/en{path}.pdf");

        Assert.Contains("Call 911 first.", Words(open), StringComparison.Ordinal);
        Assert.Equal(("no-store", "noindex, nofollow"), (open.Headers["Cache-Control"], open.Headers["X-Robots-Tag"]));
        Assert.Equal("application/pdf", paper.Headers["Content-Type"]);
        Assert.DoesNotContain(path[^40..], (await lead.GetAsync(Form(cast))).Html, StringComparison.Ordinal);
        var end = EndForms().Match((await lead.GetAsync(Form(cast))).Html).Groups["path"].Value;
        Assert.Equal(303, (await lead.PostAsync(end, [], page: Form(cast))).Status);
        Assert.Equal((410, 410), ((await hospital.GetAsync(path)).Status, (await hospital.GetAsync($"/en{path}.pdf")).Status));
        Assert.Equal(404, (await hospital.GetAsync($"/bite-plans/{AddressSecret.New()}")).Status);
    }

    [Fact]
    public async Task A_site_without_a_plan_says_so_and_whom_to_call()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var worker = await shared.Site.SignInAsync(cast.Worker);
        using var lead = await shared.Site.SignInAsync(cast.Lead);

        var page = Words(await worker.GetAsync(Plan(cast)));
        var made = await lead.PostAsync($"{Form(cast)}/addresses", new() { ["Id"] = Guid.CreateVersion7().ToString(), ["MadeFor"] = "The gate" }, page: Form(cast));

        Assert.Contains("Nobody has written a bite plan for this site.", page, StringComparison.Ordinal);
        Assert.Contains("call emergency services first", page, StringComparison.Ordinal);
        Assert.Equal(404, (await worker.GetAsync($"{Plan(cast)}.pdf")).Status);
        Assert.Equal(422, made.Status);
        Assert.Contains("Write the plan first", Words(made), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_day_of_the_site_decides_whether_a_plan_is_overdue()
    {
        using var site = RunningSite.Start(settings: [new("Training:Provider:TimeZone", "Pacific/Auckland")]);
        var cast = await WithPlanAsync(site, form => form["ReviewOn"] = "2026-12-01");
        // 1 December in Phoenix, where the site lies; 2 December for a lead in Auckland.
        site.Clock.Now = new(2026, 12, 1, 18, 0, 0, TimeSpan.Zero);
        using var lead = await site.SignInAsync(cast.Lead);

        Assert.Contains("Every site has a bite plan in time.", Words(await lead.GetAsync($"/en/employers/{cast.Employer}/bite-plans")), StringComparison.Ordinal);
        Assert.DoesNotContain("Overdue", Words(await lead.GetAsync($"/en/programme/sites/{cast.Site}")), StringComparison.Ordinal);
        Assert.DoesNotContain("overdue", Words(await lead.GetAsync(Plan(cast))), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Somebody_of_another_site_does_not_find_it()
    {
        var (cast, other) = (await WithPlanAsync(shared.Site), await ProgrammeCast.CreateAsync(shared.Site));
        using var worker = await shared.Site.SignInAsync(other.Worker);

        Assert.Equal((404, 404), ((await worker.GetAsync(Plan(cast))).Status, (await worker.GetAsync($"{Plan(cast)}.pdf")).Status));
    }

    private static string Words(Reply answer) => Spaces().Replace(System.Net.WebUtility.HtmlDecode(Tags().Replace(answer.Html, " ")), " ");

    [GeneratedRegex("<[^>]*>", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Tags();

    [GeneratedRegex("\\s+", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Spaces();

    [GeneratedRegex("class=\"mend\" id=\"(?<id>[^\"]+)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex MendIds();

    [GeneratedRegex("class=\"address\">(?<address>[^<]+)<", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex AddressSpans();

    [GeneratedRegex("action=\"(?<path>[^\"]+/end)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex EndForms();
}
