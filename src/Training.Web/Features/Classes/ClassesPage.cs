using Training.Web.Features.People;

namespace Training.Web.Features.Classes;

/// <summary>Classes to come and past ones, and the form of a new one.</summary>
/// <param name="Today">The lead's.</param>
/// <param name="Coming">Today's and later ones, the next first.</param>
/// <param name="Past">The last first.</param>
/// <param name="Titles">Of courses, by id.</param>
/// <param name="Courses">To choose from, by id.</param>
/// <param name="Sites">To choose from.</param>
/// <param name="Form">As typed.</param>
public sealed record ClassesPage(
    DateOnly Today, IReadOnlyList<ClassLine> Coming, IReadOnlyList<ClassLine> Past, IReadOnlyDictionary<string, string> Titles,
    IReadOnlyList<string> Courses, IReadOnlyList<SiteChoice> Sites, ClassForm Form);

/// <summary>One class in the list.</summary>
public sealed record ClassLine(Guid Id, string CourseId, DateOnly HeldOn, string Site, string Employer, int Seats, int Taken);

/// <summary>One class.</summary>
/// <param name="Class">Which.</param>
/// <param name="Title">Of its course.</param>
/// <param name="Teachers">By name.</param>
/// <param name="Scorers">By name.</param>
/// <param name="Attending">By name.</param>
/// <param name="Instructors">Appointed on its day, to choose from.</param>
/// <param name="Employers">To choose from; the site's own first.</param>
/// <param name="Form">As typed.</param>
public sealed record ClassPage(
    ClassLine Class, string Title, IReadOnlyList<PersonChoice> Teachers, IReadOnlyList<PersonChoice> Scorers,
    IReadOnlyList<PersonChoice> Attending, IReadOnlyList<PersonChoice> Instructors, IReadOnlyList<(Guid Id, string Name)> Employers,
    AttendanceForm Form);

/// <summary>Somebody by name; null where it was erased.</summary>
public sealed record PersonChoice(Guid Id, string? Name);
