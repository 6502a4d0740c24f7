using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>Whether a scorer may start a try.</summary>
/// <param name="Retest">The answer.</param>
/// <param name="IsGuarded">It counts a sheet as failed whose outcome the scorer may not know: a refusal says nothing about the candidate.</param>
public sealed record PracticalRetest(Retest Retest, bool IsGuarded);

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

    /// <summary>
    /// Whether the person may try a checklist on a subject on a day, as far as a scorer may know. Taken again is: attended a class of the
    /// course. Sheets of one try are one try, failed where one of them is. What is closed to the scorer counts as failed, so that the answer
    /// tells nothing about it.
    /// </summary>
    public static async Task<PracticalRetest> MayTryPracticalAsync(
        this RecordsContext records, string courseId, Checklist checklist, Subject subject, Guid personId, Guid scorerId, DateOnly today,
        CancellationToken cancellation)
    {
        var closed = records.SheetsClosedTo(scorerId, today);
        var sheets = await (from sheet in records.CountingScoresheets()
                           where sheet.CandidateId == personId && sheet.ChecklistId == checklist.Id && sheet.Subject == subject
                           join result in records.ScoresheetResults on sheet.Id equals result.ScoresheetId
                           where result.Number == records.ScoresheetResults.Where(other => other.ScoresheetId == sheet.Id).Max(other => other.Number)
                           orderby sheet.ScoredOn descending, sheet.Id
                           select new { sheet.ClassId, sheet.Try, sheet.ScoredOn, result.Outcome, IsClosed = closed.Any(one => one.Id == sheet.Id) }).Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
        var attendedOn = await (from attendance in records.SeatsTaught()
                                where attendance.PersonId == personId
                                join day in records.Classes on attendance.ClassId equals day.Id
                                where day.CourseId == courseId && day.HeldOn <= today
                                select (DateOnly?)day.HeldOn).MaxAsync(cancellation);
        EarlierTry[] tries =
        [
            .. sheets.Where(sheet => sheet.IsClosed || sheet.Outcome != PracticalOutcome.Incomplete).GroupBy(sheet => (sheet.ClassId, sheet.Try))
                .Select(one => new EarlierTry(one.Max(sheet => sheet.ScoredOn), one.All(sheet => !sheet.IsClosed && sheet.Outcome == PracticalOutcome.Passed))),
        ];
        return new(Retest.MayTry(checklist.Retest, tries, attendedOn, today), sheets.Exists(sheet => sheet.IsClosed));
    }
}
