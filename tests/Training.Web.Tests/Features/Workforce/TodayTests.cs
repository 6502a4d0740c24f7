using Training.Records;
using Training.Web.Features.Workforce;
using Training.Web.Tests.House;
using static Training.Web.Tests.Features.Workforce.OwnPeople;

namespace Training.Web.Tests.Features.Workforce;

/// <summary>"Who lapses before a day, and what do I do?", on a Wednesday, 25 November 2026.</summary>
public sealed class TodayTests(SharedSite shared)
{
    private RunningSite Site => shared.Site;

    [Fact]
    public async Task The_first_line_says_how_things_stand_and_the_ledger_follows_worst_first()
    {
        var (employer, site) = await Site.EmployerAsync();
        await Site.HandlerAsync(employer, site, "Not Listed", "2027-03-01");     // lapses after the day
        await Site.HandlerAsync(employer, site, "Last Listed", "2027-02-28");
        await Site.HandlerAsync(employer, site, "Soon Listed", "2026-12-07");
        await Site.HandlerAsync(employer, site, "Last Day", "2026-11-25");
        await Site.HandlerAsync(employer, site, "In Grace", "2026-11-02");
        await Site.HandlerAsync(employer, site, "After Grace", "2026-10-25");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var english = await browser.GetAsync($"/en/employers/{employer}");
        var spanish = await browser.GetAsync($"/es/employers/{employer}");

        Assert.Equal("Three of your 6 people lapse before 1 March 2027. One has lapsed and can still renew.", english.Says());
        Assert.Equal("A tres de sus 6 personas se les vence algo antes del 1 de marzo de 2027. A una ya se le venció algo y todavía puede renovarlo.", spanish.Says());
        string[] order = ["In Grace", "Last Day", "Soon Listed", "Last Listed"];
        Assert.Equal(order, order.OrderBy(name => english.Html.IndexOf(name, StringComparison.Ordinal)));
        Assert.All(order, name => Assert.Contains(name, english.Html, StringComparison.Ordinal));
        Assert.DoesNotContain("Not Listed", english.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("After Grace", english.Html, StringComparison.Ordinal);
        Assert.Contains("7 days left to renew", english.Text(), StringComparison.Ordinal);
        Assert.Contains("The renewal route closes on 2 December 2026;", english.Text(), StringComparison.Ordinal);
        Assert.Contains("0 days left", english.Text(), StringComparison.Ordinal);
        Assert.Contains("95 days left", english.Text(), StringComparison.Ordinal);
        Assert.Contains("lapsed: 2", english.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_form_answers_for_a_site_and_a_day()
    {
        var (employer, east) = await Site.EmployerAsync();
        var west = Guid.CreateVersion7();
        await Site.AddAsync(new Records.Site { Id = west, EmployerId = employer, Name = "Rim Line West", Zone = "America/Chicago", Region = "US" });
        await Site.HandlerAsync(employer, east, "At East", "2026-12-07");
        await Site.HandlerAsync(employer, west, "At West", "2026-12-07");
        await Site.HandlerAsync(employer, west, "At West Later", "2026-12-08");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var answer = await browser.GetAsync($"/en/employers/{employer}?before=2026-12-08&site={west}");

        Assert.Equal("One of your 2 people at Rim Line West lapses before 8 December 2026.", answer.Says());
        Assert.DoesNotContain("At East", answer.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("At West Later", answer.Html, StringComparison.Ordinal);
        Assert.Contains("value=\"2026-12-08\"", answer.Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2026-11-25")] // today
    [InlineData("2026-11-24")]
    [InlineData("2026-02-30")]
    [InlineData("12/31/2026")]
    [InlineData("2036-11-26")] // ten years and a day
    [InlineData("<b>soon</b>")]
    [InlineData("99999999999999999999999999999999")]
    public async Task A_day_that_cannot_be_used_is_told_of_and_the_default_stays(string typed)
    {
        var (employer, site) = await Site.EmployerAsync();
        await Site.HandlerAsync(employer, site, "Soon Listed", "2026-12-07");
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        foreach (var (language, told) in new[] { ("en", "cannot be used as the day"), ("es", "no sirve como día") })
        {
            var answer = await browser.GetAsync($"/{language}/employers/{employer}?before={Uri.EscapeDataString(typed)}");

            Assert.Equal(422, answer.Status);
            Assert.Contains(told, answer.Html, StringComparison.Ordinal);
            Assert.Contains("value=\"2027-03-01\"", answer.Html, StringComparison.Ordinal);
            Assert.Contains("Soon Listed", answer.Html, StringComparison.Ordinal);
            Assert.DoesNotContain("<b>soon", System.Text.Encoding.UTF8.GetString(answer.Bytes), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("2026-11-25", "2027-03-01")]
    [InlineData("2026-12-01", "2027-03-01")] // 90 days ahead is the first already
    [InlineData("2026-12-02", "2027-04-01")]
    [InlineData("2026-10-02", "2027-01-01")]
    public void The_default_is_the_first_of_a_month_90_days_ahead_or_soon_after(string today, string before) =>
        Assert.Equal(new(Day(before), null, null), TodayFilter.Read(null, null, Day(today)));

    [Fact]
    public async Task What_to_do_names_what_is_missing_and_the_next_class_day_with_a_seat()
    {
        var (employer, site) = await Site.EmployerAsync();
        var (full, free) = (Guid.CreateVersion7(), Guid.CreateVersion7());
        var worker = await Site.HandlerAsync(employer, site, "Soon Listed", "2026-12-07");
        var somebody = await Site.PersonAsync();
        await Site.HoldAsync(worker, "awareness", Day("2026-01-01"), Day("2028-01-01"));
        await Site.AddAsync(
            new ClassRecord { Id = full, SiteId = site, HeldOn = Day("2026-11-28"), CourseId = "handler", Capacity = 1 },
            new ClassRecord { Id = free, SiteId = site, HeldOn = Day("2026-12-02"), CourseId = "handler", Capacity = 5 },
            new ClassRecord { Id = Guid.CreateVersion7(), SiteId = site, HeldOn = Day("2026-11-25"), CourseId = "handler", Capacity = 9 }, // too late
            new ClassAttendance { ClassId = full, PersonId = somebody },
            new ClassAttendance { ClassId = free, PersonId = somebody });
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var english = (await browser.GetAsync($"/en/employers/{employer}")).Text();
        var spanish = (await browser.GetAsync($"/es/employers/{employer}")).Text();

        Assert.Contains("Renew by 7 December 2026. Still missing: quiz “Refresher for tool-only snake handlers”; practical on a model", english, StringComparison.Ordinal);
        Assert.Contains("current. Class day on 2 December 2026 at Rim Line East : 4 seats free.", english, StringComparison.Ordinal);
        Assert.Contains("Renovar a más tardar el 7 de diciembre de 2026. Falta: examen", spanish, StringComparison.Ordinal);
        Assert.Contains("Día de clase el 2 de diciembre de 2026 en Rim Line East : 4 lugares libres.", spanish, StringComparison.Ordinal);

        await Site.HandlerAsync(employer, site, "Too Soon", "2026-12-01");
        Assert.Contains(
            "The next class day with a free seat, 2 December 2026 at Rim Line East , comes after that.",
            (await browser.GetAsync($"/en/employers/{employer}")).Text(), StringComparison.Ordinal);

        await Site.AddAsync(new ClassAttendance { ClassId = free, PersonId = worker });

        Assert.Contains("Has a seat at the class day on 2 December 2026.", (await browser.GetAsync($"/en/employers/{employer}")).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Somebody_suspended_is_listed_with_the_review_and_somebody_who_left_is_not_listed()
    {
        var (employer, site) = await Site.EmployerAsync();
        var lead = await Site.AppointedAsync(AppointedRole.ProgrammeLead);
        var suspended = await Site.HandlerAsync(employer, site, "Under Review", "2026-12-07");
        var left = await Site.PersonAsync("Long Gone");
        await Site.HoldAsync(left, "handler", Day("2025-11-03"), Day("2026-12-07"));
        await Site.AddAsync(
            new SuspensionRecord
            {
                Id = Guid.CreateVersion7(), PersonId = suspended, SchemeId = "handler", Number = 1, PeriodNumber = 1, StartsOn = Day("2026-11-20"),
                LeadId = lead, Reason = "A reason that is not the employer's", DeadlineOn = Day("2026-12-20"), KeptAt = RunningSite.Now,
            },
            new Employment { Id = Guid.CreateVersion7(), PersonId = left, EmployerId = employer, StartsOn = Day("2020-01-01"), EndsOn = Day("2026-11-24") });
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        var answer = await browser.GetAsync($"/en/employers/{employer}");

        Assert.Contains("No handling while suspended. A programme lead settles it by 20 December 2026.", answer.Text(), StringComparison.Ordinal);
        Assert.DoesNotContain("A reason that", answer.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("Long Gone", answer.Html, StringComparison.Ordinal);
        Assert.Equal(404, (await browser.GetAsync($"/en/employers/{employer}/people/{left}")).Status);
        Assert.Equal(200, (await browser.GetAsync($"/en/employers/{employer}/people/{suspended}")).Status);
    }

    [Fact]
    public async Task An_employer_without_people_is_told_so()
    {
        var (employer, _) = await Site.EmployerAsync();
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));

        Assert.Equal("Nobody of yours is on record here today.", (await browser.GetAsync($"/en/employers/{employer}")).Says());
    }
}
