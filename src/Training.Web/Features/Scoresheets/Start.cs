using System.Globalization;
using Training.Certification;
using Training.Courses;
using Training.Records;
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
/// <param name="ModelPass">The candidate's latest pass on the model that no scorer failed and that is not closed to the visitor, or null.</param>
/// <param name="Tries">Signed and started at this class.</param>
/// <param name="Scorers">Who scores the tries, by name.</param>
/// <param name="Retests">Whether the candidate may try, by subject of the checklist, as far as the visitor may know.</param>
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
    TriesAtClass Tries,
    IReadOnlyDictionary<Guid, string> Scorers,
    IReadOnlyDictionary<Subject, PracticalRetest> Retests,
    IReadOnlyList<KitOnDay> Kit,
    IReadOnlyList<Subject> SetAside,
    IReadOnlyList<(Guid Id, string Name)> Watchers)
{
    /// <summary>Of the site.</summary>
    public TimeZoneInfo Zone => TimeZoneInfo.FindSystemTimeZoneById(Day.Zone);

    /// <summary>The day of the class, which is today wherever something is started.</summary>
    public DateOnly Today => Day.HeldOn;

    /// <summary>The visitor is the candidate.</summary>
    public bool IsOneself => CandidateId == InstructorId;

    /// <summary>Why the candidate may not try on this subject today, or null.</summary>
    public Problem? FindRetestProblem(Subject subject) => Retests.GetValueOrDefault(subject) switch
    {
        { Retest: not Retest.Allowed, IsGuarded: true } => new(ScoresheetFormProblems.ScoredByAnother, Place.Of(nameof(Subject))),
        { Retest: Retest.FromDay(var day) } => new(ScoresheetFormProblems.TooSoon, Place.Of(nameof(Subject)), Written.Date(day)),
        { Retest: Retest.WhenTakenAgain(var failedOn) } => new(ScoresheetFormProblems.ClassAgain, Place.Of(nameof(Subject)), Written.Date(failedOn)),
        _ => null,
    };

    /// <summary>
    /// Tries that the visitor may score a second time, by subject and number, with the names of who scores them. On a live snake only where the
    /// visitor may know of the pass on the model.
    /// </summary>
    public IReadOnlyList<SecondScoring> Second =>
    [
        .. Tries.Second.Where(sheet => sheet.Subject == Subject.Model || ModelPass is not null).GroupBy(sheet => (sheet.Subject, sheet.Try))
            .Select(one => new SecondScoring(one.Key.Subject, one.Key.Try, string.Join(", ", one.Select(sheet => Scorers[sheet.InstructorId]).Distinct()))),
    ];

    /// <summary>A live snake is closed to the visitor because the outcome on the model is.</summary>
    public bool IsModelClosed => ModelPass is null && Tries.Sheets.Any(sheet => sheet is { Subject: Subject.Model, IsClosed: true });
}

/// <summary>A try of another instructor that the visitor may score too.</summary>
/// <param name="Subject">On what.</param>
/// <param name="Try">Its number.</param>
/// <param name="Scorers">Who scores it, by name.</param>
public sealed record SecondScoring(Subject Subject, int Try, string Scorers)
{
    /// <summary>As a form posts it.</summary>
    public string Value => string.Create(CultureInfo.InvariantCulture, $"{(Subject == Subject.Live ? "live" : "model")}-{Try}");
}

/// <summary>What the start form is given.</summary>
/// <param name="Start">What is known.</param>
/// <param name="Form">What was typed, or the empty form.</param>
public sealed record StartPage(Start Start, StartForm Form);
