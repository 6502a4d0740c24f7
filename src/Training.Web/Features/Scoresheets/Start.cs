using Training.Certification;
using Training.Courses;
using Training.Scoring;
using Training.Web.Features.ClassDays;
using Training.Web.Languages;

namespace Training.Web.Features.Scoresheets;

/// <summary>Everything that is known before a scoresheet is started.</summary>
/// <param name="Day">The class.</param>
/// <param name="Course">In force now.</param>
/// <param name="Checklist">What is scored.</param>
/// <param name="CandidateId">Who is assessed.</param>
/// <param name="Candidate">By name.</param>
/// <param name="CandidateLanguage">Theirs; the instructions are read in it unless the form says otherwise.</param>
/// <param name="InstructorId">Who scores: the visitor.</param>
/// <param name="IsToday">The class is held today, on its site's calendar.</param>
/// <param name="Bond">The teaching within two years that asks for a written reason, or null.</param>
/// <param name="ModelPass">The candidate's latest pass on the model, or null.</param>
/// <param name="Tries">The highest try signed at this class, by subject.</param>
/// <param name="Retests">Whether the candidate may try, by subject of the checklist.</param>
/// <param name="Kit">The pieces in use, as they stand on the day of the class, by kind and label.</param>
/// <param name="SetAside">On what a sheet of the visitor about this candidate was set aside that another scorer repeats.</param>
/// <param name="Watchers">Who may watch: of the class, and programme leads; neither candidate nor scorer.</param>
public sealed record Start(
    ClassDay Day,
    Course Course,
    Checklist Checklist,
    Guid CandidateId,
    string Candidate,
    Language CandidateLanguage,
    Guid InstructorId,
    bool IsToday,
    Teaching? Bond,
    ModelPass? ModelPass,
    IReadOnlyDictionary<Subject, int> Tries,
    IReadOnlyDictionary<Subject, Retest> Retests,
    IReadOnlyList<KitOnDay> Kit,
    IReadOnlyList<Subject> SetAside,
    IReadOnlyList<(Guid Id, string Name)> Watchers)
{
    /// <summary>Of the site.</summary>
    public TimeZoneInfo Zone => TimeZoneInfo.FindSystemTimeZoneById(Day.Zone);

    /// <summary>The visitor is the candidate.</summary>
    public bool IsOneself => CandidateId == InstructorId;

    /// <summary>Why the candidate may not try on this subject today, or null.</summary>
    public Problem? FindRetestProblem(Subject subject) => Retests.GetValueOrDefault(subject) switch
    {
        Retest.FromDay(var day) => new(ScoresheetFormProblems.TooSoon, Place.Of(nameof(Subject)), Written.Date(day)),
        Retest.WhenTakenAgain(var failedOn) => new(ScoresheetFormProblems.ClassAgain, Place.Of(nameof(Subject)), Written.Date(failedOn)),
        _ => null,
    };

    /// <summary>The number of the next try.</summary>
    public int TryOf(Subject subject) => Tries.GetValueOrDefault(subject) + 1;
}

/// <summary>What the start form is given.</summary>
/// <param name="Start">What is known.</param>
/// <param name="Form">What was typed, or the empty form.</param>
public sealed record StartPage(Start Start, StartForm Form);
