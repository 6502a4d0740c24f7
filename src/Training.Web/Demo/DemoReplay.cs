using Microsoft.AspNetCore.Identity;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Features.Certificates;
using Training.Web.Features.Decisions;
using Training.Web.Features.Scoresheets;
using Training.Web.Features.Sittings;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Demo;

/// <summary>Replays the invented programme in the order of its days, through the code that real use goes through.</summary>
/// <param name="data">What happened.</param>
/// <param name="courses">The shipped courses by id.</param>
/// <param name="library">The shipped species sheets.</param>
/// <param name="papers">Issues the papers.</param>
/// <param name="options">Of the demo.</param>
/// <param name="today">The day that the data counts back from.</param>
internal sealed class DemoReplay(
    DemoData data, IReadOnlyDictionary<string, Course> courses, SpeciesLibrary library, CertificateIssue papers, TrainingOptions options, DateOnly today)
{
    // Late enough in the UTC day to be the same calendar day on every invented site, and after the day's sittings and sheets.
    private const int DecisionHourUtc = 22;

    private readonly Dictionary<string, DemoSite> sites = data.Sites.ToDictionary(site => site.Site, StringComparer.Ordinal);
    private readonly Dictionary<string, DemoPerson> people = data.People.ToDictionary(row => row.Person, StringComparer.Ordinal);
    private readonly Dictionary<string, Guid> ids = new(StringComparer.Ordinal);
    private readonly ILookup<string, DemoEmployment> employments = data.Employments.ToLookup(row => row.Person, StringComparer.Ordinal);

    private IReadOnlyList<RegisteredKit> kit = [];
    private DemoEncounters Encounters => field ??= new(
        data, courses.Values.Where(course => course.Scheme.Kind == SchemeKind.Certification).Select(course => course.Id).ToHashSet(StringComparer.Ordinal), ids,
        daysAgo => At(daysAgo, DecisionHourUtc));

    private DemoAppeals Appeals => field ??= new(data, ids, daysAgo => At(daysAgo, DecisionHourUtc));

    /// <summary>Replays everything.</summary>
    /// <exception cref="InvalidDataException">The code refused a row of the demo data; the message names it.</exception>
    public async Task RunAsync(RecordsContext records, CancellationToken cancellation)
    {
        await KeepPeopleAsync(records, cancellation);
        await KeepDatedRowsAsync(records, cancellation);
        await KeepKitAsync(records, cancellation);
        await new DemoInstructors(data, ids, Day, Require).KeepAsync(records, cancellation);
        await new DemoClasses(data, ids, At, Require).KeepAsync(records, cancellation);
        await new DemoPlanning(data, ids, Day, Require).KeepAsync(records, cancellation);
        await KeepAccountsAsync(records, cancellation);
        await new DemoFirstDay(data, courses, library, options, ids, daysAgo => At(daysAgo, DecisionHourUtc)).KeepAsync(records, cancellation);
        foreach (var (_, replay) in Happenings().OrderBy(happening => happening.At)) await replay(records, cancellation);
        await new DemoPanels(data, courses, ids, daysAgo => At(daysAgo, DecisionHourUtc)).KeepAsync(records, cancellation);
    }

    private IEnumerable<(DateTimeOffset At, Func<RecordsContext, CancellationToken, Task> Replay)> Happenings() =>
    [
        .. data.Sittings.Select(row => (At(row.DaysAgo, row.HourUtc), Step(row, SitAsync))),
        .. data.Scoresheets.Select(row => (At(row.DaysAgo, row.HourUtc), Step(row, ScoreAsync))),
        .. data.Calibrations.Select(row => (At(row.DaysAgo, DecisionHourUtc), Step(row, CalibrateAsync))),
        .. data.Decisions.Select(row => (At(row.DaysAgo, DecisionHourUtc), Step(row, DecideAsync))),
        .. data.Suspensions.Select(row => (At(row.DaysAgo, DecisionHourUtc + 1), Step(row, SuspendAsync))),
        .. data.Suspensions.Where(row => row.ReinstatedDaysAgo is not null)
            .Select(row => (At(row.ReinstatedDaysAgo!.Value, DecisionHourUtc + 1), Step(row, ReinstateAsync))), // not null: filtered before
        .. data.Appeals.Select(row => (At(row.DaysAgo, DecisionHourUtc), Step(row, AppealAsync))),
        .. data.Appeals.Where(row => row.TakenUpDaysAgo is not null)
            .Select(row => (At(row.TakenUpDaysAgo!.Value, DecisionHourUtc), Step(row, TakeUpAsync))), // not null: filtered before
        .. data.Appeals.Where(row => row.DecidedDaysAgo is not null)
            .Select(row => (At(row.DecidedDaysAgo!.Value, DecisionHourUtc), Step(row, DecideAppealAsync))), // not null: filtered before
        .. data.Encounters.Select(row => (At(row.DaysAgo, DecisionHourUtc), Step(row, MeetAsync))),
        .. data.Encounters.Where(row => row.ReviewedDaysAgo is not null)
            .Select(row => (At(row.ReviewedDaysAgo!.Value, DecisionHourUtc), Step(row, ConcludeAsync))), // not null: filtered before
        .. data.Withdrawals.Select(row => (At(row.DaysAgo, DecisionHourUtc + 1), Step(row, WithdrawAsync))),
    ];

    private static Func<RecordsContext, CancellationToken, Task> Step<T>(T row, Func<RecordsContext, T, CancellationToken, Task> replay) =>
        (records, cancellation) => replay(records, row, cancellation);

    private async Task KeepPeopleAsync(RecordsContext records, CancellationToken cancellation)
    {
        records.AddRange(data.Employers.Select(row => new Employer { Id = NewId(row.Employer), Name = row.Name }));
        records.AddRange(data.Sites.Select(row => new Records.Site
        {
            Id = NewId(row.Site), EmployerId = ids[row.Employer], Name = row.Name, Zone = row.Zone, Region = row.Region,
        }));
        records.AddRange(data.Employments.Select(row => (row.Site, row.Crew)).Distinct().Select(crew => new Crew
        {
            Id = NewId($"{crew.Site}/{crew.Crew}"), SiteId = ids[crew.Site], Name = crew.Crew,
        }));
        foreach (var row in data.People)
        {
            records.Add(new Person { Id = NewId(row.Person), Language = LanguageOf(row.Language) });
            records.Add(new PersonName
            {
                Id = Guid.CreateVersion7(), PersonId = ids[row.Person], Text = row.FullName, StartsOn = DateOnly.MinValue,
            });
        }

        var hours = data.ClassDays.ToDictionary(row => row.Class, StringComparer.Ordinal);
        foreach (var row in data.Classes)
        {
            var day = hours.GetValueOrDefault(row.Class);
            records.Add(new ClassRecord
            {
                Id = NewId(row.Class), SiteId = ids[row.Site], HeldOn = Day(row.DaysAgo), CourseId = row.Course, Capacity = row.Seats,
                StartsAt = day?.StartsAt ?? ClassRecord.UsualStart, LengthMinutes = day is null ? ClassRecord.UsualMinutes : (int)(day.Hours * 60),
            });
        }

        records.AddRange(data.Attendance.Select(row => new ClassAttendance { ClassId = ids[row.Class], PersonId = ids[row.Person] }));
        await records.SaveChangesAsync(cancellation);
        records.ChangeTracker.Clear();
    }

    private async Task KeepDatedRowsAsync(RecordsContext records, CancellationToken cancellation)
    {
        foreach (var row in data.Appointments)
        {
            Require(row.Person, await records.KeepAsync(
                new Appointment
                {
                    Id = Guid.CreateVersion7(),
                    PersonId = ids[row.Person],
                    StartsOn = Day(row.FromDaysAgo),
                    Role = row.Role == "lead" ? AppointedRole.ProgrammeLead : AppointedRole.Instructor,
                    Languages = LanguageTags.All,
                },
                cancellation));
        }

        foreach (var row in data.Representatives)
        {
            Require(row.Person, await records.KeepAsync(
                new Representative { Id = Guid.CreateVersion7(), PersonId = ids[row.Person], EmployerId = ids[row.Employer], StartsOn = Day(row.FromDaysAgo) },
                cancellation));
        }

        foreach (var row in data.Employments)
        {
            var (person, startsOn) = (ids[row.Person], Day(row.FromDaysAgo));
            DateOnly? endsOn = row.UntilDaysAgo is { } ago ? Day(ago) : null;
            Require(row.Person, await records.KeepAsync(
                new Employment { Id = Guid.CreateVersion7(), PersonId = person, StartsOn = startsOn, EndsOn = endsOn, EmployerId = ids[row.Employer] }, cancellation));
            Require(row.Person, await records.KeepAsync(
                new Badge { Id = Guid.CreateVersion7(), PersonId = person, StartsOn = startsOn, EndsOn = endsOn, EmployerId = ids[row.Employer], Number = row.Badge },
                cancellation));
            Require(row.Person, await records.KeepAsync(
                new SiteAssignment { Id = Guid.CreateVersion7(), PersonId = person, StartsOn = startsOn, EndsOn = endsOn, SiteId = ids[row.Site] }, cancellation));
            Require(row.Person, await records.KeepAsync(
                new CrewAssignment { Id = Guid.CreateVersion7(), PersonId = person, StartsOn = startsOn, EndsOn = endsOn, CrewId = ids[$"{row.Site}/{row.Crew}"] },
                cancellation));
        }
    }

    private async Task KeepKitAsync(RecordsContext records, CancellationToken cancellation)
    {
        foreach (var row in data.Kit)
        {
            Require(row.Label, await records.KeepAsync(
                new KitPiece
                {
                    Id = NewId(KitKey(row.Label)), Label = row.Label, Kind = row.Kind, RegisteredById = ids[row.RegisteredBy],
                    RegisteredAt = At(row.RegisteredDaysAgo, DecisionHourUtc),
                },
                cancellation));
        }

        foreach (var row in data.KitInspections.OrderByDescending(row => row.DaysAgo))
        {
            Require(row.Label, await records.KeepAsync(
                new KitInspectionRecord
                {
                    Id = Guid.CreateVersion7(), PieceId = ids[KitKey(row.Label)], InspectorId = ids[row.By], InspectedOn = Day(row.DaysAgo),
                    IsFit = row.DueAfterDays is not null, Reason = row.Reason.Length > 0 ? row.Reason : null,
                    NextDueOn = row.DueAfterDays is { } days ? Day(row.DaysAgo - days) : null, KeptAt = At(row.DaysAgo, DecisionHourUtc),
                },
                cancellation));
        }

        foreach (var row in data.Kit)
        {
            if (row.RetiredDaysAgo is not { } ago) continue;
            Require(row.Label, await records.KeepAsync(
                new KitRetirementRecord
                {
                    PieceId = ids[KitKey(row.Label)], TakenById = ids[row.RetiredBy], RetiredOn = Day(ago), Reason = row.RetirementReason, KeptAt = At(ago, DecisionHourUtc),
                },
                cancellation));
        }

        kit = await records.KitAsync(cancellation);
    }

    private static string KitKey(string label) => $"kit {label}";

    private async Task KeepAccountsAsync(RecordsContext records, CancellationToken cancellation)
    {
        var hasher = new PasswordHasher<Account>();
        // One hash for all: it is slow on purpose, and the password of the demo is printed anyway.
        string? hash = null;
        foreach (var row in data.Accounts)
        {
            var account = new Account
            {
                Id = Guid.CreateVersion7(), PersonId = ids[row.Person], UserName = row.SignInName, NormalizedUserName = KeyText.Of(row.SignInName),
            };
            account.PasswordHash = hash ??= hasher.HashPassword(account, data.Provider.Password);
            records.Add(account);
        }

        await records.SaveChangesAsync(cancellation);
        records.ChangeTracker.Clear();
    }

    private async Task SitAsync(RecordsContext records, DemoSitting row, CancellationToken cancellation)
    {
        var course = courses[row.Course];
        var startedAt = At(row.DaysAgo, row.HourUtc);
        var snakes = SnakesOfPlace.Of(SiteOf(row.Person) is { } site ? await records.SheetsOfAsync(library, ids[site], cancellation) : []);
        var draw = QuizDraw.From((await records.AskedAsync(course, cancellation)).AskedAt(snakes), row.Seed);
        var answers = AnswerModel.Answer(course, draw, row, data.Habits, startedAt);
        var sitting = new Sitting(NewId(row.Sitting), ids[row.Person], draw, startedAt, answers.Max(answer => answer.SavedAt).AddMinutes(1), answers);
        var problems = new List<Problem>();
        await records.SubmitAsync(course, sitting, [], ZoneOf(row.Person), sitting.SubmittedAt, problems, cancellation);
        Require(row.Sitting, problems);
    }

    private async Task ScoreAsync(RecordsContext records, DemoScoresheet row, CancellationToken cancellation)
    {
        var course = courses["handler"];
        var problems = new List<Problem>();
        var used = KitOnDay.Choose(
            [.. kit.Select(piece => piece.On(Day(row.DaysAgo)))], [.. row.Kit.Split(' ').Select(label => ids[KitKey(label)])], problems);
        Require(row.Sheet, problems);
        var sheet = Sheet(course, row, used);
        await records.SubmitAsync(course, sheet, ZoneOf(row.Candidate), sheet.SignedAt, problems, cancellation);
        Require(row.Sheet, problems);
        if (await Appeals.SayAsync(records, row, cancellation) is { } said) Require(row.Sheet, said);
        if (row.SeparationReason.Split('|') is [var lead, var reason])
        {
            Require(row.Sheet, await records.KeepSeparationReasonAsync(
                sheet.Id, ids[lead], reason, Day(row.DaysAgo), sheet.SignedAt.AddHours(1), cancellation));
        }
    }

    private async Task MeetAsync(RecordsContext records, DemoEncounter row, CancellationToken cancellation) =>
        Require(row.Encounter, await Encounters.ReportAsync(records, row, cancellation));

    private async Task ConcludeAsync(RecordsContext records, DemoEncounter row, CancellationToken cancellation) =>
        Require(row.Encounter, await Encounters.ConcludeAsync(records, row, cancellation));

    private async Task AppealAsync(RecordsContext records, DemoAppeal row, CancellationToken cancellation)
    {
        if (await Appeals.AppealAsync(records, row, cancellation) is { } kept) Require($"appeal of {row.Person}", kept);
    }

    private async Task TakeUpAsync(RecordsContext records, DemoAppeal row, CancellationToken cancellation) =>
        Require($"appeal of {row.Person}", await Appeals.TakeUpAsync(records, row, cancellation));

    private async Task DecideAppealAsync(RecordsContext records, DemoAppeal row, CancellationToken cancellation) =>
        Require($"appeal of {row.Person}", await Appeals.DecideAsync(records, row, cancellation));

    private Scoresheet Sheet(Course course, DemoScoresheet row, IReadOnlyList<UsedKit> used)
    {
        var checklist = course.Checklists.Single(list => list.Id == row.Checklist);
        var signedAt = At(row.DaysAgo, row.HourUtc);
        var subject = row.Subject == "live" ? Subject.Live : Subject.Model;
        var live = subject == Subject.Model ? null : new LiveConditions(
            row.Permit, Day(row.DaysAgo + (row.BitePlanAgeDays ?? 0)), signedAt.AddMinutes(-90), ids[row.Watcher], LastModelSheet(row));
        return new(
            NewId(row.Sheet), ids[row.Class], ids[row.Candidate], ids[row.Instructor], course.Hash, checklist.Id, checklist.Version, subject, row.Try,
            [.. checklist.Steps.Zip(row.Marks, (step, mark) => new StepObservation(step.Id, ObservationOf(mark, row.Sheet)))],
            row.StoppedAtStep.Length > 0 ? row.StoppedAtStep : null,
            live, new PracticalConditions(row.Surroundings, row.AirTemperature, row.Kit.Replace(" ", ", ", StringComparison.Ordinal), used),
            LanguageOf(people[row.Candidate].Language), IdentityConfirmed: true, signedAt, people[row.Instructor].FullName, Remarks: "", row.Impression,
            InstructionsReadAt: signedAt.AddMinutes(-45), row.Seconds);
    }

    private async Task CalibrateAsync(RecordsContext records, DemoCalibration row, CancellationToken cancellation)
    {
        var (course, openedAt) = (courses[row.Course], At(row.DaysAgo, DecisionHourUtc));
        var checklist = course.Checklists.Single(list => list.Id == row.Checklist);
        await records.OpenAsync(
            new()
            {
                Id = NewId(row.Round), CourseId = course.Id, CourseHash = course.Hash, ChecklistId = checklist.Id, Title = row.Title,
                Recording = row.Recording, LeadId = ids[row.Lead], OpenedAt = openedAt,
            },
            cancellation);
        foreach (var sheet in data.CalibrationSheets.Where(sheet => sheet.Round == row.Round))
        {
            var id = Guid.CreateVersion7();
            var marks = checklist.Steps.Zip(sheet.Marks, (step, mark) => (step.Id, Mark: ObservationOf(mark, row.Round)))
                .ToDictionary(one => one.Id, one => one.Mark, StringComparer.Ordinal);
            Require(row.Round, await records.KeepAsync(
                new CalibrationSheet
                {
                    Id = id, RoundId = ids[row.Round], InstructorId = ids[sheet.Instructor], Outcome = RecordedDemonstration.OutcomeOf(checklist, marks),
                    SentAt = openedAt.AddDays(1),
                    Marks = [.. marks.Select(mark => new CalibrationMark { SheetId = id, StepId = mark.Key, Observation = mark.Value })],
                },
                cancellation));
        }

        if (row.ClosedDaysAgo is { } closed)
            await records.CloseAsync(new() { RoundId = ids[row.Round], LeadId = ids[row.Lead], ClosedAt = At(closed, DecisionHourUtc) }, cancellation);
    }

    private Guid LastModelSheet(DemoScoresheet live) => ids[data.Scoresheets
        .Last(row => row.Candidate == live.Candidate && row.Checklist == live.Checklist && row.Subject == "model" && row.DaysAgo >= live.DaysAgo && ids.ContainsKey(row.Sheet)).Sheet];

    private static Observation ObservationOf(char mark, string row) => mark switch
    {
        'd' => Observation.Done,
        'p' => Observation.DoneAfterPrompt,
        'n' => Observation.NotDone,
        '-' => Observation.NotObserved,
        _ => throw new InvalidDataException($"Demo data, {row}: mark '{mark}'"),
    };

    private async Task DecideAsync(RecordsContext records, DemoDecision row, CancellationToken cancellation)
    {
        var (course, person, decidedOn) = (courses[row.Scheme], ids[row.Person], Day(row.DaysAgo));
        Decider decider = row.DecidedBy == "rule" ? new Decider.Rule() : new Decider.Lead(ids[row.DecidedBy]);
        var before = await records.FindCaseFileAsync(person, course.Scheme, cancellation)
            ?? throw new InvalidDataException($"decisions.csv, {row.Person}: nobody of that name was kept.");
        var problems = new List<Problem>();
        var now = At(row.DaysAgo, DecisionHourUtc);
        var made = await records.DecideAsync(Guid.CreateVersion7(now), person, course, decider, decidedOn, ZoneOf(row.Person), now, problems, cancellation);
        if (made?.Decision is Decision.Granted granted)
        {
            await papers.IssueAsync(records, PaperOrder.First(made, before.CountedFrom(granted)), course, now, problems, cancellation);
        }

        Require($"{row.Person}, {row.Scheme}", problems);
    }

    private async Task SuspendAsync(RecordsContext records, DemoSuspension row, CancellationToken cancellation)
    {
        var suspension = new Suspension(Day(row.DaysAgo), ids[row.By], row.Reason, Day(row.DaysAgo).AddDays(row.DeadlineAfterDays), null);
        Require(row.Person, await records.SuspendAsync(
            Guid.CreateVersion7(), ids[row.Person], row.Scheme, suspension, At(row.DaysAgo, DecisionHourUtc + 1), cancellation));
    }

    private async Task ReinstateAsync(RecordsContext records, DemoSuspension row, CancellationToken cancellation)
    {
        var ago = row.ReinstatedDaysAgo ?? throw new InvalidOperationException("Only reinstated rows come here.");
        var reinstatement = new Reinstatement(Day(ago), ids[row.ReinstatedBy], row.ReinstatementReason);
        Require(row.Person, await records.ReinstateAsync(ids[row.Person], row.Scheme, reinstatement, At(ago, DecisionHourUtc + 1), cancellation));
    }

    private async Task WithdrawAsync(RecordsContext records, DemoWithdrawal row, CancellationToken cancellation)
    {
        var withdrawal = new Withdrawal(Day(row.DaysAgo), ids[row.ProposedBy], ids[row.ConfirmedBy], row.Reason);
        Require(row.Person, await records.WithdrawAsync(
            Guid.CreateVersion7(), ids[row.Person], row.Scheme, withdrawal, At(row.DaysAgo, DecisionHourUtc + 1), cancellation));
    }

    private DateOnly Day(int daysAgo) => today.AddDays(-daysAgo);

    private DateTimeOffset At(int daysAgo, int hourUtc) => new(Day(daysAgo), new TimeOnly(hourUtc, 0), TimeSpan.Zero);

    private string ZoneOf(string person) => SiteOf(person) is { } site ? sites[site].Zone : data.Provider.Zone;

    private string? SiteOf(string person) => employments[person].FirstOrDefault()?.Site;

    private static Language LanguageOf(string tag) => LanguageTags.Find(tag) ?? throw new InvalidDataException($"Language '{tag}' in the demo data.");

    private Guid NewId(string row) => ids[row] = Guid.CreateVersion7();

    private static void Require(string row, Kept kept)
    {
        if (kept is Kept.Refused refused) Require(row, refused.Problems);
        if (kept is Kept.Disputed disputed) Require(row, [disputed.Problem]);
    }

    private static void Require(string row, IReadOnlyCollection<Problem> problems)
    {
        if (problems.Count > 0)
        {
            throw new InvalidDataException($"Demo data, {row}: {string.Join("; ", problems.Select(problem =>
                $"{problem.Code} {problem.Place.Part} {string.Join(' ', problem.Arguments)}"))}");
        }
    }
}
