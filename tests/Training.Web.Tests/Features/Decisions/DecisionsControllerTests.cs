using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Decisions;

public sealed class DecisionsControllerTests(SharedSite shared)
{
    private static string Path(Guid person, string scheme = "handler", string tag = "en") => $"/{tag}/programme/people/{person}/decisions/{scheme}";

    private static Dictionary<string, string> Grant(Guid id) => new() { ["Id"] = id.ToString(), ["Verdict"] = "Grant" };

    private static Dictionary<string, string> Refuse(Guid id, string reason) => new() { ["Id"] = id.ToString(), ["Verdict"] = "Refuse", ["Reason"] = reason };

    private async Task<List<DecisionRecord>> DecisionsAsync(Guid person)
    {
        List<DecisionRecord> found = [];
        await shared.Site.RecordAsync(async records => found = await records.Decisions.AsNoTracking()
            .Where(decision => decision.PersonId == person && decision.SchemeId == "handler").ToListAsync());
        return found;
    }

    private async Task<int> PapersAsync(Guid decision)
    {
        var count = 0;
        await shared.Site.RecordAsync(async records => count = await records.Papers.CountAsync(paper => paper.DecisionId == decision));
        return count;
    }

    [Fact]
    public async Task A_complete_case_waits_and_shows_its_evidence_beside_what_is_asked()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync();
        await cast.TeachAsync(cast.Teacher);
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var (list, page) = (await browser.GetAsync("/en/programme/decisions"), await browser.GetAsync(Path(cast.Worker)));

        Assert.Contains(Path(cast.Worker), list.Html, StringComparison.Ordinal);
        Assert.Equal(200, page.Status);
        Assert.Contains("Íñigo Peña-Ruiz has everything that", page.Html, StringComparison.Ordinal);
        Assert.Contains("current through 25 November 2027", page.Html, StringComparison.Ordinal);
        Assert.Contains("Scored by Priya Nand", page.Html, StringComparison.Ordinal);
        Assert.Contains("Wanda Trujillo", page.Html, StringComparison.Ordinal);
        Assert.Contains("Odalys Ferrante", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_form_twice_is_one_decision_and_one_paper()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site, "Deirdre O’Shaughnessy-D’Arcy");
        await cast.PassEverythingAsync();
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var id = Guid.CreateVersion7();

        var first = await browser.PostAsync(Path(cast.Worker), Grant(id));
        var second = await browser.PostAsync(Path(cast.Worker), Grant(id));

        Assert.Equal((303, 303), (first.Status, second.Status));
        Assert.Equal($"/en/programme/people/{cast.Worker}", first.Location);
        Assert.Equal(id, Assert.Single(await DecisionsAsync(cast.Worker)).Id);
        Assert.Equal(1, await PapersAsync(id));
        var page = await browser.GetAsync(first.Location!);
        Assert.Contains("Granted on 25 November 2026 by Odalys Ferrante.", page.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sent_again_after_a_stop_between_decision_and_paper_it_makes_the_paper()
    {
        // Of its own: a leaf of the log is left that belongs to no paper.
        using var site = RunningSite.Start();
        var cast = await ProgrammeCast.CreateAsync(site);
        await cast.PassEverythingAsync();
        using var browser = await site.SignInAsync(cast.Lead);
        var id = Guid.CreateVersion7();
        await browser.PostAsync(Path(cast.Worker), Grant(id));
        await site.RecordAsync(async records =>
        {
            var papers = records.Papers.Where(paper => paper.DecisionId == id).Select(paper => paper.Id);
            await records.LogOpenings.Where(opening => papers.Contains(opening.PaperId)).ExecuteDeleteAsync();
            await records.PaperCredentials.Where(credential => papers.Contains(credential.PaperId)).ExecuteDeleteAsync();
            await records.Renderings.Where(file => records.Papers.Any(paper => paper.Id == file.PaperId && paper.DecisionId == id)).ExecuteDeleteAsync();
            await records.Papers.Where(paper => paper.DecisionId == id).ExecuteDeleteAsync();
        });

        Assert.Equal(303, (await browser.PostAsync(Path(cast.Worker), Grant(id))).Status);
        await site.RecordAsync(async records => Assert.Equal(1, await records.Papers.CountAsync(paper => paper.DecisionId == id)));
    }

    [Fact]
    public async Task Two_leads_at_once_open_one_period()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync();
        using var one = await shared.Site.SignInAsync(cast.Lead);
        using var other = await shared.Site.SignInAsync(cast.OtherLead);

        var answers = await Task.WhenAll(
            one.PostAsync(Path(cast.Worker), Grant(Guid.CreateVersion7())), other.PostAsync(Path(cast.Worker), Grant(Guid.CreateVersion7())));

        Assert.Single(answers, answer => answer.Status == 303);
        Assert.Contains(answers.Single(answer => answer.Status != 303).Status, new[] { 409, 422 });
        Assert.Single(await DecisionsAsync(cast.Worker));
    }

    [Fact]
    public async Task The_same_id_with_another_content_is_a_conflict_and_the_first_stays()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync();
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var id = Guid.CreateVersion7();
        await browser.PostAsync(Path(cast.Worker), Refuse(id, "Come back with a drill."));

        var answer = await browser.PostAsync(Path(cast.Worker), Grant(id));
        var otherWords = await browser.PostAsync(Path(cast.Worker), Refuse(id, "Other words."));

        Assert.Equal((409, 409), (answer.Status, otherWords.Status));
        Assert.Contains("it refused on 25 November 2026", answer.Html, StringComparison.Ordinal);
        Assert.Contains("Other words.", otherWords.Html, StringComparison.Ordinal);
        Assert.Equal(DecisionOutcome.Refused, Assert.Single(await DecisionsAsync(cast.Worker)).Outcome);
    }

    [Fact]
    public async Task A_try_that_one_scorer_passed_and_another_failed_is_not_granted_and_the_lead_reads_why()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync();
        var room = await ClassRoom.OpenAsync(shared.Site, instructorId: cast.Scorer);
        await shared.Site.AddAsync(
            new ClassAttendance { ClassId = room.ClassId, PersonId = cast.Worker }, new ClassScorer { ClassId = room.ClassId, InstructorId = cast.Teacher });
        var start = $"/en/class-days/{room.ClassId}/candidates/{cast.Worker}/scoresheets";
        // What was passed before is too old to count; today two score the same try.
        await shared.Site.RecordAsync(async records => await records.Scoresheets
            .Where(sheet => sheet.CandidateId == cast.Worker && sheet.ChecklistId == "bite-drill")
            .ExecuteUpdateAsync(set => set.SetProperty(sheet => sheet.ScoredOn, ProgrammeCast.Today.AddYears(-3))));
        var form = new Dictionary<string, string>(ClassRoom.Form()) { ["Checklist"] = "bite-drill" };
        using var scorer = await shared.Site.SignInAsync(cast.Scorer);
        using var teacher = await shared.Site.SignInAsync(cast.Teacher);
        await room.ScoreAsync(scorer, "dddddddddddd", form, start);
        await room.ScoreAsync(teacher, "n", new(form) { ["Id"] = Guid.CreateVersion7().ToString(), ["Second"] = "model-1" }, start);
        using var lead = await shared.Site.SignInAsync(cast.Lead);

        var page = (await lead.GetAsync(Path(cast.Worker))).Html;
        Assert.Contains("Two instructors scored this try, and one of them did not pass it.", page, StringComparison.Ordinal);
        Assert.Contains("Dos instructores evaluaron este intento", (await lead.GetAsync(Path(cast.Worker, tag: "es"))).Html, StringComparison.Ordinal);
        Assert.Equal(422, (await lead.PostAsync(Path(cast.Worker), Grant(Guid.CreateVersion7()))).Status);
        Assert.DoesNotContain(Path(cast.Worker), (await lead.GetAsync("/en/programme/decisions")).Html, StringComparison.Ordinal);

        await room.ScoreAsync(scorer, "dddddddddddd", new(form) { ["Id"] = Guid.CreateVersion7().ToString() }, start);
        Assert.Equal(303, (await lead.PostAsync(Path(cast.Worker), Grant(Guid.CreateVersion7()))).Status);
    }

    [Fact]
    public async Task A_refused_case_waits_no_longer_and_its_reason_is_shown()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync();
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var answer = await browser.PostAsync(Path(cast.Worker), Refuse(Guid.CreateVersion7(), "Reported twice from site."));

        Assert.Equal(303, answer.Status);
        Assert.Contains("The lead wrote: Reported twice from site.", (await browser.GetAsync(answer.Location!)).Html, StringComparison.Ordinal);
        Assert.DoesNotContain(Path(cast.Worker), (await browser.GetAsync("/en/programme/decisions")).Html, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" \n ")]
    public async Task A_refusal_without_a_reason_is_not_kept(string reason)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync();
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var answer = await browser.PostAsync(Path(cast.Worker), Refuse(Guid.CreateVersion7(), reason));

        Assert.Equal(422, answer.Status);
        Assert.Contains("Write why.", answer.Html, StringComparison.Ordinal);
        Assert.Empty(await DecisionsAsync(cast.Worker));
    }

    [Fact]
    public async Task A_reason_that_is_too_long_stays_in_the_form()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var reason = new string('x', Bounds.Reason + 1);

        var answer = await browser.PostAsync(Path(cast.Worker), Refuse(Guid.CreateVersion7(), reason));

        Assert.Equal(422, answer.Status);
        Assert.Contains(reason, answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_rules_do_not_allow_is_refused_with_every_reason_and_nothing_is_written()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var answer = await browser.PostAsync(Path(cast.Worker), Grant(Guid.CreateVersion7()));

        Assert.Equal(422, answer.Status);
        Assert.Contains("Nothing was granted", answer.Html, StringComparison.Ordinal);
        Assert.Contains("here is no result yet", answer.Html, StringComparison.Ordinal);
        Assert.Contains("ever held", answer.Html, StringComparison.Ordinal);
        Assert.Empty(await DecisionsAsync(cast.Worker));
    }

    [Fact]
    public async Task Nobody_decides_about_themselves()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync();
        await shared.Site.RecordAsync(records => records.KeepAsync(ProgrammeCast.Appoint(cast.Worker, AppointedRole.ProgrammeLead), default));
        using var browser = await shared.Site.SignInAsync(cast.Worker);

        var page = await browser.GetAsync(Path(cast.Worker));
        var granted = await browser.PostAsync(Path(cast.Worker), Grant(Guid.CreateVersion7()));
        var refused = await browser.PostAsync(Path(cast.Worker), Refuse(Guid.CreateVersion7(), "Not me."));

        Assert.Contains("This is about you. Another lead must decide.", page.Html, StringComparison.Ordinal);
        Assert.Equal((422, 422), (granted.Status, refused.Status));
        Assert.Empty(await DecisionsAsync(cast.Worker));
    }

    [Fact]
    public async Task A_lead_who_taught_or_scored_is_told_so_and_another_decides()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync(scorer: cast.OtherLead);
        await cast.TeachAsync(cast.Lead);
        using var taught = await shared.Site.SignInAsync(cast.Lead);
        using var scored = await shared.Site.SignInAsync(cast.OtherLead);

        var (ofTeacher, ofScorer) = (await taught.GetAsync(Path(cast.Worker)), await scored.GetAsync(Path(cast.Worker)));

        Assert.Contains("You taught this person. Another lead must decide.", ofTeacher.Html, StringComparison.Ordinal);
        Assert.Contains("You scored a result that the decision rests on.", ofScorer.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("name=\"Verdict\"", ofTeacher.Html, StringComparison.Ordinal);
        Assert.Equal(422, (await taught.PostAsync(Path(cast.Worker), Grant(Guid.CreateVersion7()))).Status);
    }

    [Theory]
    [InlineData("Ольга 🐍")]
    [InlineData("يارا 🐍 السالم")]
    public async Task A_name_that_cannot_be_printed_stops_the_grant_before_anything_is_written(string name)
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site, name);
        await cast.PassEverythingAsync();
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var answer = await browser.PostAsync(Path(cast.Worker), Grant(Guid.CreateVersion7()));

        Assert.Equal(422, answer.Status);
        Assert.Contains("the certificate cannot be printed", answer.Html, StringComparison.Ordinal);
        Assert.Empty(await DecisionsAsync(cast.Worker));
    }

    [Fact]
    public async Task Who_and_what_does_not_exist_is_not_found_and_a_form_without_its_token_is_refused()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync();
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        Assert.Equal(404, (await browser.GetAsync(Path(Guid.CreateVersion7()))).Status);
        Assert.Equal(404, (await browser.GetAsync(Path(cast.Worker, "no-such-scheme"))).Status);
        Assert.Equal(404, (await browser.PostAsync(Path(Guid.CreateVersion7()), Grant(Guid.CreateVersion7()))).Status);
        Assert.Equal(400, (await browser.PostExactlyAsync(Path(cast.Worker), [.. Grant(Guid.CreateVersion7())])).Status);
        Assert.Equal(400, (await browser.PostAsync(Path(cast.Worker), Grant(Guid.Empty))).Status);
        Assert.Equal(400, (await browser.PostAsync(Path(cast.Worker), new Dictionary<string, string> { ["Id"] = Guid.CreateVersion7().ToString() })).Status);
        Assert.Empty(await DecisionsAsync(cast.Worker));
    }

    [Fact]
    public async Task Where_only_the_reason_for_a_scorer_who_taught_is_missing_a_lead_writes_it_and_the_evidence_shows_it()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync();
        await cast.TeachAsync(cast.Scorer);
        using var browser = await shared.Site.SignInAsync(cast.Lead);
        var sheets = await SheetsAsync(cast.Worker);
        var path = $"{Path(cast.Worker)}/separation-reasons";

        var before = await browser.GetAsync(Path(cast.Worker));
        var blank = await browser.PostAsync(path, Reason(sheets[0], " "));
        foreach (var sheet in sheets) Assert.Equal(303, (await browser.PostAsync(path, Reason(sheet, "Remote range; nobody else came."))).Status);
        var after = await browser.GetAsync(Path(cast.Worker));

        Assert.Contains(Path(cast.Worker), (await browser.GetAsync("/en/programme/decisions")).Html, StringComparison.Ordinal);
        Assert.Contains("No written reason was recorded.", before.Html, StringComparison.Ordinal);
        Assert.Equal(422, blank.Status);
        Assert.Contains("has everything that", after.Html, StringComparison.Ordinal);
        Assert.Contains("Written reason: Remote range; nobody else came.", after.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_reason_is_written_by_a_lead_who_may_not_decide_nor_for_another_persons_sheet()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        var other = await ProgrammeCast.CreateAsync(shared.Site);
        await cast.PassEverythingAsync(scorer: cast.OtherLead);
        await cast.TeachAsync(cast.OtherLead);
        await other.PassEverythingAsync();
        using var taught = await shared.Site.SignInAsync(cast.OtherLead);
        using var free = await shared.Site.SignInAsync(cast.Lead);
        var path = $"{Path(cast.Worker)}/separation-reasons";
        var own = (await SheetsAsync(cast.Worker))[0];

        Assert.Equal(422, (await taught.PostAsync(path, Reason(own, "I know them."))).Status);
        Assert.Equal(404, (await free.PostAsync(path, Reason((await SheetsAsync(other.Worker))[0], "x"))).Status);
        Assert.Equal(400, (await free.PostExactlyAsync(path, [.. Reason(own, "x")])).Status);
        await shared.Site.RecordAsync(async records => Assert.False(await records.SeparationReasons
            .AnyAsync(reason => records.Scoresheets.Any(sheet => sheet.Id == reason.ScoresheetId && sheet.CandidateId == cast.Worker))));
    }

    private static Dictionary<string, string> Reason(Guid sheet, string reason) => new() { ["SheetId"] = sheet.ToString(), ["Reason"] = reason };

    private async Task<List<Guid>> SheetsAsync(Guid person)
    {
        List<Guid> sheets = [];
        await shared.Site.RecordAsync(async records => sheets = await records.Scoresheets.Where(sheet => sheet.CandidateId == person)
            .Select(sheet => sheet.FormId).ToListAsync());
        return sheets;
    }

    [Fact]
    public async Task The_case_reads_in_spanish_too()
    {
        var cast = await ProgrammeCast.CreateAsync(shared.Site);
        using var browser = await shared.Site.SignInAsync(cast.Lead);

        var page = await browser.GetAsync(Path(cast.Worker, tag: "es"));

        Assert.Contains("odavía no hay resultado", page.Html, StringComparison.Ordinal);
        Assert.Contains("Hoy no se le puede conceder", page.Html, StringComparison.Ordinal);
    }
}
