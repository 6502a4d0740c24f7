using System.Security.Cryptography;
using Training.Certification;
using Training.Courses;
using Training.Scoring;

namespace Training.Records.Tests;

/// <summary>Invented people and a course for one test, and what they hand in.</summary>
internal sealed class Cast
{
    internal static readonly DateTimeOffset Now = new(2026, 5, 4, 18, 0, 0, 123, TimeSpan.Zero);

    internal static readonly DateOnly Today = new(2026, 5, 4);

    internal const string Zone = "America/Phoenix";

    internal static readonly Terms Annual = new(new(12, DurationUnit.Months), new(60, DurationUnit.Days), new(30, DurationUnit.Days));

    internal Guid Worker { get; } = Guid.CreateVersion7();

    internal Guid WorkerName { get; } = Guid.CreateVersion7();

    internal Guid Instructor { get; } = Guid.CreateVersion7();

    internal Guid Lead { get; } = Guid.CreateVersion7();

    internal Guid OtherLead { get; } = Guid.CreateVersion7();

    internal Guid Employer { get; } = Guid.CreateVersion7();

    internal Guid Site { get; } = Guid.CreateVersion7();

    internal Guid Class { get; } = Guid.CreateVersion7();

    internal Guid Hook { get; } = Guid.CreateVersion7();

    internal Guid HookInspection { get; } = Guid.CreateVersion7();

    internal string CourseId { get; } = $"handler-{Guid.CreateVersion7():N}";

    internal string CourseHash { get; } = NewHash();

    internal static async Task<Cast> CreateAsync(TestDatabase database)
    {
        var cast = new Cast();
        await using var records = database.Open();
        foreach (var person in new[] { cast.Worker, cast.Instructor, cast.Lead, cast.OtherLead })
            records.Add(new Person { Id = person, Language = Language.English });
        records.Add(new PersonName { Id = cast.WorkerName, PersonId = cast.Worker, Text = "Íñigo Peña-Ruiz", StartsOn = new(2020, 1, 1) });
        records.Add(new Employer { Id = cast.Employer, Name = $"Mesa Seca Solar {cast.Employer}" });
        records.Add(new Site { Id = cast.Site, EmployerId = cast.Employer, Name = "Block 7", Zone = Zone, Region = "US" });
        records.Add(new ClassRecord { Id = cast.Class, SiteId = cast.Site, HeldOn = Today, CourseId = cast.CourseId, Capacity = 8 });
        records.Add(new ClassScorer { ClassId = cast.Class, InstructorId = cast.Instructor });
        records.Add(new ClassAttendance { ClassId = cast.Class, PersonId = cast.Worker });
        records.Add(new KitPiece { Id = cast.Hook, Label = $"H-{cast.Hook}", Kind = KitKind.Hook, RegisteredById = cast.Lead, RegisteredAt = Now.AddDays(-40) });
        records.Add(cast.Inspection(cast.HookInspection));
        await records.SaveChangesAsync();
        await records.KeepSnapshotAsync(cast.CourseId, cast.CourseHash, "snapshot", Now, default);
        await records.KeepAsync(Appoint(cast.Instructor, AppointedRole.Instructor), default);
        records.AddRange(cast.CompetenceOf(cast.Instructor));
        records.Add(new InstructorStatement { Id = Guid.CreateVersion7(), PersonId = cast.Instructor, StatedOn = new(2026, 1, 1), KeptAt = Now });
        await records.SaveChangesAsync();
        records.ChangeTracker.Clear();
        await records.KeepAsync(Appoint(cast.Lead, AppointedRole.ProgrammeLead), default);
        await records.KeepAsync(Appoint(cast.OtherLead, AppointedRole.ProgrammeLead), default);
        return cast;
    }

    /// <summary>What lets an instructor teach and score this course, on the model and live.</summary>
    internal IEnumerable<InstructorCompetence> CompetenceOf(Guid instructorId) =>
        from duty in Enum.GetValues<Duty>()
        from subject in Enum.GetValues<Subject>()
        select new InstructorCompetence
        {
            Id = Guid.CreateVersion7(), EntryId = Guid.CreateVersion7(), PersonId = instructorId, CourseId = CourseId, Duty = duty, Subject = subject,
            StartsOn = new(2024, 1, 1), EndsOn = new(2030, 12, 31), Evidence = "Scored six sheets together with a lead.", LeadId = Lead, KeptAt = Now,
        };

    /// <summary>The hook found fit for half a year, forty days ago unless said otherwise.</summary>
    internal KitInspectionRecord Inspection(Guid id, int daysAgo = 40, string? unfit = null) => new()
    {
        Id = id, PieceId = Hook, InspectorId = Instructor, InspectedOn = Today.AddDays(-daysAgo), IsFit = unfit is null, Reason = unfit,
        NextDueOn = unfit is null ? Today.AddDays(180 - daysAgo) : null, KeptAt = Now.AddDays(-daysAgo),
    };

    internal static string NewHash() => Convert.ToHexStringLower(SHA256.HashData(Guid.CreateVersion7().ToByteArray()));

    internal Sitting Sitting(Guid? id = null, string chosen = "step-back") => new(
        id ?? Guid.CreateVersion7(), Worker,
        new Draw(CourseHash, "handler-quiz", 18_000_000_000_000_000_000,
        [
            new("silent-snake", NewHash(), ["prod", "step-back", "wait"]),
            new("reach", NewHash(), []),
            new("first-steps", NewHash(), ["call", "keep-still", "take-rings-off"]),
        ]),
        Now.AddMinutes(-20), Now.AddMinutes(-1),
        [
            new("silent-snake", [chosen], null, Language.Spanish, Now.AddMinutes(-15)),
            new("reach", [], 130.50m, Language.English, Now.AddMinutes(-10)),
        ]);

    internal SittingResult Failed(Sitting sitting) => new(
        CourseHash, false, 2, 3,
        [new("meeting", 2, 2), new("bite", 0, 1)],
        [.. sitting.Draw.Questions.Select((question, place) => new QuestionResult(question.QuestionId, question.QuestionVersion, place == 2 ? Mark.Blank : Mark.Right))],
        [new SittingReason.BelowPass(2, 3, 80), new SittingReason.TopicBelowPass("bite", 0, 1, 50), new SittingReason.CriticalMissed("first-steps")]);

    internal SittingResult Passed(Sitting sitting) => Failed(sitting) with { IsPassed = true, Points = 3, Reasons = [] };

    internal Scoresheet Sheet(Guid? id = null, int @try = 1, string remarks = "", Subject subject = Subject.Model, LiveConditions? live = null) => new(
        id ?? Guid.CreateVersion7(), Class, Worker, Instructor, CourseHash, "move-to-bucket", "v1", subject, @try,
        [new("inspect-tongs", Observation.Done), new("grip", Observation.DoneAfterPrompt), new("lid", Observation.NotDone)],
        null, live, new PracticalConditions("Gravel, overcast", 31, "H-2", [new(Hook, HookInspection)]),
        Language.English, true, Now.AddMinutes(subject == Subject.Live ? -5 : -30), "Winifred Oakley", remarks, Impression.Ready, Now.AddMinutes(-50));

    internal static ScoresheetResult PassedSheet() => new("v1", PracticalOutcome.Passed, 5, 6, []);

    internal static ScoresheetResult FailedSheet() => new(
        "v1", PracticalOutcome.Failed, 3, 6,
        [new ScoresheetReason.BelowPass(3, 6, 80), new ScoresheetReason.CriticalStepFailed("lid"), new ScoresheetReason.Stopped("lid")]);

    internal async Task<Guid> KeepPassedSittingAsync(TestDatabase database)
    {
        await using var records = database.Open();
        var sitting = Sitting();
        return Assert.IsType<Kept.Stored>(await records.KeepAsync(sitting, Passed(sitting), Today, Zone, Now, default)).Id;
    }

    internal async Task<KeyCorrectionRecord> KeepCorrectionAsync(
        TestDatabase database, string questionId = "silent-snake", string? version = null, CorrectionRemedy remedy = CorrectionRemedy.LeaveOut)
    {
        var correction = new KeyCorrectionRecord
        {
            Id = Guid.CreateVersion7(), CourseId = CourseId, QuizId = "handler-quiz", QuestionId = questionId, QuestionVersion = version ?? NewHash(),
            Remedy = remedy, ByHash = remedy == CorrectionRemedy.OtherKey ? CourseHash : null, ByVersion = remedy == CorrectionRemedy.OtherKey ? "later" : null,
            Reason = "Two answers were right.", LeadId = Lead, MadeAt = Now,
        };
        await using var records = database.Open();
        Assert.True(await records.KeepAsync(correction, null, default));
        return correction;
    }

    internal MadeDecision Granted(int number, IReadOnlyList<Guid> restsOn, DateOnly? on = null)
    {
        var decidedOn = on ?? Today;
        return new(
            Guid.CreateVersion7(), Worker, CourseId, CourseHash, new Decider.Lead(Lead), decidedOn, Zone,
            new Decision.Granted(number == 1 ? Route.Grant : Route.Renewal,
                new Period(number, decidedOn, decidedOn, decidedOn.AddYears(1), Annual), restsOn, []));
    }

    internal async Task<MadeDecision> KeepGrantedAsync(TestDatabase database, int number = 1)
    {
        var made = Granted(number, [await KeepPassedSittingAsync(database)]);
        await using var records = database.Open();
        Assert.IsType<Kept.Stored>(await records.KeepAsync(made, Now, default));
        return made;
    }

    private static Appointment Appoint(Guid person, AppointedRole role) => new()
    {
        Id = Guid.CreateVersion7(), PersonId = person, StartsOn = new(2024, 1, 1), Role = role, Languages = [Language.English, Language.Spanish],
    };
}
