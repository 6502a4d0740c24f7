using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Shelf;

namespace Training.Web.Features.MyTraining;

/// <summary>
/// Which courses somebody is offered: those that the provider uses, those under which they hold or held something and may renew it, and those
/// whose quiz one of these asks for.
/// </summary>
public static class OfferedCourses
{
    /// <summary>The course, or null where it is not offered to this person.</summary>
    public static async Task<Course?> FindOfferedAsync(
        this RecordsContext records, CourseShelf shelf, Guid personId, string courseId, CancellationToken cancellation)
    {
        if (shelf.FindUsed(courseId) is { } used) return used;
        if (shelf.Find(courseId) is not { } course) return null;
        var held = await records.Periods.Where(period => period.PersonId == personId).Select(period => period.SchemeId).Distinct().ToListAsync(cancellation);
        var own = shelf.Used.Concat(held.Select(shelf.Find).OfType<Course>());
        return held.Contains(course.Id) || own.Any(other => AsksFor(other.Scheme, course.Quiz.Id)) ? course : null;
    }

    private static bool AsksFor(Scheme scheme, string quizId) =>
        scheme.Grant.Concat(scheme.Renewal).Concat(scheme.Transition?.Also ?? []).Any(requirement => requirement is Requirement.PassedQuiz quiz && quiz.QuizId == quizId);
}
