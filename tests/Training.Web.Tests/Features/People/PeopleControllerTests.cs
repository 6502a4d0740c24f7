using Microsoft.EntityFrameworkCore;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.People;

public sealed class PeopleControllerTests(SharedSite shared)
{
    private const string People = "/en/programme/people";

    private static Dictionary<string, string> Form(ProgrammeCast cast, string name, string? badge = null, Guid? id = null) => new()
    {
        ["Id"] = (id ?? Guid.CreateVersion7()).ToString(), ["Name"] = name, ["Language"] = "es", ["SiteId"] = cast.Site.ToString(),
        ["Badge"] = badge ?? $"N-{Guid.CreateVersion7():N}", ["StartsOn"] = "2026-11-02",
    };

    public static TheoryData<string> Names =>
    [
        "Deirdre O’Shaughnessy-D'Arcy", "María del Carmen Ibáñez Cuevas", "يارا السالم", "Ana 🐍 Ruiz", "<b>Bold & Co</b>", new string('ñ', 200),
    ];

    [Theory, MemberData(nameof(Names))]
    public async Task Somebody_is_added_under_the_name_they_write_and_found_again(string name)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var answer = await browser.PostAsync(People, Form(cast, name));

        Assert.Equal(303, answer.Status);
        Assert.Contains(name, (await browser.GetAsync(answer.Location!)).Html, StringComparison.Ordinal);
        var found = await browser.GetAsync($"{People}?search={Uri.EscapeDataString(name)}");
        Assert.Contains(answer.Location!, found.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_form_twice_is_one_person_and_other_content_under_its_id_a_conflict()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var form = Form(cast, "Solveig Amaro Quist");

        var first = await browser.PostAsync(People, form);
        var second = await browser.PostAsync(People, form);
        form["Name"] = "Somebody Else";
        var other = await browser.PostAsync(People, form);

        Assert.Equal((303, 303, 409), (first.Status, second.Status, other.Status));
        Assert.Equal(first.Location, second.Location);
        Assert.Contains("Somebody Else", other.Html, StringComparison.Ordinal);
    }

    public static TheoryData<string, string, string> Bad_entries => new()
    {
        { "Name", "", "Write the name." },
        { "Name", "   ", "Write the name." },
        { "Name", new string('x', 201), "At most 200 characters; these are 201." },
        { "Language", "fr", "Choose a language." },
        { "SiteId", "", "Choose a site from the list." },
        { "SiteId", "0193a000-0000-7000-8000-000000000000", "Choose a site from the list." },
        { "Badge", "", "Write the badge number." },
        { "Badge", new string('7', 61), "At most 60 characters; these are 61." },
        { "StartsOn", "", "Choose the first day." },
        { "StartsOn", "2026-02-30", "Choose the first day." },
    };

    [Theory, MemberData(nameof(Bad_entries))]
    public async Task A_bad_entry_is_told_beside_its_field_and_everything_typed_stays(string field, string value, string words)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var form = Form(cast, "Solveig Amaro Quist", badge: "KEEP-77");
        form[field] = value;

        var answer = await browser.PostAsync(People, form);

        Assert.Equal(422, answer.Status);
        Assert.Contains($"id=\"{field}-mend\"", answer.Html, StringComparison.Ordinal);
        Assert.Contains(words, answer.Html, StringComparison.Ordinal);
        if (field != "Badge") Assert.Contains("KEEP-77", answer.Html, StringComparison.Ordinal);
        await shared.Site.RecordAsync(async records =>
            Assert.False(await records.Persons.AnyAsync(person => person.Id == Guid.Parse(form["Id"]))));
    }

    [Fact]
    public async Task A_badge_that_names_somebody_else_adds_nobody()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var badge = $"N-{Guid.CreateVersion7():N}";
        await browser.PostAsync(People, Form(cast, "Solveig Amaro Quist", badge));
        var form = Form(cast, "Anselm Pike", badge.ToUpperInvariant());

        var answer = await browser.PostAsync(People, form);

        Assert.Equal(422, answer.Status);
        Assert.Contains("names somebody at that employer already", answer.Html, StringComparison.Ordinal);
        await shared.Site.RecordAsync(async records =>
            Assert.False(await records.Persons.AnyAsync(person => person.Id == Guid.Parse(form["Id"]))));
    }

    [Theory]
    [InlineData("inigo pena")]
    [InlineData("PEÑA")]
    [InlineData("  ruiz íñ ")]
    public async Task Accents_capitals_and_the_order_of_words_do_not_matter(string search)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var badge = $"N-{Guid.CreateVersion7():N}";
        var added = await browser.PostAsync(People, Form(cast, "Íñigo Peña-Ruiz", badge));

        var byBadge = await browser.GetAsync($"{People}?search={badge.ToLowerInvariant()}");
        List<(Guid PersonId, string? Name)> byName = [];
        await shared.Site.RecordAsync(async records => byName =
            [.. await Training.Web.Features.People.PeopleSearch.FindPeopleAsync(records, search.Trim(), ProgrammeCast.Today, default)]);

        Assert.Contains(added.Location!, byBadge.Html, StringComparison.Ordinal);
        Assert.Contains(byName, one => added.Location!.EndsWith(one.PersonId.ToString(), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("%_'\";--")]
    [InlineData("<script>alert(1)</script>")]
    public async Task A_search_for_anything_is_only_text(string search)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var answer = await browser.GetAsync($"{People}?search={Uri.EscapeDataString(search)}&page=99999");

        Assert.Equal(200, answer.Status);
        Assert.Contains("Nobody matches", answer.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", System.Text.Encoding.UTF8.GetString(answer.Bytes), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_site_ends_the_one_before_and_keeps_the_badge()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        var elsewhere = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var answer = await browser.PostAsync($"{People}/{cast.Worker}/employments", new()
        {
            ["SiteId"] = elsewhere.Site.ToString(), ["Badge"] = $"M-{cast.Worker:N}", ["StartsOn"] = "2026-11-20",
        });

        Assert.Equal(303, answer.Status);
        await shared.Site.RecordAsync(async records =>
        {
            var sites = await records.SiteAssignments.AsNoTracking().Where(row => row.PersonId == cast.Worker).OrderBy(row => row.StartsOn).ToListAsync();
            Assert.Equal([(cast.Site, (DateOnly?)new DateOnly(2026, 11, 19)), (elsewhere.Site, null)], sites.Select(row => (row.SiteId, row.EndsOn)));
        });
    }

    [Fact]
    public async Task Work_with_bad_entries_changes_nothing()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var answer = await browser.PostAsync($"{People}/{cast.Worker}/employments", new() { ["SiteId"] = cast.Site.ToString(), ["Badge"] = "", ["StartsOn"] = "x" });

        Assert.Equal(422, answer.Status);
        Assert.Contains("Write the badge number.", answer.Html, StringComparison.Ordinal);
        await shared.Site.RecordAsync(async records => Assert.Equal(1, await records.SiteAssignments.CountAsync(row => row.PersonId == cast.Worker)));
    }

    [Fact]
    public async Task A_result_names_who_taught_scored_and_decided()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync();
        await cast.TeachAsync(cast.Teacher);
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        await browser.PostAsync(
            $"/en/programme/people/{cast.Worker}/decisions/handler", new() { ["Id"] = Guid.CreateVersion7().ToString(), ["Verdict"] = "Grant" });

        var page = await browser.GetAsync($"{People}/{cast.Worker}");

        Assert.Contains("Taught by <bdi>Wanda Trujillo</bdi>.", page.Html, StringComparison.Ordinal);
        Assert.Contains("Scored by <bdi>Priya Nand</bdi>.", page.Html, StringComparison.Ordinal);
        Assert.Contains("Decided by <bdi>Odalys Ferrante</bdi>.", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_does_not_exist_is_not_found_and_a_form_without_its_token_is_refused()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        Assert.Equal(404, (await browser.GetAsync($"{People}/{Guid.CreateVersion7()}")).Status);
        Assert.Equal(404, (await browser.PostAsync($"{People}/{Guid.CreateVersion7()}/employments", [])).Status);
        Assert.Equal(400, (await browser.PostExactlyAsync(People, [.. Form(cast, "Anselm Pike")])).Status);
        Assert.Equal(400, (await browser.PostExactlyAsync($"{People}/{cast.Worker}/employments", [])).Status);
    }
}
