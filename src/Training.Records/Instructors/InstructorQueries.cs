using System.Diagnostics;
using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records;

/// <summary>Reads the files of instructors, and asks the rule what they may be assigned to.</summary>
public static class InstructorQueries
{
    /// <summary>Most instructors of a list.</summary>
    public const int Most = 1_000;

    /// <summary>The files of these people as they stand on a day, by person; somebody without rows has an empty file.</summary>
    public static async Task<IReadOnlyDictionary<Guid, InstructorFile>> InstructorFilesAsync(
        this RecordsContext records, IReadOnlyList<Guid> personIds, DateOnly day, CancellationToken cancellation)
    {
        var ids = personIds.Distinct().ToList();
        var competences = await (from row in records.InstructorCompetences
                                 where ids.Contains(row.PersonId)
                                 join end in records.InstructorCompetenceEnds on row.Id equals end.CompetenceId into ends
                                 from end in ends.DefaultIfEmpty()
                                 select new { Row = row, Ended = end == null ? (DateOnly?)null : end.EndsOn }).AsNoTracking().ToListAsync(cancellation);
        var conflicts = await (from row in records.InstructorConflicts
                               where ids.Contains(row.PersonId)
                               join end in records.InstructorConflictEnds on row.Id equals end.ConflictId into ends
                               from end in ends.DefaultIfEmpty()
                               select new { Row = row, Ended = end == null ? (DateOnly?)null : end.EndsOn }).AsNoTracking().ToListAsync(cancellation);
        var statements = await records.InstructorStatements.Where(row => ids.Contains(row.PersonId)).Select(row => new { row.PersonId, row.StatedOn }).ToListAsync(cancellation);
        var languages = await records.Appointments.AsNoTracking()
            .Where(row => ids.Contains(row.PersonId) && row.Role == AppointedRole.Instructor && row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day))
            .ToListAsync(cancellation);
        return ids.ToDictionary(id => id, id => new InstructorFile(
            [.. competences.Where(one => one.Row.PersonId == id).Select(one => new Competence(
                one.Row.CourseId, one.Row.Duty, one.Row.Subject, one.Row.StartsOn, one.Ended < one.Row.EndsOn ? one.Ended.Value : one.Row.EndsOn))],
            [.. languages.Where(row => row.PersonId == id).SelectMany(row => row.Languages).Distinct()],
            [.. conflicts.Where(one => one.Row.PersonId == id).Select(one => new ConflictOfInterest(one.Row.OtherPersonId, one.Row.EmployerId, one.Row.StartsOn, one.Ended))],
            [.. statements.Where(row => row.PersonId == id).Select(row => row.StatedOn)]));
    }

    /// <summary>Everything against an assignment, as problems; empty where nothing is in the way.</summary>
    public static async Task<IReadOnlyList<Problem>> AssignmentProblemsAsync(
        this RecordsContext records, Guid instructorId, Assignment assignment, DateOnly day, CancellationToken cancellation)
    {
        var file = (await records.InstructorFilesAsync([instructorId], day, cancellation))[instructorId];
        return [.. Assignments.Check(file, assignment, day).Select(reason => ProblemOf(reason, assignment.CourseId))];
    }

    /// <summary>Everything against these assignments, as problems, each once; empty where nothing is in the way.</summary>
    internal static async Task<IReadOnlyList<Problem>> AssignmentProblemsAsync(
        this RecordsContext records, IReadOnlyList<(Guid InstructorId, Assignment Assignment)> assignments, DateOnly day, CancellationToken cancellation)
    {
        var files = await records.InstructorFilesAsync([.. assignments.Select(one => one.InstructorId)], day, cancellation);
        return
        [
            .. assignments.SelectMany(one => Assignments.Check(files[one.InstructorId], one.Assignment, day).Select(reason => ProblemOf(reason, one.Assignment.CourseId)))
                .DistinctBy(problem => (problem.Code, string.Join('|', problem.Arguments))),
        ];
    }

    /// <summary>
    /// Everything against an instructor's scoring one candidate on a day, who may work for somebody then: also that nobody on hold is scored
    /// with a live snake.
    /// </summary>
    public static async Task<IReadOnlyList<Problem>> SheetProblemsAsync(
        this RecordsContext records, Guid instructorId, Guid candidateId, string courseId, Subject subject, Language language, DateOnly day,
        CancellationToken cancellation)
    {
        var employers = await records.Employments.Where(row => row.PersonId == candidateId && row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day))
            .Select(row => row.EmployerId).Distinct().ToListAsync(cancellation);
        var problems = await records.AssignmentProblemsAsync(
            instructorId, new Assignment.Sheet(courseId, subject, language, candidateId, employers), day, cancellation);
        return subject == Subject.Live && Holds.IsOn(await records.HoldsOfAsync(candidateId, cancellation), day)
            ? [.. problems, RecordsProblems.At("Subject", RecordsProblems.CandidateOnHold)]
            : problems;
    }

    private static Problem ProblemOf(AssignmentReason reason, string courseId) => reason switch
    {
        AssignmentReason.NoFile => RecordsProblems.At("instructor", RecordsProblems.NoInstructorFile),
        AssignmentReason.NotCompetent(Duty.Teach, _) => RecordsProblems.At("instructor", RecordsProblems.NotCompetentToTeach, courseId),
        AssignmentReason.NotCompetent(Duty.Score, Subject.Live) => RecordsProblems.At("instructor", RecordsProblems.NotCompetentLive, courseId),
        AssignmentReason.NotCompetent(Duty.Score, Subject.Model) => RecordsProblems.At("instructor", RecordsProblems.NotCompetentOnModel, courseId),
        AssignmentReason.NotCompetent => RecordsProblems.At("instructor", RecordsProblems.NotCompetentToScore, courseId),
        AssignmentReason.CompetenceOver(_, _, var through) => RecordsProblems.At("instructor", RecordsProblems.CompetenceOver, courseId, Text(through)),
        AssignmentReason.LanguageMissing => RecordsProblems.At("instructor", RecordsProblems.LanguageNotTheirs),
        AssignmentReason.StatementMissing => RecordsProblems.At("instructor", RecordsProblems.StatementMissing),
        AssignmentReason.StatementOver(var through) => RecordsProblems.At("instructor", RecordsProblems.StatementOver, Text(through)),
        AssignmentReason.WithCandidate(var from) => RecordsProblems.At("instructor", RecordsProblems.ConflictWithCandidate, Text(from)),
        AssignmentReason.WithEmployer(var from) => RecordsProblems.At("instructor", RecordsProblems.ConflictWithEmployer, Text(from)),
        _ => throw new UnreachableException(),
    };

    private static string Text(DateOnly day) => day.ToString("O", CultureInfo.InvariantCulture);
}
