using Training.Courses;
using Training.Web.Shelf;

namespace Training.Web.Features.Reminders;

/// <summary>What the courses on the shelf say of reminders.</summary>
internal static class ShelfReminders
{
    /// <summary>All milestones of all schemes.</summary>
    public static IEnumerable<Duration> Remind(this CourseShelf shelf) => shelf.Courses.SelectMany(course => course.Scheme.Remind);
}
