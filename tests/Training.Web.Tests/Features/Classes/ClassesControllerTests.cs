using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Classes;

public sealed class ClassesControllerTests(SharedSite shared)
{
    private const string Classes = "/en/programme/classes";

    private static Dictionary<string, string> Form(ProgrammeCast cast) => new()
    {
        ["Id"] = Guid.CreateVersion7().ToString(), ["CourseId"] = "handler", ["SiteId"] = cast.Site.ToString(), ["HeldOn"] = "2026-12-03", ["StartsAt"] = "07:30",
        ["Hours"] = "8", ["Seats"] = "12",
    };

    private static Dictionary<string, string> Instructor(Guid id) => new() { ["InstructorId"] = id.ToString() };

    private async Task<Dictionary<string, string>> BadgeAsync(ProgrammeCast cast, Guid person, string number)
    {
        await shared.Site.AddAsync(new Badge
        {
            Id = Guid.CreateVersion7(), PersonId = person, EmployerId = cast.Employer, StartsOn = new(2024, 1, 1), Number = number,
        });
        return new() { ["EmployerId"] = cast.Employer.ToString(), ["Badge"] = number.ToLowerInvariant() };
    }

    [Fact]
    public async Task A_class_is_added_once()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var form = Form(cast);

        var first = await browser.PostAsync(Classes, form);
        var again = await browser.PostAsync(Classes, form);

        Assert.Equal((303, 303), (first.Status, again.Status));
        Assert.Contains("12 of 12 seats are free on 3 December 2026.", (await browser.GetAsync(first.Location!)).Html, StringComparison.Ordinal);
        Assert.Contains(first.Location!, (await browser.GetAsync(Classes)).Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("CourseId", "no-such-course", "Choose a course.")]
    [InlineData("SiteId", "0193a000-0000-7000-8000-000000000000", "Choose a site from the list.")]
    [InlineData("HeldOn", "tomorrow", "Choose the day.")]
    [InlineData("StartsAt", "noon", "Write the start as hours and minutes, such as 08:00.")]
    [InlineData("StartsAt", "", "Write the start as hours and minutes, such as 08:00.")]
    [InlineData("Hours", "0", "Write how many hours it lasts")]
    [InlineData("Hours", "24.1", "Write how many hours it lasts")]
    [InlineData("Hours", "0.333", "Write how many hours it lasts")]
    [InlineData("Seats", "0", "Write a number from 1 to 200.")]
    [InlineData("Seats", "-3", "Write a number from 1 to 200.")]
    [InlineData("Seats", "1e2", "Write a number from 1 to 200.")]
    public async Task A_bad_entry_is_told_beside_its_field(string field, string value, string words)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var form = Form(cast);
        form[field] = value;

        var answer = await browser.PostAsync(Classes, form);

        Assert.Equal(422, answer.Status);
        Assert.Contains($"id=\"{field}-mend\"", answer.Html, StringComparison.Ordinal);
        Assert.Contains(words, answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_full_class_takes_nobody_more_and_the_same_person_has_one_seat()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var path = $"{Classes}/{cast.Class}/attendances";
        var worker = await BadgeAsync(cast, cast.OtherLead, "AB-1");

        Assert.Equal(303, (await browser.PostAsync(path, worker)).Status);
        Assert.Equal(303, (await browser.PostAsync(path, worker)).Status);
        Assert.Equal(303, (await browser.PostAsync(path, await BadgeAsync(cast, cast.Scorer, "AB-2"))).Status);
        var full = await browser.PostAsync(path, await BadgeAsync(cast, cast.Teacher, "AB-3"));

        Assert.Equal(422, full.Status);
        Assert.Contains("All 2 seats of this class are taken. Nobody was added.", full.Html, StringComparison.Ordinal);
        await shared.Site.RecordAsync(async records => Assert.Equal(2, await records.ClassAttendances.CountAsync(row => row.ClassId == cast.Class)));
    }

    [Fact]
    public async Task Of_many_at_once_as_many_get_a_seat_as_there_are()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        Guid[] people = [cast.Lead, cast.OtherLead, cast.Teacher, cast.Scorer, cast.Worker];

        await Task.WhenAll(people.Select(person => Task.Run(() =>
            shared.Site.RecordAsync(records => records.AttendAsync(cast.Class, person, default)))));

        await shared.Site.RecordAsync(async records => Assert.Equal(2, await records.ClassAttendances.CountAsync(row => row.ClassId == cast.Class)));
    }

    [Fact]
    public async Task A_badge_that_names_nobody_adds_nobody()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var answer = await browser.PostAsync($"{Classes}/{cast.Class}/attendances", new() { ["EmployerId"] = cast.Employer.ToString(), ["Badge"] = "ZZ-<9>" });

        Assert.Equal(422, answer.Status);
        Assert.Contains("Nobody at that employer has the badge number ZZ-<9>.", answer.Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("teachers")]
    [InlineData("scorers")]
    public async Task Only_who_is_appointed_on_the_day_teaches_or_scores(string what)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        var former = await shared.Site.PersonAsync("Rafe Lindqvist");
        await shared.Site.AddAsync(ProgrammeCast.Appoint(former, AppointedRole.Instructor, endsOn: ProgrammeCast.Today.AddDays(-13)));
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var path = $"{Classes}/{cast.Class}/{what}";

        Assert.Equal(303, (await browser.PostAsync(path, Instructor(cast.Teacher))).Status);
        Assert.Equal(303, (await browser.PostAsync(path, Instructor(cast.Teacher))).Status);
        Assert.Equal(422, (await browser.PostAsync(path, Instructor(former))).Status);
        Assert.Equal(422, (await browser.PostAsync(path, Instructor(cast.Lead))).Status);
        Assert.Equal(422, (await browser.PostAsync(path, [])).Status);
        Assert.Equal(400, (await browser.PostExactlyAsync(path, [.. Instructor(cast.Scorer)])).Status);
    }

    [Fact]
    public async Task A_class_that_does_not_exist_is_not_found()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var path = $"{Classes}/{Guid.CreateVersion7()}";

        Assert.Equal(404, (await browser.GetAsync(path)).Status);
        Assert.Equal(404, (await browser.PostAsync($"{path}/teachers", Instructor(cast.Teacher))).Status);
        Assert.Equal(404, (await browser.PostAsync($"{path}/attendances", [])).Status);
    }
}
