using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>Says from the records when somebody may try again.</summary>
public static class RetestQueries
{
    /// <summary>Keeps that a course was read again; the same id again changes nothing.</summary>
    public static Task KeepAsync(this RecordsContext records, CourseRereading reading, CancellationToken cancellation) =>
        records.TryInsertAsync(cancellation, reading);

    /// <summary>Whether the person may try the quiz of a course on a day. Taken again is: read again.</summary>
    public static async Task<Retest> MayTryQuizAsync(
        this RecordsContext records, Course course, Guid personId, DateOnly today, CancellationToken cancellation)
    {
        var sent = await records.SentSittingsOfAsync(personId, cancellation);
        var readOn = await records.CourseRereadings.Where(row => row.PersonId == personId && row.CourseId == course.Id && row.ReadOn <= today)
            .MaxAsync(row => (DateOnly?)row.ReadOn, cancellation);
        return Retest.MayTry(
            course.Quiz.Retest, [.. sent.Where(sitting => sitting.QuizId == course.Quiz.Id).Select(sitting => new EarlierTry(sitting.TakenOn, sitting.IsPassed))],
            readOn, today);
    }

    /// <summary>Whether the person may try a checklist on a subject on a day. Taken again is: attended a class of the course.</summary>
    public static async Task<Retest> MayTryPracticalAsync(
        this RecordsContext records, string courseId, Checklist checklist, Subject subject, Guid personId, DateOnly today, CancellationToken cancellation)
    {
        var tries = await (from sheet in records.CountingScoresheets()
                           where sheet.CandidateId == personId && sheet.ChecklistId == checklist.Id && sheet.Subject == subject
                           join result in records.ScoresheetResults on sheet.Id equals result.ScoresheetId
                           where result.Outcome != PracticalOutcome.Incomplete
                               && result.Number == records.ScoresheetResults.Where(other => other.ScoresheetId == sheet.Id).Max(other => other.Number)
                           orderby sheet.ScoredOn descending, sheet.Id
                           select new EarlierTry(sheet.ScoredOn, result.Outcome == PracticalOutcome.Passed)).Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
        var attendedOn = await (from attendance in records.ClassAttendances
                                where attendance.PersonId == personId
                                join day in records.Classes on attendance.ClassId equals day.Id
                                where day.CourseId == courseId && day.HeldOn <= today
                                select (DateOnly?)day.HeldOn).MaxAsync(cancellation);
        return Retest.MayTry(checklist.Retest, tries, attendedOn, today);
    }
}
