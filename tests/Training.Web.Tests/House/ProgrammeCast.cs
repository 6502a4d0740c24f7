using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Tests.House;

/// <summary>Two leads, an instructor who teaches, one who scores, and a worker on a site; each cast has people of its own.</summary>
internal sealed class ProgrammeCast
{
    public static readonly DateOnly Today = new(2026, 11, 25);

    private readonly RunningSite site;

    private ProgrammeCast(RunningSite site) => this.site = site;

    public Guid Lead { get; } = Guid.CreateVersion7();

    public Guid OtherLead { get; } = Guid.CreateVersion7();

    public Guid Teacher { get; } = Guid.CreateVersion7();

    public Guid Scorer { get; } = Guid.CreateVersion7();

    public Guid Worker { get; } = Guid.CreateVersion7();

    public Guid Employer { get; } = Guid.CreateVersion7();

    public Guid Site { get; } = Guid.CreateVersion7();

    public Guid Class { get; } = Guid.CreateVersion7();

    public Course Handler => site.Shelf.Find("handler")!;

    public static async Task<ProgrammeCast> CreateAsync(RunningSite site, string name = "Íñigo Peña-Ruiz")
    {
        var cast = new ProgrammeCast(site);
        await site.RecordAsync(async records =>
        {
            (Guid Id, string Name)[] people =
            [
                (cast.Lead, "Odalys Ferrante"), (cast.OtherLead, "Bram Kessler"), (cast.Teacher, "Wanda Trujillo"), (cast.Scorer, "Priya Nand"),
                (cast.Worker, name),
            ];
            foreach (var (id, text) in people)
            {
                records.Add(new Person { Id = id, Language = Language.English });
                records.Add(new PersonName { Id = Guid.CreateVersion7(), PersonId = id, Text = text, StartsOn = new(2020, 1, 1) });
            }

            records.Add(new Employer { Id = cast.Employer, Name = $"Salt Fork Wind {cast.Employer}" });
            records.Add(new Records.Site { Id = cast.Site, EmployerId = cast.Employer, Name = "Ridge 4", Zone = "America/Phoenix", Region = "US" });
            records.Add(new ClassRecord { Id = cast.Class, SiteId = cast.Site, HeldOn = Today.AddDays(-12), CourseId = "handler", Capacity = 2 });
            records.Add(new SiteAssignment { Id = Guid.CreateVersion7(), PersonId = cast.Worker, SiteId = cast.Site, StartsOn = new(2024, 1, 1) });
            records.Add(new Employment { Id = Guid.CreateVersion7(), PersonId = cast.Worker, EmployerId = cast.Employer, StartsOn = new(2024, 1, 1) });
            records.Add(new Badge
            {
                Id = Guid.CreateVersion7(), PersonId = cast.Worker, EmployerId = cast.Employer, StartsOn = new(2024, 1, 1), Number = $"SF-{cast.Worker:N}"[..12],
            });
            (Guid Id, AppointedRole Role)[] appointed =
            [
                (cast.Lead, AppointedRole.ProgrammeLead), (cast.OtherLead, AppointedRole.ProgrammeLead),
                (cast.Teacher, AppointedRole.Instructor), (cast.Scorer, AppointedRole.Instructor),
            ];
            foreach (var (id, role) in appointed) records.Add(Appoint(id, role));
            foreach (var id in new[] { cast.Teacher, cast.Scorer }) records.AddRange(Cast.FileOf(id, cast.Lead, site.Shelf.Courses.Select(course => course.Id)));
            await records.SaveChangesAsync();
        });
        return cast;
    }

    public static Appointment Appoint(Guid personId, AppointedRole role, DateOnly? endsOn = null) => new()
    {
        Id = Guid.CreateVersion7(), PersonId = personId, StartsOn = new(2024, 1, 1), EndsOn = endsOn, Role = role, Languages = [Language.English],
    };

    /// <summary>Everything that the handler scheme asks, ten days old, scored by the scorer.</summary>
    public async Task PassEverythingAsync(Guid? scorer = null)
    {
        await HoldAwarenessAsync();
        await site.RecordAsync(async records =>
        {
            var sitting = new SittingRecord
            {
                Id = Guid.CreateVersion7(), FormId = Guid.CreateVersion7(), Copy = 1, ContentHash = Hash(), PersonId = Worker, CourseHash = Handler.Hash,
                QuizId = Handler.Quiz.Id, Seed = 1, StartedAt = RunningSite.Now.AddDays(-11), SubmittedAt = RunningSite.Now.AddDays(-11),
                TakenOn = Today.AddDays(-11), Zone = "America/Phoenix", KeptAt = RunningSite.Now.AddDays(-11),
            };
            records.Add(sitting);
            records.Add(new SittingResultRecord
            {
                Id = Guid.CreateVersion7(), SittingId = sitting.Id, Number = 1, CourseHash = Handler.Hash, IsPassed = true, Points = 18, MaxPoints = 20,
                Reasons = "{\"version\":1,\"items\":[]}", GradedAt = RunningSite.Now.AddDays(-11),
            });
            foreach (var asked in Handler.Scheme.Grant.OfType<Requirement.PassedPractical>())
            {
                var sheet = Sheet(asked.Subject, scorer ?? Scorer, checklist: asked.ChecklistId);
                records.Add(sheet);
                records.Add(Passed(sheet));
            }

            await records.SaveChangesAsync();
        });
    }

    /// <summary>The worker holds the handler certification through a day.</summary>
    public Task<(Certification.Serial Serial, Guid PersonId, Guid DecisionId)> HoldAsync(Guid? person = null) =>
        site.HoldAsync(person ?? Worker, "handler", Today.AddMonths(-3), Today.AddMonths(9));

    public Task TeachAsync(Guid instructor) => site.RecordAsync(async records =>
    {
        records.Add(new ClassTeaching { ClassId = Class, InstructorId = instructor });
        records.Add(new ClassAttendance { ClassId = Class, PersonId = Worker });
        await records.SaveChangesAsync();
    });

    /// <summary>A sheet, and other content under the same id.</summary>
    public Task DisputeAsync() => site.RecordAsync(async records =>
    {
        var first = Sheet(Subject.Model, Scorer);
        records.Add(first);
        records.Add(Passed(first));
        records.Add(Sheet(Subject.Model, Scorer, formId: first.FormId, copy: 2));
        await records.SaveChangesAsync();
    });

    private static string Hash() => Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(Guid.CreateVersion7().ToByteArray()));

    private async Task HoldAwarenessAsync() => await site.HoldAsync(Worker, "awareness", Today.AddMonths(-3), Today.AddMonths(9));

    private ScoresheetRecord Sheet(Subject subject, Guid scorer, Guid? formId = null, int copy = 1, string checklist = "move-to-bucket") => new()
    {
        Id = Guid.CreateVersion7(), FormId = formId ?? Guid.CreateVersion7(), Copy = copy, ContentHash = Hash(), ClassId = Class, CandidateId = Worker,
        InstructorId = scorer, CourseHash = Handler.Hash, ChecklistId = checklist, ChecklistVersion = "v1", Subject = subject, Try = 1,
        StoppedAtStep = null, Language = Language.English, IsIdentityConfirmed = true, Surroundings = "Shaded yard", AirTemperature = 24, Kit = "Tongs",
        SignedAt = RunningSite.Now.AddDays(-10), SignedName = "Priya Nand", ScoredOn = Today.AddDays(-10),
        Zone = "America/Phoenix", Remarks = "", KeptAt = RunningSite.Now.AddDays(-10),
    };

    private static ScoresheetResultRecord Passed(ScoresheetRecord sheet) => new()
    {
        Id = Guid.CreateVersion7(), ScoresheetId = sheet.Id, Number = 1, ChecklistVersion = "v1", Outcome = PracticalOutcome.Passed, Points = 38,
        MaxPoints = 40, Reasons = "{\"version\":1,\"items\":[]}", GradedAt = RunningSite.Now.AddDays(-10),
    };
}
