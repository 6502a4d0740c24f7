using Training.Records;
using Training.Web.Tests.House;
using static Training.Web.Tests.Features.Workforce.OwnPeople;

namespace Training.Web.Tests.Features.Lives;

public sealed class PastStandingTests(SharedSite shared)
{
    private RunningSite Site => shared.Site;

    private static string Asked(Guid person, string day, string scheme = "handler", string language = "en") =>
        $"/{language}/programme/people/{person}/standing?Day={day}&Scheme={scheme}";

    /// <summary>Suspended from 1 October; written down at noon of another day in Denver.</summary>
    private Task SuspendAsync(ProgrammeCast cast, string writtenOn, string scheme = "handler") => Site.AddAsync(new SuspensionRecord
    {
        Id = Guid.CreateVersion7(), PersonId = cast.Worker, SchemeId = scheme, PeriodNumber = 1, Number = 1, StartsOn = new(2026, 10, 1), LeadId = cast.Lead,
        Reason = "Seen with a hand inside reach.", DeadlineOn = new(2026, 10, 31),
        KeptAt = new DateTimeOffset(DateOnly.Parse(writtenOn, System.Globalization.CultureInfo.InvariantCulture), new(19, 0), TimeSpan.Zero),
    });

    [Fact]
    public async Task A_lead_reads_in_one_sentence_whether_somebody_was_current_and_what_it_rests_on()
    {
        var cast = await ProgrammeCast.CreateAsync(Site);
        var (_, _, decision) = await cast.HoldAsync();
        using var browser = await Site.SignInAsync(cast.Lead);

        var yes = await browser.GetAsync(Asked(cast.Worker, "2026-08-25"));
        var no = await browser.GetAsync(Asked(cast.Worker, "2026-08-24"));
        var spanish = await browser.GetAsync(Asked(cast.Worker, "2026-08-25", language: "es"));

        Assert.Equal("Yes. On 25 August 2026, Íñigo Peña-Ruiz was current in “Tool-only snake handler”, through 25 August 2027.", yes.Says());
        Assert.Equal("No. On 24 August 2026, Íñigo Peña-Ruiz had not been granted “Tool-only snake handler”.", no.Says());
        Assert.StartsWith("Sí. El 25 de agosto de 2026, Íñigo Peña-Ruiz estaba vigente en", spanish.Says(), StringComparison.Ordinal);
        Assert.Contains(decision.ToString(), yes.Html, StringComparison.Ordinal);
        Assert.Contains(cast.Handler.Hash, yes.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_written_down_later_is_told_beside_what_was_known_then()
    {
        var cast = await ProgrammeCast.CreateAsync(Site);
        await Papers.HoldAsync(Site, cast.Worker, "handler", new(2026, 8, 25), new(2027, 8, 25));
        await SuspendAsync(cast, "2026-10-12");
        using var browser = await Site.SignInAsync(cast.Lead);

        var before = await browser.GetAsync(Asked(cast.Worker, "2026-10-11"));
        var after = await browser.GetAsync(Asked(cast.Worker, "2026-10-12"));

        Assert.Equal("No. On 11 October 2026, Íñigo Peña-Ruiz was not current in “Tool-only snake handler”: it was suspended from 1 October 2026 on.", before.Says());
        Assert.Contains("The records of that day said otherwise: current.", before.Text(), StringComparison.Ordinal);
        Assert.Contains(
            "Written down after that day 1 October 2026 Suspended. To be settled by 31 October 2026. By Odalys Ferrante. Seen with a hand inside reach. Written down on 12 October 2026.",
            before.Text(), StringComparison.Ordinal);
        Assert.Contains("The records of that day said the same.", after.Text(), StringComparison.Ordinal);
        Assert.DoesNotContain("Written down after that day", after.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_employer_asks_about_days_on_which_it_employed_the_person_and_reads_no_reason()
    {
        var cast = await ProgrammeCast.CreateAsync(Site);
        await Papers.HoldAsync(Site, cast.Worker, "handler", new(2026, 8, 25), new(2027, 8, 25));
        await SuspendAsync(cast, "2026-10-01");
        var (later, _) = await Site.EmployerAsync();
        await Site.RecordAsync(async records =>
        {
            records.Employments.Single(row => row.PersonId == cast.Worker).EndsOn = new(2026, 10, 15);
            records.Add(new Employment { Id = Guid.CreateVersion7(), PersonId = cast.Worker, EmployerId = later, StartsOn = new(2026, 10, 16) });
            await records.SaveChangesAsync();
        });
        using var first = await Site.SignInAsync(await Site.RepresentativeAsync(cast.Employer));
        using var second = await Site.SignInAsync(await Site.RepresentativeAsync(later));
        string Of(Guid employer, string day) => $"/en/employers/{employer}/people/{cast.Worker}/standing?Day={day}";

        var then = await first.GetAsync(Of(cast.Employer, "2026-10-15"));
        var gone = await first.GetAsync(Of(cast.Employer, "2026-10-16"));
        var early = await second.GetAsync(Of(later, "2026-10-15"));
        var now = await second.GetAsync(Of(later, "2026-10-16"));

        Assert.Equal((200, 422, 422, 200), (then.Status, gone.Status, early.Status, now.Status));
        Assert.StartsWith("No. On 15 October 2026, Íñigo Peña-Ruiz was not current", then.Says(), StringComparison.Ordinal);
        Assert.Contains("On that day this person did not work for you.", gone.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("suspended", early.Text(), StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("Seen with a hand", then.Html + now.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("Odalys Ferrante", then.Html + now.Html, StringComparison.Ordinal);
        Assert.Equal(404, (await second.GetAsync(Of(cast.Employer, "2026-10-15"))).Status);
    }

    [Theory]
    [InlineData("2026-11-26", "That day has not come yet.")]
    [InlineData("2026-02-30", "Choose a day.")]
    public async Task A_day_to_come_and_no_day_are_not_answered(string day, string told)
    {
        var cast = await ProgrammeCast.CreateAsync(Site);
        await cast.HoldAsync();
        using var browser = await Site.SignInAsync(cast.Lead);

        var answer = await browser.GetAsync(Asked(cast.Worker, day));

        Assert.Equal(422, answer.Status);
        Assert.Equal("Was Íñigo Peña-Ruiz current on a day in the past?", answer.Says());
        Assert.Contains(told, answer.Html, StringComparison.Ordinal);
        Assert.Equal(200, (await browser.GetAsync($"/en/programme/people/{cast.Worker}/standing")).Status);
    }

    [Fact]
    public async Task Everything_that_was_held_is_answered_where_no_scheme_is_chosen()
    {
        var cast = await ProgrammeCast.CreateAsync(Site);
        await cast.HoldAsync();
        await Papers.HoldAsync(Site, cast.Worker, "awareness", new(2024, 1, 10), new(2026, 1, 10));
        using var browser = await Site.SignInAsync(cast.Lead);

        var answer = await browser.GetAsync(Asked(cast.Worker, "2026-09-01", scheme: ""));

        Assert.Equal("On 1 September 2026, Íñigo Peña-Ruiz was current in: Tool-only snake handler.", answer.Says());
        Assert.Contains("the last day was 10 January 2026.", answer.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_hold_that_touches_the_day_is_said_besides()
    {
        var cast = await ProgrammeCast.CreateAsync(Site);
        await cast.HoldAsync();
        await Site.AddAsync(ReviewRecord.OfPerson(
            Certification.ReviewCause.NearMiss, Guid.CreateVersion7(), cast.Worker, null, new(2026, 9, 10), RunningSite.Now).WithHold());
        using var browser = await Site.SignInAsync(cast.Lead);
        const string Told = "On that day this person was not to handle snakes until a lead had looked: since 10 September 2026.";

        var before = await browser.GetAsync(Asked(cast.Worker, "2026-09-09"));
        var on = await browser.GetAsync(Asked(cast.Worker, "2026-09-10"));

        Assert.DoesNotContain(Told, before.Html, StringComparison.Ordinal);
        Assert.Contains(Told, on.Html, StringComparison.Ordinal);
        Assert.StartsWith("Yes.", on.Says(), StringComparison.Ordinal); // a hold changes no standing
    }

    [Fact]
    public async Task The_history_stands_on_the_pages_of_lead_holder_and_employer()
    {
        var cast = await ProgrammeCast.CreateAsync(Site);
        await cast.HoldAsync();
        await SuspendAsync(cast, "2026-10-12");
        using var lead = await Site.SignInAsync(cast.Lead);
        using var holder = await Site.SignInAsync(cast.Worker);
        using var employer = await Site.SignInAsync(await Site.RepresentativeAsync(cast.Employer));

        var ofLead = (await lead.GetAsync($"/en/programme/people/{cast.Worker}")).Text();
        var own = (await holder.GetAsync("/en/my/courses/handler")).Text();
        var ofEmployer = (await employer.GetAsync($"/en/employers/{cast.Employer}/people/{cast.Worker}")).Text();

        Assert.All([ofLead, own, ofEmployer], text =>
        {
            Assert.Contains("1 October 2026 Suspended. To be settled by 31 October 2026.", text, StringComparison.Ordinal);
            Assert.Contains("25 August 2026 Granted. Current through 25 August 2027.", text, StringComparison.Ordinal);
        });
        Assert.All([ofLead, own], text => Assert.Contains("By Odalys Ferrante. Seen with a hand inside reach.", text, StringComparison.Ordinal));
        Assert.Contains("By a programme lead.", ofEmployer, StringComparison.Ordinal);
        Assert.DoesNotContain("Seen with a hand", ofEmployer, StringComparison.Ordinal);
    }
}
