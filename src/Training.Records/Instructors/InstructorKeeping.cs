using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records;

/// <summary>Keeps what is known of instructors: dated rows with who and when. A lead keeps nobody's own file but others'.</summary>
/// <remarks>Rule: docs/rules.md, "Instructors".</remarks>
public static class InstructorKeeping
{
    /// <summary>Keeps the rows of one form, all or none. The same form again is answered with what is stored.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="rows">At least one, all of one entry, person, course and lead.</param>
    /// <param name="on">The day the lead must be appointed on.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<Kept> KeepAsync(
        this RecordsContext records, IReadOnlyList<InstructorCompetence> rows, DateOnly on, CancellationToken cancellation)
    {
        var first = rows[0];
        var problems = await records.ProblemsOfAsync(first.PersonId, first.LeadId, on, cancellation);
        if (first.EndsOn < first.StartsOn) problems.Add(RecordsProblems.At("ends", RecordsProblems.EndsBeforeStart));
        if (problems.Count > 0) return new Kept.Refused(problems);
        if (await records.TryInsertAsync(cancellation, [.. rows])) return new Kept.Stored(first.EntryId);
        var stored = await records.InstructorCompetences.AsNoTracking().Where(row => row.EntryId == first.EntryId).ToListAsync(cancellation);
        return stored.Select(Content).Order().SequenceEqual(rows.Select(Content).Order())
            ? new Kept.AlreadyStored(first.EntryId)
            : OtherContent(first.EntryId);
    }

    /// <summary>Keeps a conflict.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, InstructorConflict row, DateOnly on, CancellationToken cancellation)
    {
        var problems = await records.ProblemsOfAsync(row.PersonId, row.LeadId, on, cancellation);
        if (problems.Count > 0) return new Kept.Refused(problems);
        if (await records.TryInsertAsync(cancellation, row)) return new Kept.Stored(row.Id);
        var stored = await records.InstructorConflicts.AsNoTracking().SingleAsync(other => other.Id == row.Id, cancellation);
        return (stored.PersonId, stored.OtherPersonId, stored.EmployerId, stored.Words, stored.StartsOn) == (row.PersonId, row.OtherPersonId, row.EmployerId, row.Words, row.StartsOn)
            ? new Kept.AlreadyStored(row.Id)
            : OtherContent(row.Id);
    }

    /// <summary>Ends a competence of that instructor; the first end stays.</summary>
    public static async Task<Kept> EndAsync(
        this RecordsContext records, Guid personId, InstructorCompetenceEnd end, DateOnly on, CancellationToken cancellation)
    {
        if (!await records.InstructorCompetences.AnyAsync(row => row.Id == end.CompetenceId && row.PersonId == personId, cancellation))
            return new Kept.Refused([RecordsProblems.At("entry", RecordsProblems.EntryUnknown)]);
        var problems = await records.ProblemsOfAsync(personId, end.LeadId, on, cancellation);
        if (problems.Count > 0) return new Kept.Refused(problems);
        return await records.TryInsertAsync(cancellation, end) ? new Kept.Stored(end.CompetenceId) : new Kept.AlreadyStored(end.CompetenceId);
    }

    /// <summary>Ends a conflict of that instructor; the first end stays.</summary>
    public static async Task<Kept> EndAsync(
        this RecordsContext records, Guid personId, InstructorConflictEnd end, DateOnly on, CancellationToken cancellation)
    {
        if (!await records.InstructorConflicts.AnyAsync(row => row.Id == end.ConflictId && row.PersonId == personId, cancellation))
            return new Kept.Refused([RecordsProblems.At("entry", RecordsProblems.EntryUnknown)]);
        var problems = await records.ProblemsOfAsync(personId, end.LeadId, on, cancellation);
        if (problems.Count > 0) return new Kept.Refused(problems);
        return await records.TryInsertAsync(cancellation, end) ? new Kept.Stored(end.ConflictId) : new Kept.AlreadyStored(end.ConflictId);
    }

    /// <summary>Keeps an instructor's own statement. The same form again is one.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, InstructorStatement statement, CancellationToken cancellation)
    {
        if (await records.TryInsertAsync(cancellation, statement)) return new Kept.Stored(statement.Id);
        var stored = await records.InstructorStatements.AsNoTracking().SingleAsync(other => other.Id == statement.Id, cancellation);
        return stored.PersonId == statement.PersonId ? new Kept.AlreadyStored(statement.Id) : OtherContent(statement.Id);
    }

    private static async Task<List<Problem>> ProblemsOfAsync(
        this RecordsContext records, Guid personId, Guid leadId, DateOnly on, CancellationToken cancellation)
    {
        var problems = new List<Problem>();
        await records.RequirePersonAsync(personId, "instructor", problems, cancellation);
        await records.RequireAppointedAsync(leadId, AppointedRole.ProgrammeLead, on, problems, cancellation);
        if (personId == leadId) problems.Add(RecordsProblems.At("lead", RecordsProblems.OwnInstructorFile));
        return problems;
    }

    private static string Content(InstructorCompetence row) => string.Create(
        CultureInfo.InvariantCulture, $"{row.PersonId} {row.CourseId} {row.Duty} {row.Subject} {row.StartsOn:O} {row.EndsOn:O} {row.Evidence}");

    private static Kept.Refused OtherContent(Guid id) => new([RecordsProblems.At("entry", RecordsProblems.OtherContent, id.ToString())]);
}
