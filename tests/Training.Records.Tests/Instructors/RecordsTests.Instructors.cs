using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records.Tests;

public abstract partial class RecordsTests
{
    private static async Task<Guid> NewInstructorAsync(RecordsContext records)
    {
        var id = Guid.CreateVersion7();
        records.Add(new Person { Id = id, Language = Language.English });
        records.Add(new Appointment { Id = Guid.CreateVersion7(), PersonId = id, StartsOn = new(2024, 1, 1), Role = AppointedRole.Instructor, Languages = [Language.English] });
        await records.SaveChangesAsync(Cancellation);
        records.ChangeTracker.Clear();
        return id;
    }

    private static InstructorCompetence CompetenceOf(Cast cast, Guid person, Duty duty = Duty.Score, Subject subject = Subject.Model, Guid? entry = null, Guid? lead = null) => new()
    {
        Id = Guid.CreateVersion7(), EntryId = entry ?? Guid.CreateVersion7(), PersonId = person, CourseId = cast.CourseId, Duty = duty, Subject = subject,
        StartsOn = new(2026, 1, 1), EndsOn = new(2026, 12, 31), Evidence = "Scored with a lead.", LeadId = lead ?? cast.Lead, KeptAt = Cast.Now,
    };

    private static InstructorStatement StatementOf(Guid person) => new() { Id = Guid.CreateVersion7(), PersonId = person, StatedOn = Cast.Today, KeptAt = Cast.Now };

    [Fact]
    public async Task Without_a_file_nobody_is_put_to_a_class()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var instructor = await NewInstructorAsync(records);

        Assert.Equal([RecordsProblems.NoInstructorFile], Codes(await records.TeachAsync(cast.Class, instructor, Cancellation)));
        Assert.Equal([RecordsProblems.NoInstructorFile], Codes(await records.LetScoreAsync(cast.Class, instructor, Cancellation)));
        Assert.IsType<Kept.Stored>(await records.KeepAsync([CompetenceOf(cast, instructor)], Cast.Today, Cancellation));
        Assert.Equal([RecordsProblems.StatementMissing], Codes(await records.LetScoreAsync(cast.Class, instructor, Cancellation)));
        Assert.IsType<Kept.Stored>(await records.KeepAsync(StatementOf(instructor), Cancellation));
        Assert.IsType<Kept.Stored>(await records.LetScoreAsync(cast.Class, instructor, Cancellation));
        Assert.Equal([RecordsProblems.NotCompetentToTeach], Codes(await records.TeachAsync(cast.Class, instructor, Cancellation)));
    }

    [Fact]
    public async Task A_competence_that_a_lead_ended_counts_through_that_day_and_not_longer()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var instructor = await NewInstructorAsync(records);
        var row = CompetenceOf(cast, instructor);
        await records.KeepAsync([row], Cast.Today, Cancellation);
        await records.KeepAsync(StatementOf(instructor), Cancellation);
        InstructorCompetenceEnd End(DateOnly on) => new() { CompetenceId = row.Id, EndsOn = on, Reason = "Asked to stop.", LeadId = cast.Lead, KeptAt = Cast.Now };

        Assert.Equal([RecordsProblems.EntryUnknown], Codes(await records.EndAsync(cast.Worker, End(Cast.Today.AddDays(-1)), Cast.Today, Cancellation)));
        Assert.IsType<Kept.Stored>(await records.EndAsync(instructor, End(Cast.Today.AddDays(-1)), Cast.Today, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.EndAsync(instructor, End(Cast.Today), Cast.Today, Cancellation));

        Assert.Equal([RecordsProblems.CompetenceOver], Codes(await records.LetScoreAsync(cast.Class, instructor, Cancellation)));
        Assert.Equal(Cast.Today.AddDays(-1), (await records.InstructorFilesAsync([instructor], Cast.Today, Cancellation))[instructor].Competences.Single().Through);
    }

    [Fact]
    public async Task The_same_form_is_one_entry_and_no_lead_writes_their_own()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        var (instructor, entry) = (await NewInstructorAsync(records), Guid.CreateVersion7());
        InstructorCompetence[] Rows() =>
            [CompetenceOf(cast, instructor, entry: entry), CompetenceOf(cast, instructor, Duty.Teach, entry: entry)];

        Assert.IsType<Kept.Stored>(await records.KeepAsync(Rows(), Cast.Today, Cancellation));
        Assert.IsType<Kept.AlreadyStored>(await records.KeepAsync(Rows(), Cast.Today, Cancellation));
        Assert.Equal([RecordsProblems.OtherContent], Codes(await records.KeepAsync([CompetenceOf(cast, instructor, entry: entry)], Cast.Today, Cancellation)));
        Assert.Equal([RecordsProblems.OwnInstructorFile], Codes(await records.KeepAsync([CompetenceOf(cast, cast.Lead)], Cast.Today, Cancellation)));
        Assert.Equal([RecordsProblems.NotALead], Codes(await records.KeepAsync([CompetenceOf(cast, instructor, lead: cast.Worker)], Cast.Today, Cancellation)));
        Assert.Equal(2, await records.InstructorCompetences.CountAsync(row => row.PersonId == instructor, Cancellation));
    }

    [Fact]
    public async Task A_conflict_stops_the_sheets_of_that_person_until_it_ends()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        Task<IReadOnlyList<Problem>> AskAsync() => records.SheetProblemsAsync(
            cast.Instructor, cast.Worker, cast.CourseId, Subject.Live, Language.Spanish, Cast.Today, Cancellation);
        var conflict = new InstructorConflict
        {
            Id = Guid.CreateVersion7(), PersonId = cast.Instructor, OtherPersonId = cast.Worker, EmployerId = null, Words = "Cousins.", StartsOn = new(2026, 2, 1), LeadId = cast.Lead, KeptAt = Cast.Now,
        };

        Assert.Empty(await AskAsync());
        Assert.IsType<Kept.Stored>(await records.KeepAsync(conflict, Cast.Today, Cancellation));
        Assert.Equal([RecordsProblems.ConflictWithCandidate], (await AskAsync()).Select(problem => problem.Code));
        Assert.IsType<Kept.Stored>(await records.EndAsync(
            cast.Instructor, new InstructorConflictEnd { ConflictId = conflict.Id, EndsOn = Cast.Today.AddDays(-1), Reason = "Written in error.", LeadId = cast.Lead, KeptAt = Cast.Now },
            Cast.Today, Cancellation));
        Assert.Empty(await AskAsync());
    }

    [Fact]
    public async Task A_conflict_with_an_employer_stops_the_sheets_of_those_who_work_there_that_day()
    {
        var cast = await Cast.CreateAsync(Database);
        await using var records = Database.Open();
        await records.KeepAsync(
            new InstructorConflict
            {
                Id = Guid.CreateVersion7(), PersonId = cast.Instructor, OtherPersonId = null, EmployerId = cast.Employer, Words = "Paid by it.", StartsOn = new(2026, 2, 1), LeadId = cast.Lead, KeptAt = Cast.Now,
            },
            Cast.Today, Cancellation);
        await records.KeepAsync(
            new Employment { Id = Guid.CreateVersion7(), PersonId = cast.Worker, EmployerId = cast.Employer, StartsOn = new(2025, 1, 1), EndsOn = Cast.Today }, Cancellation);
        async Task<IEnumerable<string>> AskAsync(DateOnly day) => (await records.SheetProblemsAsync(
            cast.Instructor, cast.Worker, cast.CourseId, Subject.Model, Language.English, day, Cancellation)).Select(problem => problem.Code);

        Assert.Equal([RecordsProblems.ConflictWithEmployer], await AskAsync(Cast.Today));
        Assert.Empty(await AskAsync(Cast.Today.AddDays(1)));
    }
}
