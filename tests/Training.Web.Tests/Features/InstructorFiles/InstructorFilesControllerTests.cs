using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.InstructorFiles;

public sealed class InstructorFilesControllerTests(SharedSite shared)
{
    private static string File(Guid person, string what = "") => $"/en/programme/instructors/{person}{what}";

    private static List<KeyValuePair<string, string>> Competence(Guid id, params string[] what) =>
    [
        new("Id", id.ToString()), new("CourseId", "handler"), new("StartsOn", "2026-01-01"), new("EndsOn", "2027-01-10"), new("Evidence", "Scored six sheets with a lead."),
        .. what.Select(one => new KeyValuePair<string, string>("For", one)),
    ];

    private async Task<Guid> NewcomerAsync()
    {
        var id = await shared.Site.PersonAsync("Hollis Drane");
        await shared.Site.AddAsync(ProgrammeCast.Appoint(id, AppointedRole.Instructor));
        return id;
    }

    private static async Task<Reply> PostAsync(PlainBrowser browser, string path, string page, List<KeyValuePair<string, string>> fields) =>
        await browser.PostAsync(path, fields.ToDictionary(field => field.Key, field => field.Value, StringComparer.Ordinal), page);

    [Fact]
    public async Task Until_a_file_is_made_and_stated_nobody_is_put_to_a_class_and_the_page_says_what_to_do()
    {
        var (cast, newcomer) = (await ProgrammeCast.CreateAsync(shared.Site), await NewcomerAsync());
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        using var instructor = await shared.Site.SignInAsync(newcomer);
        var classPage = $"/en/programme/classes/{cast.Class}";
        Task<Reply> AssignAsync() => lead.PostAsync($"{classPage}/scorers", new() { ["InstructorId"] = newcomer.ToString() }, classPage);

        var without = await AssignAsync();
        var kept = await PostAsync(lead, File(newcomer, "/competences"), File(newcomer), Competence(Guid.CreateVersion7(), "Score-Model"));
        var unstated = await AssignAsync();
        var own = await instructor.GetAsync("/en/my/instructor-file");
        var stated = await instructor.PostAsync("/en/my/instructor-file/statements", new() { ["id"] = Guid.CreateVersion7().ToString() }, "/en/my/instructor-file");
        // The class was held twelve days ago: what is stated today does not reach back.
        await shared.Site.RecordAsync(records => records.InstructorStatements.Where(row => row.PersonId == newcomer)
            .ExecuteUpdateAsync(set => set.SetProperty(row => row.StatedOn, new DateOnly(2026, 11, 1))));
        var assigned = await AssignAsync();

        Assert.Equal((422, 303, 422, 303, 303), (without.Status, kept.Status, unstated.Status, stated.Status, assigned.Status));
        Assert.Contains("This instructor has no file yet", without.Html, StringComparison.Ordinal);
        Assert.Contains("A lead makes it under Instructors", without.Html, StringComparison.Ordinal);
        Assert.Contains("The instructor has not stated yet that nothing stands in the way.", unstated.Html, StringComparison.Ordinal);
        Assert.Contains("Scored six sheets with a lead.", own.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("name=\"Evidence\"", own.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_live_sheet_is_not_started_by_who_is_competent_on_the_model_only()
    {
        var newcomer = await NewcomerAsync();
        var lead = await shared.Site.AppointedAsync(AppointedRole.ProgrammeLead);
        await shared.Site.AddAsync(
            new InstructorCompetence
            {
                Id = Guid.CreateVersion7(), EntryId = Guid.CreateVersion7(), PersonId = newcomer, CourseId = "handler", Duty = Duty.Score, Subject = Subject.Model, StartsOn = new(2026, 1, 1),
                EndsOn = new(2027, 1, 10), Evidence = "Scored with a lead.", LeadId = lead, KeptAt = RunningSite.Now,
            },
            new InstructorStatement { Id = Guid.CreateVersion7(), PersonId = newcomer, StatedOn = new(2026, 6, 1), KeptAt = RunningSite.Now });
        var room = await ClassRoom.OpenAsync(shared.Site, instructorId: newcomer);
        using var browser = await room.SignInAsync();
        var watcher = await shared.Site.AppointedAsync(AppointedRole.ProgrammeLead);

        await room.ScoreAsync(browser, new('d', room.Checklist.Steps.Count));
        var live = await browser.PostAsync(room.StartPath, ClassRoom.LiveForm(watcher), room.StartPath);
        var spanish = await browser.PostAsync(room.StartPath, new(ClassRoom.Form()) { ["Language"] = "es" }, room.StartPath);

        Assert.Equal((422, 422), (live.Status, spanish.Status));
        Assert.Contains("No competence to score “handler” on a live snake is written down for that day.", live.Html, StringComparison.Ordinal);
        Assert.Contains("Do not bring the snake.", live.Html, StringComparison.Ordinal);
        Assert.Contains("This instructor does not score in the language", spanish.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_conflict_with_the_candidate_is_told_before_the_form_and_stops_the_sheet()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        var lead = await shared.Site.AppointedAsync(AppointedRole.ProgrammeLead);
        await shared.Site.AddAsync(new InstructorConflict
        {
            Id = Guid.CreateVersion7(), PersonId = room.InstructorId, OtherPersonId = room.CandidateId, EmployerId = null, Words = "Brothers.", StartsOn = new(2026, 3, 1), LeadId = lead, KeptAt = RunningSite.Now,
        });
        using var browser = await room.SignInAsync();

        var page = await browser.GetAsync(room.StartPath);
        var refused = await browser.PostAsync(room.StartPath, ClassRoom.Form(), room.StartPath);

        Assert.Contains("Something stands between this instructor and the candidate since 1 March 2026.", page.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("Brothers.", page.Html, StringComparison.Ordinal);
        Assert.Equal(422, refused.Status);
    }

    [Fact]
    public async Task What_ends_within_60_days_is_listed_and_a_lead_keeps_no_file_of_their_own()
    {
        var (cast, newcomer) = (await ProgrammeCast.CreateAsync(shared.Site), await NewcomerAsync());
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        await PostAsync(lead, File(newcomer, "/competences"), File(newcomer), Competence(Guid.CreateVersion7(), "Score-Live"));

        var list = await lead.GetAsync("/en/programme/instructors");
        var own = await PostAsync(lead, File(cast.Lead, "/competences"), File(newcomer), Competence(Guid.CreateVersion7(), "Teach-Model"));

        Assert.Contains("ends on 10 January 2027.", list.Html, StringComparison.Ordinal);
        Assert.Equal(422, own.Status);
        await shared.Site.RecordAsync(async records => Assert.False(await records.InstructorCompetences.AnyAsync(row => row.PersonId == cast.Lead)));
    }

    [Fact]
    public async Task What_is_missing_is_told_and_a_conflict_is_with_an_employer_or_one_of_its_people()
    {
        var (cast, newcomer) = (await ProgrammeCast.CreateAsync(shared.Site), await NewcomerAsync());
        using var lead = await shared.Site.SignInAsync(cast.Lead);
        Dictionary<string, string> Conflict(string badge) => new()
        {
            ["Id"] = Guid.CreateVersion7().ToString(), ["EmployerId"] = cast.Employer.ToString(), ["Badge"] = badge, ["Words"] = "Cousins.", ["ConflictStartsOn"] = "2026-03-01",
        };

        var nothing = await PostAsync(lead, File(newcomer, "/competences"), File(newcomer), Competence(Guid.CreateVersion7()));
        var unknown = await lead.PostAsync(File(newcomer, "/conflicts"), Conflict("nobody"), File(newcomer));
        var one = await lead.PostAsync(File(newcomer, "/conflicts"), Conflict($"SF-{cast.Worker:N}"[..12]), File(newcomer));
        var all = await lead.PostAsync(File(newcomer, "/conflicts"), Conflict(""), File(newcomer));
        var page = await lead.GetAsync(File(newcomer));

        Assert.Equal((422, 422, 303, 303), (nothing.Status, unknown.Status, one.Status, all.Status));
        Assert.Contains("Tick at least one.", nothing.Html, StringComparison.Ordinal);
        Assert.Contains("This employer has no badge number nobody.", unknown.Html, StringComparison.Ordinal);
        Assert.Contains("Íñigo Peña-Ruiz", page.Html, StringComparison.Ordinal);
        Assert.Contains($"Salt Fork Wind {cast.Employer}", page.Html, StringComparison.Ordinal);
    }
}
