using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Shelf;

namespace Training.Web.Features.MyTraining;

/// <summary>Which courses somebody is offered: those that the provider uses, and those under which they hold or held something and may renew it.</summary>
public static class OfferedCourses
{
    /// <summary>The course, or null where it is not offered to this person.</summary>
    public static async Task<Course?> FindOfferedAsync(
        this RecordsContext records, CourseShelf shelf, Guid personId, string courseId, CancellationToken cancellation)
    {
        if (shelf.FindUsed(courseId) is { } used) return used;
        var course = shelf.Find(courseId);
        return course is not null && await records.Periods.AnyAsync(period => period.PersonId == personId && period.SchemeId == course.Scheme.Id, cancellation)
            ? course
            : null;
    }
}
