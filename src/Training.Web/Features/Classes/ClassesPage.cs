using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Scoring;
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
/// <param name="Id">Which.</param>
/// <param name="CourseId">Of which course.</param>
/// <param name="HeldOn">The day, in the site's zone.</param>
/// <param name="StartsAt">The start, on the clocks of the site.</param>
/// <param name="LengthMinutes">How long it lasts.</param>
/// <param name="Site">Where.</param>
/// <param name="Zone">IANA time zone of the site.</param>
/// <param name="Employer">Whose site.</param>
/// <param name="Seats">How many.</param>
/// <param name="Taken">How many are taken.</param>
/// <param name="Waiting">How many people wait.</param>
/// <param name="CancelledBecause">Why it does not take place; null where it does.</param>
public sealed record ClassLine(
    Guid Id, string CourseId, DateOnly HeldOn, TimeOnly StartsAt, int LengthMinutes, string Site, string Zone, string Employer, int Seats, int Taken, int Waiting,
    string? CancelledBecause)
{
    /// <summary>When it ends, on the clocks of the site.</summary>
    public TimeOnly EndsAt
    {
        get
        {
            var zone = TimeZoneInfo.FindSystemTimeZoneById(Zone);
            return TimeOnly.FromDateTime(TimeZoneInfo.ConvertTime(new ClassTime(HeldOn, StartsAt, LengthMinutes, "").End(zone), zone).DateTime);
        }
    }
}

/// <summary>One class.</summary>
/// <param name="Class">Which.</param>
/// <param name="Title">Of its course.</param>
/// <param name="Teachers">By name.</param>
/// <param name="Scorers">By name.</param>
/// <param name="Today">The day it is at its site.</param>
/// <param name="Attending">Who has a seat, by name.</param>
/// <param name="Waiting">Who waits, the first in line first.</param>
/// <param name="Presences">The newest word on whether somebody came, by person.</param>
/// <param name="Results">What was scored here, by name.</param>
/// <param name="Briefing">What is said about it; null where nothing is.</param>
/// <param name="Changes">What changed, newest first, with who changed it.</param>
/// <param name="Instructors">Appointed on its day, to choose from.</param>
/// <param name="Employers">To choose from; the site's own first.</param>
/// <param name="Forms">As typed.</param>
public sealed record ClassPage(
    ClassLine Class, string Title, DateOnly Today, IReadOnlyList<PersonChoice> Teachers, IReadOnlyList<PersonChoice> Scorers,
    IReadOnlyList<PersonChoice> Attending, IReadOnlyList<PersonChoice> Waiting, IReadOnlyDictionary<Guid, ClassPresence> Presences,
    IReadOnlyList<ClassResult> Results, ClassBriefing? Briefing, IReadOnlyList<(ClassChange Change, string? By)> Changes,
    IReadOnlyList<PersonChoice> Instructors, IReadOnlyList<(Guid Id, string Name)> Employers, ClassPageForms Forms);

/// <summary>A scoresheet that was signed at a class and counts.</summary>
/// <param name="PersonId">Who was scored.</param>
/// <param name="Name">By name; null where it was erased.</param>
/// <param name="Checklist">Title of the checklist.</param>
/// <param name="Subject">The model, or a live snake.</param>
/// <param name="Try">Which try at the class.</param>
/// <param name="Outcome">What it came to.</param>
/// <param name="Scorer">Who scored; null where the name was erased.</param>
public sealed record ClassResult(Guid PersonId, string? Name, string Checklist, Subject Subject, int Try, PracticalOutcome Outcome, string? Scorer);

/// <summary>The forms on the page of a class, as typed; null where nothing was.</summary>
public sealed record ClassPageForms
{
    /// <summary>Of a new seat.</summary>
    public AttendanceForm Seat { get; init; } = new() { Id = Guid.CreateVersion7() };

    /// <summary>That moves the class or changes its seats.</summary>
    public ChangeForm? Change { get; init; }

    /// <summary>That cancels it.</summary>
    public CancellationForm? Cancellation { get; init; }

    /// <summary>Of what its people are to know.</summary>
    public BriefingForm? Briefing { get; init; }

    /// <summary>Whose seat could not be given back.</summary>
    public Guid? RefusedPersonId { get; init; }
}

/// <summary>Somebody by name; null where it was erased.</summary>
public sealed record PersonChoice(Guid Id, string? Name);
