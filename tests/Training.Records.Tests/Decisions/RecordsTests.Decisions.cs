using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    [Fact]
    public async Task A_granted_decision_reads_back_with_evidence_exceptions_and_period()
    {
        var cast = await Cast.CreateAsync(Database);
        var sheet = cast.Sheet();
        var ofSitting = await cast.KeepPassedSittingAsync(Database);
        await using var records = Database.Open();
        var ofSheet = Assert.IsType<Kept.Stored>(await records.KeepAsync(sheet, Cast.PassedSheet(), Cast.Today, Cast.Zone, Cast.Now, Cancellation)).Id;
        var made = cast.Granted(1, [ofSheet, ofSitting]);
        var granted = (Decision.Granted)made.Decision with { Exceptions = [new(ofSheet, cast.Instructor, "Remote range.")] };
        made = made with { Decision = granted };

        Assert.Equal(new Kept.Stored(made.Id), await records.KeepAsync(made, Cast.Now, Cancellation));

        var stored = (await records.FindDecisionAsync(made.Id, Cancellation))!;
        var read = Assert.IsType<Decision.Granted>(stored.Made.Decision);
        Assert.Equal(granted.RestsOn, read.RestsOn);
        Assert.Equal(granted.Exceptions, read.Exceptions);
        Assert.Equal((granted.Route, granted.Period), (read.Route, read.Period));
        Assert.Equal(made with { Decision = read }, stored.Made);
    }

    [Fact]
    public async Task Every_reason_of_a_decision_not_yet_reads_back_as_it_was()
    {
        var cast = await Cast.CreateAsync(Database);
        var quiz = new Requirement.PassedQuiz("handler-quiz", new(6, DurationUnit.Months));
        var practical = new Requirement.PassedPractical("move-to-bucket", Subject.Live, new(90, DurationUnit.Days));
        DecisionReason[] reasons =
        [
            new DecisionReason.Missing(quiz), new DecisionReason.NotPassed(practical, cast.Class), new DecisionReason.TooOld(quiz, cast.Class, Cast.Today),
            new DecisionReason.NotHeld("awareness", Standing.Lapsed), new DecisionReason.NotHeld("awareness", null),
            new DecisionReason.ScorerTaught(practical, cast.Class, cast.Instructor, Cast.Today), new DecisionReason.DeciderNotIndependent(cast.Lead, Hat.Taught),
            new DecisionReason.LeadRequired(), new DecisionReason.TooEarly(Cast.Today), new DecisionReason.WhileSuspended(Cast.Today),
            new DecisionReason.RulesNotInForce(Cast.Today), new DecisionReason.Missing(new Requirement.Holds("awareness")),
        ];
        var made = cast.Granted(1, []) with { Decider = new Decider.Rule(), Decision = new Decision.NotYet(Route.Renewal, reasons) };
        await using var records = Database.Open();

        Assert.IsType<Kept.Stored>(await records.KeepAsync(made, Cast.Now, Cancellation));

        var read = Assert.IsType<Decision.NotYet>((await records.FindDecisionAsync(made.Id, Cancellation))!.Made.Decision);
        Assert.Equal(reasons, read.Reasons);
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(made, Cast.Now, Cancellation));
        Assert.Empty(await records.HeldCertificationsAsync(cast.Worker, Cancellation));
    }

    [Fact]
    public async Task The_same_decision_again_is_the_stored_one_and_another_under_its_id_is_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        var made = await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();

        Assert.Equal(new Kept.AlreadyStored(made.Id), await records.KeepAsync(made, Cast.Now.AddHours(1), Cancellation));
        Assert.Equal([RecordsProblems.OtherContent], Codes(await records.KeepAsync(made with { Zone = "America/Denver" }, Cast.Now, Cancellation)));
    }

    [Fact]
    public async Task Ten_decisions_at_once_open_one_period()
    {
        var cast = await Cast.CreateAsync(Database);
        var result = await cast.KeepPassedSittingAsync(Database);

        var kept = await Task.WhenAll(Enumerable.Range(0, 10).Select(_ => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await records.KeepAsync(cast.Granted(1, [result]), Cast.Now, Cancellation);
        })));

        Assert.Single(kept.OfType<Kept.Stored>());
        Assert.All(kept.OfType<Kept.Refused>(), refused => Assert.Equal([RecordsProblems.PeriodTaken], Codes(refused)));
        await using var read = Database.Open();
        Assert.Single(Assert.Single(await read.HeldCertificationsAsync(cast.Worker, Cancellation)).Periods);
        Assert.Equal(1, await read.Decisions.CountAsync(decision => decision.PersonId == cast.Worker, Cancellation));
    }

    [Fact]
    public async Task A_period_number_is_never_skipped()
    {
        var cast = await Cast.CreateAsync(Database);
        var result = await cast.KeepPassedSittingAsync(Database);
        await using var records = Database.Open();

        Assert.Equal([RecordsProblems.PeriodTaken], Codes(await records.KeepAsync(cast.Granted(2, [result]), Cast.Now, Cancellation)));
    }

    [Fact]
    public async Task A_decision_on_another_persons_result_or_by_somebody_not_appointed_is_refused()
    {
        var cast = await Cast.CreateAsync(Database);
        var stranger = await Cast.CreateAsync(Database);
        var foreign = await stranger.KeepPassedSittingAsync(Database);
        var made = cast.Granted(1, [foreign]) with { Decider = new Decider.Lead(cast.Instructor) };
        await using var records = Database.Open();

        Assert.Equal([RecordsProblems.NotALead, RecordsProblems.ResultUnknown], Codes(await records.KeepAsync(made, Cast.Now, Cancellation)));
        Assert.Null(await records.FindDecisionAsync(made.Id, Cancellation));
    }

    [Fact]
    public async Task What_leads_did_reads_back_in_the_certification_held()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        var suspension = new Suspension(Cast.Today, cast.Lead, "Bare hand near the head.", Cast.Today.AddDays(30), null);
        var reinstatement = new Reinstatement(Cast.Today.AddDays(5), cast.OtherLead, "Assessed again.");
        var later = suspension with { From = Cast.Today.AddDays(50), Deadline = Cast.Today.AddDays(80) };
        var withdrawal = new Withdrawal(Cast.Today.AddDays(60), cast.Lead, cast.OtherLead, "False scoresheet.");
        var (first, last) = (Guid.CreateVersion7(), Guid.CreateVersion7());
        await using var records = Database.Open();

        Assert.IsType<Kept.Stored>(await records.SuspendAsync(first, cast.Worker, cast.CourseId, suspension, Cast.Now, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.SuspendAsync(first, cast.Worker, cast.CourseId, suspension, Cast.Now, Cancellation));
        Assert.Equal([RecordsProblems.SuspendedAlready], Codes(await records.SuspendAsync(Guid.CreateVersion7(), cast.Worker, cast.CourseId, later, Cast.Now, Cancellation)));
        Assert.Equal([RecordsProblems.BeforeSuspension], Codes(await records.ReinstateAsync(
            cast.Worker, cast.CourseId, reinstatement with { On = Cast.Today.AddDays(-1) }, Cast.Now, Cancellation)));
        Assert.IsType<Kept.Stored>(await records.ReinstateAsync(cast.Worker, cast.CourseId, reinstatement, Cast.Now, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.ReinstateAsync(cast.Worker, cast.CourseId, reinstatement, Cast.Now, Cancellation));
        Assert.IsType<Kept.Stored>(await records.SuspendAsync(Guid.CreateVersion7(), cast.Worker, cast.CourseId, later, Cast.Now, Cancellation));
        Assert.IsType<Kept.Stored>(await records.WithdrawAsync(last, cast.Worker, cast.CourseId, withdrawal, Cast.Now, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.WithdrawAsync(last, cast.Worker, cast.CourseId, withdrawal, Cast.Now, Cancellation));

        var held = Assert.Single(await records.HeldCertificationsAsync(cast.Worker, Cancellation));
        Assert.Equal([suspension with { Reinstatement = reinstatement }, later], held.Suspensions);
        Assert.Equal([withdrawal], held.Withdrawals);
        Assert.Equal([new Period(1, Cast.Today, Cast.Today, Cast.Today.AddYears(1), Cast.Annual)], held.Periods);
    }

    [Fact]
    public async Task Eight_leads_at_once_suspend_once()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        var suspension = new Suspension(Cast.Today, cast.Lead, "Reported from site.", Cast.Today, null);

        var kept = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(async () =>
        {
            await using var records = Database.Open();
            return await records.SuspendAsync(Guid.CreateVersion7(), cast.Worker, cast.CourseId, suspension, Cast.Now, Cancellation);
        })));

        Assert.Single(kept.OfType<Kept.Stored>());
        Assert.All(kept.OfType<Kept.Refused>(), refused => Assert.Equal([RecordsProblems.SuspendedAlready], Codes(refused)));
    }

    [Fact]
    public async Task Nothing_is_suspended_reinstated_or_withdrawn_that_is_not_held()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var id = Guid.CreateVersion7();

        Assert.Equal([RecordsProblems.NothingHeld, RecordsProblems.NotALead], Codes(await records.SuspendAsync(
            id, cast.Worker, cast.CourseId, new(Cast.Today, cast.Instructor, "x", Cast.Today, null), Cast.Now, Cancellation)));
        Assert.Equal([RecordsProblems.NotSuspended], Codes(await records.ReinstateAsync(
            cast.Worker, cast.CourseId, new(Cast.Today, cast.Lead, "x"), Cast.Now, Cancellation)));
        Assert.Equal([RecordsProblems.SecondLeadRequired, RecordsProblems.NothingHeld], Codes(await records.WithdrawAsync(
            id, cast.Worker, cast.CourseId, new(Cast.Today, cast.Lead, cast.Lead, "x"), Cast.Now, Cancellation)));
    }

    [Fact]
    public async Task The_database_itself_forbids_a_withdrawal_by_one_lead()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        records.Add(new WithdrawalRecord
        {
            Id = Guid.CreateVersion7(), PersonId = cast.Worker, SchemeId = cast.CourseId, PeriodNumber = 1, WithdrawnOn = Cast.Today,
            LeadId = cast.Lead, ConfirmedById = cast.Lead, Reason = "x", KeptAt = Cast.Now,
        });

        await Assert.ThrowsAsync<DbUpdateException>(() => records.SaveChangesAsync(Cancellation));
    }

    [Fact]
    public async Task The_case_file_knows_who_taught_and_what_is_held()
    {
        var cast = await Cast.CreateAsync(Database);
        await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();
        records.Add(new ClassTeaching { ClassId = cast.Class, InstructorId = cast.Instructor });
        records.Add(new ClassTeaching { ClassId = cast.Class, InstructorId = cast.Worker });
        await records.SaveChangesAsync(Cancellation);

        var file = await records.FindCaseFileAsync(cast.Worker, SchemeOf(cast), Cancellation);

        Assert.Equal([new Teaching(cast.Class, cast.Worker, cast.Instructor, Cast.Today)], file!.TaughtBy);
        Assert.Equal(cast.CourseId, Assert.Single(file.Held).SchemeId);
        Assert.Null(await records.FindCaseFileAsync(Guid.CreateVersion7(), SchemeOf(cast), Cancellation));
    }

    [Fact]
    public async Task Reading_everything_held_in_batches_finds_each_person_once()
    {
        var casts = new List<Cast>();
        for (var number = 0; number < 3; number++) casts.Add(await Cast.CreateAsync(Database));
        foreach (var cast in casts) await cast.KeepGrantedAsync(Database);
        await using var records = Database.Open();

        var held = await records.AllHeldCertificationsAsync(batch: 2, Cancellation).ToListAsync(Cancellation);

        Assert.Equal(held.Count, held.Select(one => (one.PersonId, one.SchemeId)).Distinct().Count());
        Assert.All(casts, cast => Assert.Contains(held, one => one.PersonId == cast.Worker));
    }
}
