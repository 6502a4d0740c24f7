using System.Diagnostics;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Courses;

namespace Training.Web.Features.MyTraining;

/// <summary>How the visitor stands under one scheme, and what comes next.</summary>
/// <param name="CourseId">For addresses.</param>
/// <param name="Title">What the paper calls it.</param>
/// <param name="Kind">Certificate of training, or certification.</param>
/// <param name="Standing">Today; null where it was never held.</param>
/// <param name="ExpiresOn">Last day of the period; null where it was never held.</param>
/// <param name="DaysLeft">From today to that day; negative after it.</param>
/// <param name="Step">What comes next.</param>
/// <param name="Needs">What the step asks; empty where nothing is asked now.</param>
/// <param name="Parts">How many parts there are to read.</param>
/// <param name="PartsRead">How many of them were read.</param>
/// <param name="Open">A sitting under way, or null.</param>
public sealed record SchemeLine(
    string CourseId,
    string Title,
    SchemeKind Kind,
    Standing? Standing,
    DateOnly? ExpiresOn,
    int DaysLeft,
    NextStep Step,
    IReadOnlyList<Need> Needs,
    int Parts,
    int PartsRead,
    OpenSitting? Open)
{
    /// <summary>Whether the visitor began it: read a part, started the quiz, or met a requirement of its own.</summary>
    public bool IsBegun => PartsRead > 0 || Open is not null || Needs.Any(need => need.IsMet && need.Asked is not Asked.Held);

    /// <summary>Whether the paper holds today.</summary>
    public bool IsCurrent => Standing is Certification.Standing.Current or Certification.Standing.RenewalDue;

    /// <summary>The first thing that is missing, or null.</summary>
    public Need? FirstMissing => Needs.FirstOrDefault(need => !need.IsMet);

    /// <summary>What comes first on the page: 0 for what must not wait.</summary>
    public int Urgency => Step switch
    {
        NextStep.AwaitsReview => 0,
        NextStep.RenewLate => 1,
        NextStep.Renew => 2,
        NextStep.GrantDue when Standing is not null => 3,
        NextStep.AwaitsDecision => 4,
        NextStep.GrantDue when IsBegun => 5,
        NextStep.NothingDue => 6,
        NextStep.GrantDue => 7,
        _ => throw new UnreachableException(),
    };

    /// <summary>By when something is to be done or happens, for the order of what is alike; null where there is no day.</summary>
    public DateOnly? By => Step switch
    {
        NextStep.AwaitsReview review => review.Deadline,
        NextStep.RenewLate late => late.GraceEndsOn,
        NextStep.Renew renew => renew.ExpiresOn,
        NextStep.NothingDue none => none.ExpiresOn,
        NextStep.AwaitsDecision awaits => awaits.Through,
        _ => null,
    };

    /// <summary>The line of one course.</summary>
    /// <param name="course">Which.</param>
    /// <param name="all">All courses: a requirement may name another.</param>
    /// <param name="file">Everything of the visitor, under this scheme.</param>
    /// <param name="today">The date at the visitor's site.</param>
    /// <param name="language">Of the page.</param>
    /// <param name="partsRead">How many parts were read.</param>
    /// <param name="open">The visitor's open sittings.</param>
    public static SchemeLine Of(
        Course course, IReadOnlyList<Course> all, CaseFile file, DateOnly today, Language language, int partsRead, IReadOnlyList<OpenSitting> open)
    {
        var held = file.Held.FirstOrDefault(certification => certification.SchemeId == course.Scheme.Id);
        var expiresOn = held is null ? null : Standings.ExpiresOn(held, today);
        var step = NextSteps.For(file, today);
        return new(
            course.Id,
            course.Scheme.Words[language].Title,
            course.Scheme.Kind,
            held is null ? null : Standings.On(held, today),
            expiresOn,
            expiresOn is { } last ? last.DayNumber - today.DayNumber : 0,
            step,
            [.. step.Requirements.Select(state => Need.Of(state, all, language))],
            course.Modules.Count,
            // A part that a newer text left out does not count beyond those there are.
            Math.Min(partsRead, course.Modules.Count),
            open.FirstOrDefault(sitting => sitting.QuizId == course.Quiz.Id));
    }
}

/// <summary>One thing that a step asks.</summary>
/// <param name="Asked">What, with names and figures.</param>
/// <param name="IsMet">Whether it is met today.</param>
/// <param name="MetUntil">Last day that it counts; null where it is not met, and for another paper that lasts.</param>
/// <param name="CourseId">Whose page leads on, or null where its course is not served.</param>
public sealed record Need(Asked Asked, bool IsMet, DateOnly? MetUntil, string? CourseId)
{
    /// <summary>The need of one requirement.</summary>
    public static Need Of(RequirementState state, IReadOnlyList<Course> all, Language language) => new(
        Asked.Of(state.Requirement, all, language),
        state.IsMet,
        state.MetUntil,
        state.Requirement switch
        {
            Requirement.PassedQuiz quiz => all.FirstOrDefault(course => course.Quiz.Id == quiz.QuizId)?.Id,
            Requirement.PassedPractical practical => all.FirstOrDefault(course => course.Checklists.Any(list => list.Id == practical.ChecklistId))?.Id,
            Requirement.Practised practised => all.FirstOrDefault(course => course.Checklists.Any(list => list.Id == practised.ChecklistId))?.Id,
            Requirement.Holds holds => all.FirstOrDefault(course => course.Id == holds.SchemeId)?.Id,
            _ => throw new UnreachableException(),
        });
}
