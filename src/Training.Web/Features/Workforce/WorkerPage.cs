using Training.Certification;
using Training.Courses;
using Training.Web.Features.Lives;
using Training.Web.Shelf;

namespace Training.Web.Features.Workforce;

/// <summary>What the page of one worker is given.</summary>
/// <param name="EmployerId">For addresses.</param>
/// <param name="Evidence">Everything about them.</param>
/// <param name="Schemes">What they hold or held, most urgent first, then what else there is.</param>
/// <param name="Results">Newest first.</param>
/// <param name="ClassDays">Days on which they were taught, newest first.</param>
public sealed record WorkerPage(
    Guid EmployerId,
    PersonEvidence Evidence,
    IReadOnlyList<PersonScheme> Schemes,
    IReadOnlyList<ResultLine> Results,
    IReadOnlyList<ClassDayLine> ClassDays)
{
    /// <summary>Holds that touch today. Their causes are for the person and the leads.</summary>
    public IReadOnlyList<Hold> Holds { get; init; } = [];

    /// <summary>Puts the page together.</summary>
    /// <param name="employerId">Whose page.</param>
    /// <param name="evidence">What was read.</param>
    /// <param name="shelf">The rules in force, and titles.</param>
    /// <param name="classes">Class days ahead.</param>
    /// <param name="today">The day.</param>
    /// <param name="language">Of the names.</param>
    public static WorkerPage Of(
        Guid employerId, PersonEvidence evidence, CourseShelf shelf, ClassDays classes, DateOnly today, Language language)
    {
        var ids = shelf.Used.Select(course => course.Id).Union(evidence.File.Held.Select(held => held.SchemeId), StringComparer.Ordinal);
        var schemes = ids.Select(id =>
        {
            var held = evidence.File.Held.FirstOrDefault(certification => certification.SchemeId == id);
            var step = shelf.Find(id) is { } course
                ? SchemeStep.Of(evidence.File, course.Scheme, shelf.Courses, classes, today, language)
                : null;
            return new PersonScheme(
                id, shelf.TitleOf(id, language), held, held is null ? null : Standings.On(held, today),
                held is null ? null : Standings.ExpiresOn(held, today), step, held is null ? null : TimeStrip.Of(held, today),
                evidence.Kept.FirstOrDefault(one => one.SchemeId == id) is { } kept
                    ? LifeView.Of(kept, today, LifeReader.Employer, new Dictionary<Guid, string>())
                    : null);
        });
        return new(
            employerId,
            evidence,
            [.. schemes.OrderBy(scheme => Urgency(scheme.Standing)).ThenBy(scheme => scheme.ExpiresOn)],
            [.. evidence.File.Evidence.OrderByDescending(result => result.On).ThenBy(result => result.ResultId)
                .Select(result => ResultLine.Of(result, evidence.Names, shelf, language))],
            [.. evidence.File.TaughtBy.Where(teaching => teaching.On <= today)
                .GroupBy(teaching => (teaching.On, teaching.ClassId)).OrderByDescending(day => day.Key.On)
                .Select(day => new ClassDayLine(day.Key.On, [.. day.Select(teaching => evidence.Names.GetValueOrDefault(teaching.InstructorId))]))]);
    }

    private static int Urgency(Standing? standing) => standing switch
    {
        Standing.Suspended => 0,
        Standing.Lapsed => 1,
        Standing.Withdrawn => 2,
        Standing.RenewalDue => 3,
        Standing.Current => 4,
        null => 5,
    };
}

/// <summary>One scheme on the page of a worker.</summary>
/// <param name="Id">For addresses.</param>
/// <param name="Title">In the page's language.</param>
/// <param name="Held">What they hold or held; null where never.</param>
/// <param name="Standing">Today; null where never held.</param>
/// <param name="ExpiresOn">Last day of the period that today belongs to.</param>
/// <param name="Step">What is to be done; null where the course is not on the shelf just now.</param>
/// <param name="Strip">Its time, drawn; null where never held.</param>
/// <param name="Life">Its history, newest first; null where never held.</param>
public sealed record PersonScheme(
    string Id, string Title, HeldCertification? Held, Standing? Standing, DateOnly? ExpiresOn, SchemeStep? Step, TimeStrip? Strip,
    LifeView? Life);

/// <summary>A day on which somebody was taught.</summary>
/// <param name="On">The day.</param>
/// <param name="Teachers">Names; null for one that was erased.</param>
public sealed record ClassDayLine(DateOnly On, IReadOnlyList<string?> Teachers);

/// <summary>One result, as far as an employer reads it.</summary>
/// <param name="On">The day of the sitting or sheet.</param>
/// <param name="Title">Of the course whose quiz it was, or of the checklist.</param>
/// <param name="Evidence">What it came to.</param>
/// <param name="ScorerName">Who scored a practical; null for a quiz, and where the name was erased.</param>
public sealed record ResultLine(DateOnly On, string Title, Evidence Evidence, string? ScorerName)
{
    /// <summary>Looks the names up.</summary>
    public static ResultLine Of(Evidence evidence, IReadOnlyDictionary<Guid, string> names, CourseShelf shelf, Language language) => evidence switch
    {
        Evidence.OfQuiz sitting => new(
            sitting.On,
            shelf.Courses.FirstOrDefault(course => course.Quiz.Id == sitting.QuizId)?.Scheme.Words[language].Title ?? sitting.QuizId,
            sitting, null),
        Evidence.OfPractical sheet => new(
            sheet.On,
            shelf.Courses.SelectMany(course => course.Checklists).FirstOrDefault(list => list.Id == sheet.ChecklistId)?.Words[language].Title
                ?? sheet.ChecklistId,
            sheet, names.GetValueOrDefault(sheet.ScorerId)),
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
