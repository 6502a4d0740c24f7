using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.Scoring;

public sealed class CandidateWordsControllerTests(SharedSite shared)
{
    private static Dictionary<string, string> Word(string word, string because = "", string name = "Ileana Prado-Whitt", Guid? id = null) => new(StringComparer.Ordinal)
    {
        ["Id"] = (id ?? Guid.CreateVersion7()).ToString(), ["Word"] = word, ["Because"] = because, ["CandidateName"] = name,
    };

    private async Task<(ClassRoom Room, PlainBrowser Browser, string Sheet)> SignedAsync()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        var browser = await room.SignInAsync();
        return (room, browser, await room.ScoreAsync(browser, new('d', room.Checklist.Steps.Count)));
    }

    private async Task<(CandidateWordRecord? Word, AppealCase? Appeal)> KeptAsync(ClassRoom room, string sheet)
    {
        CandidateWordRecord? word = null;
        AppealCase? appeal = null;
        await shared.Site.RecordAsync(async records =>
        {
            var id = ClassRoom.IdOf(sheet);
            var row = await records.Scoresheets.SingleAsync(one => one.FormId == id);
            word = await records.CandidateWords.AsNoTracking().SingleOrDefaultAsync(one => one.ScoresheetId == row.Id);
            appeal = (await records.AppealsOfAsync(room.CandidateId, default)).SingleOrDefault();
        });
        return (word, appeal);
    }

    [Fact]
    public async Task A_candidate_agrees_with_a_typed_name_and_the_sheet_stays_as_it_was()
    {
        var (room, browser, sheet) = await SignedAsync();
        using var _ = browser;

        var before = await browser.GetAsync(sheet);
        var said = await browser.PostAsync($"{sheet}/candidate-word", Word("Agreed"), sheet);
        var after = await browser.GetAsync(sheet);
        var (word, appeal) = await KeptAsync(room, sheet);

        Assert.Contains("Hand it to Ileana Prado-Whitt for their word", before.Html, StringComparison.Ordinal);
        Assert.Equal(303, said.Status);
        Assert.Contains("Agrees with what was written.", after.Html, StringComparison.Ordinal);
        Assert.Equal((CandidateWord.Agreed, "Ileana Prado-Whitt", null, room.InstructorId), (word!.Word, word.SignedName, word.Reason, word.InstructorId));
        Assert.Null(appeal);
    }

    [Fact]
    public async Task An_objection_opens_an_appeal_by_itself_and_once()
    {
        var (room, browser, sheet) = await SignedAsync();
        using var _ = browser;
        var word = Word("Objected", "The tongs were loose.");

        Assert.Equal(303, (await browser.PostAsync($"{sheet}/candidate-word", word, sheet)).Status);
        Assert.Equal(303, (await browser.PostAsync($"{sheet}/candidate-word", word, "/en/class-days")).Status);
        Assert.Equal(409, (await browser.PostAsync($"{sheet}/candidate-word", Word("Agreed"), "/en/class-days")).Status);

        var (kept, appeal) = await KeptAsync(room, sheet);
        Assert.Equal(CandidateWord.Objected, kept!.Word);
        Assert.Equal(("The tongs were loose.", room.InstructorId), (appeal!.Appeal.Words, appeal.Appeal.EnteredById));
        Assert.Contains("The objection is an appeal. A lead takes it up within 7 days.", (await browser.GetAsync(sheet)).Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_instructor_writes_why_a_candidate_did_not_sign()
    {
        var (room, browser, sheet) = await SignedAsync();
        using var _ = browser;

        var without = await browser.PostAsync($"{sheet}/candidate-word", Word("DidNotSign"), sheet);
        var with = await browser.PostAsync($"{sheet}/candidate-word", Word("DidNotSign", "Called away to a bite on site."), sheet);
        var (word, appeal) = await KeptAsync(room, sheet);

        Assert.Equal((422, 303), (without.Status, with.Status));
        Assert.Contains("Write why the candidate did not sign.", without.Html, StringComparison.Ordinal);
        Assert.Equal((CandidateWord.DidNotSign, null, "Called away to a bite on site."), (word!.Word, word.SignedName, word.Reason));
        Assert.Null(appeal);
    }

    [Theory]
    [InlineData("Agreed", "", "", "Type your name to sign")]
    [InlineData("Objected", " ", "Ileana Prado-Whitt", "Write why you object.")]
    [InlineData("", "", "Ileana Prado-Whitt", "Choose one of the three.")]
    public async Task What_is_missing_is_told_and_what_was_typed_stays(string word, string because, string name, string told)
    {
        var (room, browser, sheet) = await SignedAsync();
        using var _ = browser;

        var answer = await browser.PostAsync($"{sheet}/candidate-word", Word(word, because, name), sheet);

        Assert.Equal(422, answer.Status);
        Assert.Contains(told, answer.Html, StringComparison.Ordinal);
        Assert.Null((await KeptAsync(room, sheet)).Word);
    }

    [Fact]
    public async Task A_sheet_that_is_not_signed_takes_no_word()
    {
        var room = await ClassRoom.OpenAsync(shared.Site);
        using var browser = await room.SignInAsync();
        var sheet = await room.StartAsync(browser);

        var answer = await browser.PostAsync($"{sheet}/candidate-word", Word("Agreed"), "/en/class-days");

        Assert.Equal((303, sheet), (answer.Status, answer.Location));
    }

    [Fact]
    public async Task What_was_set_aside_is_no_try_and_another_scorer_repeats_it()
    {
        var (room, browser, sheet) = await SignedAsync();
        using var _ = browser;
        var other = await shared.Site.AppointedAsync(AppointedRole.Instructor, "Nestor Güereña");
        await shared.Site.AddAsync(new ClassScorer { ClassId = room.ClassId, InstructorId = other });
        var lead = await shared.Site.AppointedAsync(AppointedRole.ProgrammeLead);
        Assert.Equal(303, (await browser.PostAsync($"{sheet}/candidate-word", Word("Objected", "The tongs were loose."), sheet)).Status);
        await shared.Site.RecordAsync(async records =>
        {
            var appeal = (await records.AppealsOfAsync(room.CandidateId, default)).Single().Appeal;
            await records.TakeUpAsync(appeal.Id, lead, ClassRoom.Today, null, RunningSite.Now, default);
            Assert.IsType<Kept.Stored>(await records.DecideAsync(
                new()
                {
                    AppealId = appeal.Id, Outcome = Certification.AppealOutcome.Upheld, Remedy = Certification.AppealRemedy.SetAside, Reason = "They were.", LeadId = lead,
                    DecidedOn = ClassRoom.Today, KeptAt = RunningSite.Now,
                },
                null, default));
        });
        using var another = await shared.Site.SignInAsync(other);

        var refused = await browser.PostAsync(room.StartPath, ClassRoom.Form(), room.StartPath);
        var repeated = await room.ScoreAsync(another, new('d', room.Checklist.Steps.Count));
        var allowed = await browser.PostAsync(room.StartPath, ClassRoom.Form(), room.StartPath);

        Assert.Equal(422, refused.Status);
        Assert.Contains("A sheet of yours about this person was set aside on appeal.", refused.Html, StringComparison.Ordinal);
        var number = 0;
        await shared.Site.RecordAsync(async records =>
        {
            var id = ClassRoom.IdOf(repeated);
            number = await records.Scoresheets.Where(one => one.FormId == id).Select(one => one.Try).SingleAsync();
        });
        Assert.Equal(1, number);
        Assert.Equal(303, allowed.Status);
    }
}
