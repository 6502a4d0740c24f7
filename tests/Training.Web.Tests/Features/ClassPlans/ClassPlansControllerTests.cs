using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Tests.Features.Workforce;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.ClassPlans;

/// <summary>Proposed, changed, accepted: on a Wednesday, 25 November 2026.</summary>
public sealed class ClassPlansControllerTests(SharedSite shared)
{
    private const string Plans = "/en/programme/class-plans";

    private RunningSite Site => shared.Site;

    /// <summary>One handler who lapses on 8 January 2027, and two instructors of this test alone who are free on Thursdays.</summary>
    private async Task<(ProgrammeCast Cast, Guid Employer, Guid Site, Guid Worker)> StageAsync()
    {
        var cast = await ProgrammeCast.CreateAsync(Site);
        var worker = await Site.HandlerAsync(cast.Employer, cast.Site, "Marisol Munn", "2027-01-08");
        await Site.AddAsync([.. new[] { cast.Teacher, cast.Scorer }.Select(id => (object)new InstructorDays
        {
            Id = Guid.CreateVersion7(), InstructorId = id, StartsOn = new(2026, 11, 1), EndsOn = new(2027, 3, 1), Weekdays = 1 << (int)DayOfWeek.Thursday, IsFree = true,
            EnteredById = cast.Lead, KeptAt = RunningSite.Now,
        })]);
        return (cast, cast.Employer, cast.Site, worker);
    }

    private static Dictionary<string, string> Form(Guid employer, Guid? id = null) => new()
    {
        ["Id"] = (id ?? Guid.CreateVersion7()).ToString(), ["EmployerId"] = employer.ToString(), ["SchemeId"] = "handler", ["StartsOn"] = "2026-11-26",
        ["EndsOn"] = "2027-01-24", ["Weekdays"] = "4", ["Seats"] = "12", ["MostClassesADay"] = "3", ["MostClassesEach"] = "10", ["MostTravelMinutes"] = "120", ["MarginDays"] = "7",
    };

    private static Dictionary<string, string> Change(string what, params (string Key, string Value)[] rest)
    {
        var form = new Dictionary<string, string> { ["Id"] = Guid.CreateVersion7().ToString(), ["Base"] = "1", ["Class"] = "0", ["What"] = what };
        foreach (var (key, value) in rest) form[key] = value;
        return form;
    }

    private static async Task<string> ProposeAsync(PlainBrowser browser, Guid employer)
    {
        var answer = await browser.PostAsync(Plans, Form(employer), Plans);
        Assert.Equal(303, answer.Status);
        return answer.Location!; // not null: asserted
    }

    [Fact]
    public async Task A_plan_is_proposed_with_its_reasons_accepted_once_and_seats_the_worker()
    {
        var (cast, employer, _, worker) = await StageAsync();
        using var browser = await Site.SignInAsync(cast.Lead);

        var plan = await ProposeAsync(browser, employer);

        var page = await browser.GetAsync(plan);
        Assert.Equal("One class renews the one person who needs it in time; fewer is not possible.", page.Says());
        Assert.Contains("31 December 2026", page.Text(), StringComparison.Ordinal); // the last Thursday before 1 January
        Assert.Contains("It is the last allowed day for <bdi>Marisol Munn</bdi>, whose time ends on 1 January 2027.", page.Html, StringComparison.Ordinal);
        await Site.RecordAsync(async records => Assert.Equal(0, await records.ClassAttendances.CountAsync(row => row.PersonId == worker)));

        var accepted = await browser.PostAsync($"{plan}/acceptance", new() { ["Number"] = "1" }, plan);
        var again = await browser.PostAsync($"{plan}/acceptance", new() { ["Number"] = "1" }, plan);

        Assert.Equal((303, 303), (accepted.Status, again.Status));
        Assert.Equal("Accepted: one class was made, with one seat taken.", (await browser.GetAsync(plan)).Says());
        await Site.RecordAsync(async records => Assert.Equal(1, await records.ClassAttendances.CountAsync(row => row.PersonId == worker)));
        Assert.Equal("Nobody needs a class in this time who has no seat yet.", (await browser.GetAsync(await ProposeAsync(browser, employer))).Says());
    }

    [Fact]
    public async Task A_change_by_hand_is_a_version_is_checked_and_cannot_be_accepted_with_a_fault()
    {
        var (cast, employer, site, worker) = await StageAsync();
        using var browser = await Site.SignInAsync(cast.Lead);
        var plan = await ProposeAsync(browser, employer);
        var move = Change("Move", ("Day", "2026-12-11"), ("SiteId", site.ToString()), ("TeacherId", cast.Teacher.ToString()), ("ScorerId", cast.Scorer.ToString()));

        Assert.Equal(303, (await browser.PostAsync($"{plan}/changes", move, plan)).Status);
        var faulty = await browser.GetAsync(plan);
        var refused = await browser.PostAsync($"{plan}/acceptance", new() { ["Number"] = "2" }, plan);
        move["Id"] = Guid.CreateVersion7().ToString();
        var late = await browser.PostAsync($"{plan}/changes", move, plan);
        var mended = Change("Move", ("Day", "2026-12-10"), ("SiteId", site.ToString()), ("TeacherId", cast.Teacher.ToString()), ("ScorerId", cast.Scorer.ToString()));
        mended["Base"] = "2";

        Assert.Contains("11 December 2026 is not among the allowed days.", faulty.Text(), StringComparison.Ordinal);
        Assert.Equal((422, 409), (refused.Status, late.Status));
        Assert.Equal(303, (await browser.PostAsync($"{plan}/changes", mended, plan)).Status);
        Assert.Equal("Changed by hand: one class renews the one person who needs it in time.", (await browser.GetAsync(plan)).Says());
        Assert.Equal(409, (await browser.PostAsync($"{plan}/acceptance", new() { ["Number"] = "2" }, plan)).Status);
        Assert.Equal(303, (await browser.PostAsync($"{plan}/acceptance", new() { ["Number"] = "3" }, plan)).Status);
        await Site.RecordAsync(async records => Assert.Equal(
            new DateOnly(2026, 12, 10),
            await (from seat in records.ClassAttendances where seat.PersonId == worker join day in records.Classes on seat.ClassId equals day.Id select day.HeldOn).SingleAsync()));
    }

    [Fact]
    public async Task Somebody_taken_out_is_without_a_seat_and_can_be_put_back()
    {
        var (cast, employer, _, worker) = await StageAsync();
        using var browser = await Site.SignInAsync(cast.Lead);
        var plan = await ProposeAsync(browser, employer);

        Assert.Equal(303, (await browser.PostAsync($"{plan}/changes", Change("Leave", ("WorkerId", worker.ToString())), plan)).Status);
        var page = await browser.GetAsync(plan);
        Assert.Contains("Nobody sits in the class", page.Text(), StringComparison.Ordinal);
        Assert.Contains("Without a seat, and why", page.Text(), StringComparison.Ordinal);
        var join = Change("Join", ("WorkerId", worker.ToString()));
        join["Base"] = "2";
        Assert.Equal(303, (await browser.PostAsync($"{plan}/changes", join, plan)).Status);
        Assert.DoesNotContain("Without a seat, and why", (await browser.GetAsync(plan)).Text(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_instructors_it_says_what_is_to_blame()
    {
        var (cast, employer, _, _) = await StageAsync();
        using var browser = await Site.SignInAsync(cast.Lead);
        var form = Form(employer);
        form["Weekdays"] = "1";

        var answer = await browser.PostAsync(Plans, form, Plans);

        var page = await browser.GetAsync(answer.Location!);
        Assert.Equal("No class can be planned: the one person who needs one cannot be seated.", page.Says());
        Assert.Contains("no two instructors are free", page.Text(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("EmployerId", "0193a000-0000-7000-8000-000000000000", "Choose an employer.")]
    [InlineData("StartsOn", "2026-11-25", "Choose a first day after today.")]
    [InlineData("EndsOn", "2026-11-25", "Choose a last day on or after the first")]
    [InlineData("Weekdays", "9", "Choose at least one weekday.")]
    [InlineData("Seats", "0", "Type a whole number from 1 to 200.")]
    public async Task What_cannot_be_planned_is_told_beside_its_field(string field, string value, string told)
    {
        var (cast, employer, _, _) = await StageAsync();
        using var browser = await Site.SignInAsync(cast.Lead);
        var form = Form(employer);
        form[field] = value;

        var answer = await browser.PostAsync(Plans, form, Plans);

        Assert.Equal(422, answer.Status);
        Assert.Contains(told, answer.Text(), StringComparison.Ordinal);
        Assert.Contains($"id=\"{field}-mend\"", answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_employer_reads_its_plan_and_changes_nothing()
    {
        var (cast, employer, _, _) = await StageAsync();
        using var lead = await Site.SignInAsync(cast.Lead);
        var plan = (await ProposeAsync(lead, employer)).Split('/')[^1];
        using var browser = await Site.SignInAsync(await Site.RepresentativeAsync(employer));
        var (other, _) = await Site.EmployerAsync();
        using var foreign = await Site.SignInAsync(await Site.RepresentativeAsync(other));

        var list = await browser.GetAsync($"/en/employers/{employer}/class-plans");
        var page = await browser.GetAsync($"/en/employers/{employer}/class-plans/{plan}");

        Assert.Equal("There is one plan of classes for your people.", list.Says());
        Assert.Equal("One class renews the one person who needs it in time; fewer is not possible.", page.Says());
        Assert.DoesNotContain("/changes\"", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("/acceptance\"", page.Html, StringComparison.Ordinal);
        Assert.Equal(404, (await foreign.GetAsync($"/en/employers/{employer}/class-plans/{plan}")).Status);
        Assert.Equal(404, (await foreign.GetAsync($"/en/employers/{other}/class-plans/{plan}")).Status);
    }

    [Fact]
    public async Task An_instructor_enters_days_and_the_last_word_counts()
    {
        var instructor = await Site.AppointedAsync(AppointedRole.Instructor, "Winifred Oakley");
        using var browser = await Site.SignInAsync(instructor);
        const string path = "/en/my/instructor-days";
        Dictionary<string, string> Days(string what, string from, string through, string weekday) => new()
        {
            ["Id"] = Guid.CreateVersion7().ToString(), ["What"] = what, ["StartsOn"] = from, ["EndsOn"] = through, ["Weekdays"] = weekday,
        };
        Assert.Contains("has no free day for a class", (await browser.GetAsync(path)).Says(), StringComparison.Ordinal);

        Assert.Equal(303, (await browser.PostAsync(path, Days("free", "2026-12-01", "2026-12-10", "4"), path)).Status);
        Assert.Equal("Winifred Oakley is free for a class on 2 of the next 90 days, first on 3 December 2026.", (await browser.GetAsync(path)).Says());
        Assert.Equal(422, (await browser.PostAsync(path, Days("perhaps", "2026-12-01", "2026-12-10", "4"), path)).Status);
        using var lead = await Site.SignInAsync(await Site.AppointedAsync(AppointedRole.ProgrammeLead, "Odalys Ferrante"));
        var theirs = $"/en/programme/instructors/{instructor}/days";
        Assert.Equal(303, (await lead.PostAsync(theirs, Days("away", "2026-12-03", "2026-12-03", "4"), theirs)).Status);
        Assert.Equal("Winifred Oakley is free for a class on 10 December 2026.", (await browser.GetAsync(path)).Says());
    }

    [Fact]
    public async Task A_way_between_sites_is_entered_in_minutes()
    {
        var cast = await ProgrammeCast.CreateAsync(Site);
        var other = Guid.CreateVersion7();
        await Site.AddAsync(new Records.Site { Id = other, EmployerId = cast.Employer, Name = "Ridge 9", Zone = "America/Phoenix", Region = "US" });
        using var browser = await Site.SignInAsync(cast.Lead);
        var path = $"/en/programme/employers/{cast.Employer}/travels";
        Dictionary<string, string> Way(Guid to, string minutes) => new()
        {
            ["Id"] = Guid.CreateVersion7().ToString(), ["SiteId"] = cast.Site.ToString(), ["OtherSiteId"] = to.ToString(), ["Minutes"] = minutes,
        };

        Assert.Equal(422, (await browser.PostAsync(path, Way(cast.Site, "40"), path)).Status);
        Assert.Equal(422, (await browser.PostAsync(path, Way(other, "1441"), path)).Status);
        Assert.Equal(303, (await browser.PostAsync(path, Way(other, "40"), path)).Status);
        var page = await browser.GetAsync(path);
        Assert.Equal("One way between these sites is known.", page.Says());
        Assert.Contains("<bdi>Ridge 4</bdi> and <bdi>Ridge 9</bdi>: 40 minutes", page.Html, StringComparison.Ordinal);
    }
}
