using Training.Certification;
using Training.Courses;
using Training.Web.Features.Courses;

namespace Training.Web.Features.MyTraining;

/// <summary>What changed rules mean for the visitor.</summary>
/// <param name="Change">The change, as everybody reads it.</param>
/// <param name="State">What it means for the visitor's own certification.</param>
public sealed record OwnChange(RulesChange Change, TransitionState State)
{
    /// <summary>The changes that bind the visitor: of the rules in force, then of those announced.</summary>
    /// <param name="course">The text in force.</param>
    /// <param name="coming">The text that is announced, or null.</param>
    /// <param name="all">All courses.</param>
    /// <param name="file">Everything of the visitor.</param>
    /// <param name="today">The day.</param>
    /// <param name="language">Of the page.</param>
    public static IReadOnlyList<OwnChange> Of(
        Course course, Course? coming, IReadOnlyList<Course> all, CaseFile file, DateOnly today, Language language) =>
    [
        .. new[] { Find(course, isComing: false, all, file, today, language), coming is null ? null : Find(coming, isComing: true, all, file, today, language) }
            .OfType<OwnChange>(),
    ];

    private static OwnChange? Find(Course course, bool isComing, IReadOnlyList<Course> all, CaseFile file, DateOnly today, Language language) =>
        TransitionState.Of(file with { Scheme = course.Scheme }, today) is { } state && RulesChange.Find(course, all, isComing, language) is { } change
            ? new(change, state)
            : null;
}
