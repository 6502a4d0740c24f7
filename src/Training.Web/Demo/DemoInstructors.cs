using Training.Certification;
using Training.Courses;
using Training.Records;

namespace Training.Web.Demo;

/// <summary>The files of the demo's instructors, and who teaches and scores at its classes: checked by them as in real use.</summary>
/// <param name="data">What is written down.</param>
/// <param name="ids">Of people and classes, by row id.</param>
/// <param name="day">A day so many days ago.</param>
/// <param name="require">Refuses what the code refused.</param>
internal sealed class DemoInstructors(DemoData data, IReadOnlyDictionary<string, Guid> ids, Func<int, DateOnly> day, Action<string, Kept> require)
{
    /// <summary>Keeps all of it.</summary>
    public async Task KeepAsync(RecordsContext records, CancellationToken cancellation)
    {
        foreach (var row in data.Competences) require(row.Person, await records.KeepAsync(RowsOf(row), day(row.FromDaysAgo), cancellation));
        foreach (var row in data.Statements)
            require(row.Person, await records.KeepAsync(new InstructorStatement { Id = Guid.CreateVersion7(), PersonId = ids[row.Person], StatedOn = day(row.DaysAgo), KeptAt = At(row.DaysAgo) }, cancellation));
        foreach (var row in data.Conflicts)
        {
            require(row.Person, await records.KeepAsync(
                new InstructorConflict
                {
                    Id = Guid.CreateVersion7(), PersonId = ids[row.Person], OtherPersonId = ids[row.Other], EmployerId = null, Words = row.Words, StartsOn = day(row.FromDaysAgo),
                    LeadId = ids[row.By], KeptAt = At(row.FromDaysAgo),
                },
                day(row.FromDaysAgo), cancellation));
        }

        foreach (var row in data.Classes)
        {
            require(row.Class, await records.TeachAsync(ids[row.Class], ids[row.TaughtBy], cancellation));
            foreach (var scorer in row.ScoredBy.Split(' ', StringSplitOptions.RemoveEmptyEntries))
                require(row.Class, await records.LetScoreAsync(ids[row.Class], ids[scorer], cancellation));
        }
    }

    private List<InstructorCompetence> RowsOf(DemoCompetence row)
    {
        var entry = Guid.CreateVersion7();
        return [.. row.What.Split(' ').Select(what => what.Split('-')).Select(what => new InstructorCompetence
        {
            Id = Guid.CreateVersion7(), EntryId = entry, PersonId = ids[row.Person], CourseId = row.Course, Duty = Enum.Parse<Duty>(what[0]), Subject = Enum.Parse<Subject>(what[1]),
            StartsOn = day(row.FromDaysAgo), EndsOn = day(-row.ThroughDaysAhead), Evidence = row.Evidence, LeadId = ids[row.By], KeptAt = At(row.FromDaysAgo),
        })];
    }

    private DateTimeOffset At(int daysAgo) => new(day(daysAgo), new TimeOnly(17, 0), TimeSpan.Zero);
}
