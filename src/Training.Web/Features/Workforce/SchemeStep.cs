using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Courses;

namespace Training.Web.Features.Workforce;

/// <summary>What is to be done next about one person under one scheme, with what its words need.</summary>
/// <param name="Step">The rule's answer.</param>
/// <param name="Kind">Who decides: the rule, or a lead.</param>
/// <param name="Requirements">Each requirement with the names that its words need, and how it stands.</param>
/// <param name="NeedsClass">Whether a practical is to be done.</param>
/// <param name="Seat">The seat that they have at a class day for it, or null.</param>
/// <param name="NextClass">The next class day for it with a free seat at the employer's sites, or null.</param>
public sealed record SchemeStep(
    NextStep Step, SchemeKind Kind, IReadOnlyList<AskedState> Requirements, bool NeedsClass, SeatAhead? Seat, ClassAhead? NextClass)
{
    /// <summary>The step today.</summary>
    /// <param name="file">Everything about the person.</param>
    /// <param name="scheme">Under which rules.</param>
    /// <param name="courses">All courses: a requirement may name a quiz or checklist of another.</param>
    /// <param name="classes">Class days ahead.</param>
    /// <param name="today">The day.</param>
    /// <param name="language">Of the names.</param>
    public static SchemeStep Of(
        PersonFile file, Scheme scheme, IReadOnlyList<Course> courses, ClassDays classes, DateOnly today, Language language)
    {
        var step = NextSteps.For(file.Under(scheme), today);
        var (practicals, firstDay) = step switch
        {
            NextStep.NothingDue nothing => (Practicals(scheme.Renewal), nothing.WindowOpensOn),
            NextStep.AwaitsReview => ([], today),
            _ => (Practicals(step.Requirements.Where(state => !state.IsMet).Select(state => state.Requirement)), today),
        };
        var courseIds = courses.Where(course => course.Checklists.Any(checklist => practicals.Contains(checklist.Id)))
            .Select(course => course.Id).ToHashSet(StringComparer.Ordinal);
        return new(
            step, scheme.Kind,
            [.. step.Requirements.Select(state => new AskedState(Asked.Of(state.Requirement, courses, language), state.MetUntil))],
            practicals.Count > 0,
            classes.Seats[file.PersonId].FirstOrDefault(seat => seat.HeldOn >= firstDay && courseIds.Contains(seat.CourseId)),
            classes.Ahead.FirstOrDefault(day => day.FreeSeats > 0 && day.HeldOn >= firstDay && courseIds.Contains(day.CourseId)));
    }

    private static HashSet<string> Practicals(IEnumerable<Requirement> requirements) =>
    [
        .. requirements.Select(requirement => requirement switch
        {
            Requirement.PassedPractical practical => practical.ChecklistId,
            Requirement.Practised practised => practised.ChecklistId,
            _ => null,
        }).OfType<string>(),
    ];
}

/// <summary>A requirement with its names, and through when it stays met; null where it is not met.</summary>
public sealed record AskedState(Asked What, DateOnly? MetUntil);
