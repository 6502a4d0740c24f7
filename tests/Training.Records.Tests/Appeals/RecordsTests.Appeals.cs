using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static NewAppeal Contesting(Cast cast, AppealMatter matter, Guid contestedId, string words = "The lid was closed.", Guid? id = null) => new(
        id ?? Guid.CreateVersion7(), cast.Worker, matter, contestedId, words, cast.Worker, Cast.Today, Cast.Zone);

    private static AppealDecisionRecord Outcome(
        Guid appealId, Guid lead, AppealOutcome outcome = AppealOutcome.Upheld, AppealRemedy? remedy = AppealRemedy.SetAside) => new()
    {
        AppealId = appealId, Outcome = outcome, Remedy = remedy, Reason = "The drawing shows the lid closed.", LeadId = lead, DecidedOn = Cast.Today, KeptAt = Cast.Now.AddHours(1),
    };

    private static OutgoingMail LetterTo(Cast cast) => new()
    {
        Id = Guid.CreateVersion7(), PersonId = cast.Worker, Address = "inigo@example.org", Language = Language.Spanish, Subject = "Su apelación", Text = "Llegó.",
        MadeAt = Cast.Now, NextTryAt = Cast.Now,
    };

    private async Task<Guid> SignedSheetAsync(Cast cast, bool isPassed = true)
    {
        await using var records = Database.Open();
        var sheet = cast.Sheet();
        Assert.IsType<Kept.Stored>(await records.KeepAsync(sheet, isPassed ? Cast.PassedSheet() : Cast.FailedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation));
        return sheet.Id;
    }

    private async Task<Guid> TakenUpAsync(Cast cast, AppealMatter matter, Guid contestedId)
    {
        await using var records = Database.Open();
        var appeal = Contesting(cast, matter, contestedId);
        Assert.IsType<Kept.Stored>(await records.KeepAsync(appeal, null, Cast.Now, Cancellation));
        Assert.IsType<Kept.Stored>(await records.TakeUpAsync(appeal.Id, cast.OtherLead, Cast.Today, null, Cast.Now, Cancellation));
        return appeal.Id;
    }

    [Fact]
    public async Task The_same_appeal_twice_is_one_with_one_receipt()
    {
        var cast = await Cast.CreateAsync(Database);
        var appeal = Contesting(cast, AppealMatter.Scoresheet, await SignedSheetAsync(cast));
        await using var records = Database.Open();

        Assert.Equal(new Kept.Stored(appeal.Id), await records.KeepAsync(appeal, LetterTo(cast), Cast.Now, Cancellation));
        Assert.Equal(new Kept.AlreadyStored(appeal.Id), await records.KeepAsync(appeal, LetterTo(cast), Cast.Now, Cancellation));
        Assert.Equal([RecordsProblems.OtherContent], Codes(await records.KeepAsync(appeal with { Words = "Other." }, LetterTo(cast), Cast.Now, Cancellation)));
        Assert.Equal([RecordsProblems.ContestedBefore], Codes(await records.KeepAsync(appeal with { Id = Guid.CreateVersion7() }, LetterTo(cast), Cast.Now, Cancellation)));
        Assert.Equal(1, await records.OutgoingMails.CountAsync(mail => mail.PersonId == cast.Worker, Cancellation));
    }

    [Fact]
    public async Task Nobody_contests_what_is_another_persons_or_was_granted()
    {
        var (cast, other) = (await Cast.CreateAsync(Database), await Cast.CreateAsync(Database));
        var (sheet, granted) = (await SignedSheetAsync(other), await cast.KeepGrantedAsync(Database));
        await using var records = Database.Open();

        Assert.Equal([RecordsProblems.NothingToContest], Codes(await records.KeepAsync(Contesting(cast, AppealMatter.Scoresheet, sheet), null, Cast.Now, Cancellation)));
        Assert.Equal([RecordsProblems.NothingToContest], Codes(await records.KeepAsync(Contesting(cast, AppealMatter.Decision, granted.Id), null, Cast.Now, Cancellation)));
        Assert.Equal([RecordsProblems.NothingToContest], Codes(await records.KeepAsync(Contesting(cast, AppealMatter.Complaint, sheet), null, Cast.Now, Cancellation)));
        Assert.Empty(await records.AppealsOfAsync(cast.Worker, Cancellation));
    }

    [Fact]
    public async Task Of_two_windows_that_contest_one_sheet_at_once_one_gets_through()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = await SignedSheetAsync(cast);

        var kept = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await records.KeepAsync(Contesting(cast, AppealMatter.Scoresheet, sheet), LetterTo(cast), Cast.Now, Cancellation);
        })));

        await using var after = Database.Open();
        Assert.Single(kept.OfType<Kept.Stored>());
        Assert.Single(await after.AppealsOfAsync(cast.Worker, Cancellation));
        Assert.Equal(1, await after.OutgoingMails.CountAsync(mail => mail.PersonId == cast.Worker, Cancellation));
    }

    [Fact]
    public async Task A_result_set_aside_is_no_evidence_any_more_and_past_decisions_stay()
    {
        var cast = await Cast.CreateAsync(Database);
        await KeepSittingAsync(cast, Cast.Now);
        var sheet = await SignedSheetAsync(cast);
        await using var records = Database.Open();
        var before = (await records.PersonFilesAsync([cast.Worker], Cancellation))[cast.Worker];
        var restsOn = before.Evidence.OfType<Evidence.OfPractical>().Single().ResultId;
        Assert.NotNull(await FindWaitingAsync(cast));
        var made = cast.Granted(1, [restsOn]);
        Assert.IsType<Kept.Stored>(await records.KeepAsync(made, Cast.Now, Cancellation));
        var appeal = await TakenUpAsync(cast, AppealMatter.Scoresheet, sheet);

        Assert.IsType<Kept.Stored>(await records.DecideAsync(Outcome(appeal, cast.OtherLead), LetterTo(cast), Cancellation));

        var after = (await records.PersonFilesAsync([cast.Worker], Cancellation))[cast.Worker];
        Assert.Empty(after.Evidence.OfType<Evidence.OfPractical>());
        Assert.Single(after.Evidence);
        Assert.Equal(restsOn, Assert.Single(Assert.IsType<Decision.Granted>((await records.FindDecisionAsync(made.Id, Cancellation))!.Made.Decision).RestsOn));
        Assert.Single(after.Held);
        var rested = Assert.Single(await records.RestedCasesAsync(Cancellation), one => one.AppealId == appeal);
        Assert.Equal((cast.Worker, 1, 0), (rested.PersonId, rested.Grants, rested.LiveSheets));
    }

    [Fact]
    public async Task A_case_no_longer_waits_once_what_it_stood_on_was_set_aside()
    {
        var cast = await Cast.CreateAsync(Database);
        await KeepSittingAsync(cast, Cast.Now);
        var sheet = await SignedSheetAsync(cast);
        Assert.NotNull(await FindWaitingAsync(cast));
        var appeal = await TakenUpAsync(cast, AppealMatter.Scoresheet, sheet);
        await using var records = Database.Open();

        Assert.IsType<Kept.Stored>(await records.DecideAsync(Outcome(appeal, cast.OtherLead), null, Cancellation));

        Assert.Null(await FindWaitingAsync(cast));
        Assert.DoesNotContain(await records.RestedCasesAsync(Cancellation), one => one.AppealId == appeal);
    }

    [Fact]
    public async Task A_lead_looks_once_at_what_had_rested_on_it_and_never_about_themselves()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = await SignedSheetAsync(cast);
        await using var records = Database.Open();
        var restsOn = (await records.PersonFilesAsync([cast.Worker], Cancellation))[cast.Worker].Evidence.Single().ResultId;
        Assert.IsType<Kept.Stored>(await records.KeepAsync(cast.Granted(1, [restsOn]), Cast.Now, Cancellation));
        var appeal = await TakenUpAsync(cast, AppealMatter.Scoresheet, sheet);
        SetAsideLookRecord Look(Guid lead, string finding) => new() { AppealId = appeal, LeadId = lead, Finding = finding, LookedOn = Cast.Today, KeptAt = Cast.Now };

        Assert.Equal([RecordsProblems.NothingSetAside], Codes(await records.KeepAsync(Look(cast.Lead, "Stands."), Cancellation)));
        Assert.IsType<Kept.Stored>(await records.DecideAsync(Outcome(appeal, cast.OtherLead), null, Cancellation));
        Assert.Contains(RecordsProblems.OwnAppeal, Codes(await records.KeepAsync(Look(cast.Worker, "Stands."), Cancellation)));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(Look(cast.Lead, "Suspended until the repeat."), Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(Look(cast.Lead, "Suspended until the repeat."), Cancellation));
        Assert.Equal([RecordsProblems.LookedBefore], Codes(await records.KeepAsync(Look(cast.OtherLead, "Stands."), Cancellation)));
        Assert.DoesNotContain(await records.RestedCasesAsync(Cancellation), one => one.AppealId == appeal);
    }

    [Fact]
    public async Task Who_taught_scored_or_decided_does_not_decide_the_appeal()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        // One lead who wears every hat: appointed as instructor too, scored, taught, and refused.
        records.Add(new Appointment { Id = Guid.CreateVersion7(), PersonId = cast.Instructor, StartsOn = new(2024, 1, 1), Role = AppointedRole.ProgrammeLead, Languages = [Language.English] });
        records.Add(new ClassTeaching { ClassId = cast.Class, InstructorId = cast.Instructor });
        await records.SaveChangesAsync(Cancellation);
        records.ChangeTracker.Clear();
        await SignedSheetAsync(cast);
        var refused = new MadeDecision(
            Guid.CreateVersion7(), cast.Worker, cast.CourseId, cast.CourseHash, new Decider.Lead(cast.Instructor), Cast.Today, Cast.Zone,
            new Decision.NotYet(Route.Grant, [new DecisionReason.RefusedByLead("Not safe yet.")]));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(refused, Cast.Now, Cancellation));
        var appeal = await TakenUpAsync(cast, AppealMatter.Decision, refused.Id);

        var kept = await records.DecideAsync(Outcome(appeal, cast.Instructor, remedy: AppealRemedy.DecideAnew), null, Cancellation);
        var leads = await records.IndependentLeadsAsync((await records.FindAppealAsync(appeal, Cancellation))!.Appeal, Cast.Today, Cancellation);

        Assert.Equal([RecordsProblems.TaughtAppellant, RecordsProblems.ScoredAppellant, RecordsProblems.MadeContestedDecision], Codes(kept));
        Assert.Contains(cast.Lead, leads);
        Assert.DoesNotContain(cast.Instructor, leads);
    }

    [Fact]
    public async Task A_decision_to_be_made_anew_waits_again_and_for_another_lead()
    {
        var cast = await Cast.CreateAsync(Database);
        await KeepSittingAsync(cast, Cast.Now);
        await SignedSheetAsync(cast);
        await DecideAsync(cast, new Decision.NotYet(Route.Grant, [new DecisionReason.RefusedByLead("Not safe yet.")]), Cast.Now.AddMinutes(5));
        await using var records = Database.Open();
        var refusal = await records.Decisions.Where(row => row.PersonId == cast.Worker).Select(row => row.Id).SingleAsync(Cancellation);
        Assert.Null(await FindWaitingAsync(cast));
        var appeal = await TakenUpAsync(cast, AppealMatter.Decision, refusal);

        Assert.IsType<Kept.Stored>(await records.DecideAsync(Outcome(appeal, cast.OtherLead, remedy: AppealRemedy.DecideAnew), null, Cancellation));

        Assert.NotNull(await FindWaitingAsync(cast));
        var evidence = (await records.PersonFilesAsync([cast.Worker], Cancellation))[cast.Worker].Evidence;
        var byTheSame = cast.Granted(1, [.. evidence.Select(one => one.ResultId)]);
        Assert.Equal([RecordsProblems.AnewByAnother], Codes(await records.KeepAsync(byTheSame, Cast.Now.AddHours(2), Cancellation)));
        var byAnother = byTheSame with { Id = Guid.CreateVersion7(), Decider = new Decider.Lead(cast.OtherLead) };
        Assert.IsType<Kept.Stored>(await records.KeepAsync(byAnother, Cast.Now.AddHours(2), Cancellation));
        Assert.Null(await FindWaitingAsync(cast));
    }

    [Fact]
    public async Task It_is_taken_up_once_never_by_the_appellant_and_before_it_is_decided()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var id = Guid.CreateVersion7();
        Assert.IsType<Kept.Stored>(await records.KeepAsync(Contesting(cast, AppealMatter.Complaint, id, id: id), null, Cast.Now, Cancellation));

        Assert.Equal([RecordsProblems.NotTakenUp], Codes(await records.DecideAsync(Outcome(id, cast.Lead, remedy: AppealRemedy.ToldOnly), null, Cancellation)));
        Assert.Equal([RecordsProblems.NotALead, RecordsProblems.OwnAppeal], Codes(await records.TakeUpAsync(id, cast.Worker, Cast.Today, null, Cast.Now, Cancellation)));
        Assert.IsType<Kept.Stored>(await records.TakeUpAsync(id, cast.Lead, Cast.Today, LetterTo(cast), Cast.Now, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.TakeUpAsync(id, cast.Lead, Cast.Today, LetterTo(cast), Cast.Now, Cancellation));
        Assert.Equal([RecordsProblems.TakenUpBefore], Codes(await records.TakeUpAsync(id, cast.OtherLead, Cast.Today, LetterTo(cast), Cast.Now, Cancellation)));
        Assert.Equal([RecordsProblems.RemedyUnfit], Codes(await records.DecideAsync(Outcome(id, cast.Lead), null, Cancellation)));
        Assert.IsType<Kept.Stored>(await records.DecideAsync(Outcome(id, cast.Lead, AppealOutcome.NotUpheld, null), LetterTo(cast), Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.DecideAsync(Outcome(id, cast.Lead, AppealOutcome.NotUpheld, null), LetterTo(cast), Cancellation));
        Assert.Equal([RecordsProblems.AppealDecidedBefore], Codes(await records.DecideAsync(Outcome(id, cast.OtherLead, AppealOutcome.NotUpheld, null), null, Cancellation)));
        Assert.Equal(2, await records.OutgoingMails.CountAsync(mail => mail.PersonId == cast.Worker, Cancellation));
    }

    [Fact]
    public async Task An_objection_is_kept_beside_the_sheet_and_opens_one_appeal()
    {
        var cast = await Cast.CreateAsync(Database);
        var formId = await SignedSheetAsync(cast, isPassed: false);
        await using var records = Database.Open();
        var sheet = await records.Scoresheets.AsNoTracking().SingleAsync(row => row.FormId == formId, Cancellation);
        var word = new CandidateWordRecord
        {
            Id = Guid.CreateVersion7(), ScoresheetId = sheet.Id, Word = CandidateWord.Objected, SignedName = "Íñigo Peña-Ruiz", Reason = "I closed the lid.",
            ContentHash = sheet.ContentHash, Language = Language.Spanish, InstructorId = cast.Instructor, KeptAt = Cast.Now,
        };
        var appeal = Contesting(cast, AppealMatter.Scoresheet, formId, "I closed the lid.", word.Id) with { EnteredById = cast.Instructor };

        Assert.IsType<Kept.Stored>(await records.KeepAsync(word, appeal, LetterTo(cast), Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(word, appeal, LetterTo(cast), Cancellation));

        var opened = Assert.Single(await records.AppealsOfAsync(cast.Worker, Cancellation));
        Assert.Equal((word.Id, cast.Instructor, "I closed the lid."), (opened.Appeal.Id, opened.Appeal.EnteredById, opened.Appeal.Words));
        Assert.Equal(1, await records.OutgoingMails.CountAsync(mail => mail.PersonId == cast.Worker, Cancellation));
        Assert.Equal(sheet.ContentHash, await records.Scoresheets.Where(row => row.FormId == formId).Select(row => row.ContentHash).SingleAsync(Cancellation));
    }

    [Fact]
    public async Task Open_appeals_are_listed_by_the_day_of_their_next_step()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var (first, second) = (Guid.CreateVersion7(), Guid.CreateVersion7());
        // The older one was taken up: its next step is due later than that of the younger one.
        await records.KeepAsync(Contesting(cast, AppealMatter.Complaint, first, id: first) with { ReceivedOn = Cast.Today.AddDays(-3) }, null, Cast.Now, Cancellation);
        await records.KeepAsync(Contesting(cast, AppealMatter.Complaint, second, id: second), null, Cast.Now, Cancellation);
        await records.TakeUpAsync(first, cast.Lead, Cast.Today, null, Cast.Now, Cancellation);

        var open = (await records.OpenAppealsAsync(Cancellation)).Where(one => one.Appeal.PersonId == cast.Worker).ToList();

        Assert.Equal([second, first], open.Select(one => one.Appeal.Id));
        Assert.Equal([Cast.Today.AddDays(7), Cast.Today.AddDays(27)], open.Select(one => one.Course.NextBy));
    }
}
