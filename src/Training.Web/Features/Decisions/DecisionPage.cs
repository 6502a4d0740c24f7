using Training.Certification;
using Training.Courses;
using Training.Web.Features.People;

namespace Training.Web.Features.Decisions;

/// <summary>A case side by side: what the scheme asks, what there is, what the rules say, and the form.</summary>
/// <param name="PersonId">About whom.</param>
/// <param name="Case">The case.</param>
/// <param name="Rows">By requirement, in the scheme's order; empty while it is too early.</param>
/// <param name="Words">Says reasons.</param>
/// <param name="TaughtBy">Who taught the person, with the last day of each.</param>
/// <param name="ScoredBy">Who scored what it would rest on.</param>
/// <param name="Form">The form as typed.</param>
/// <param name="Before">What was decided under this id before, where it differs; null otherwise.</param>
/// <param name="ExceptionOf">The sheet for which a reason was typed and not kept; null where the form is the decision's.</param>
public sealed record DecisionPage(
    Guid PersonId,
    DecisionCase Case,
    IReadOnlyList<DecisionRow> Rows,
    DecisionWords Words,
    IReadOnlyList<(Guid InstructorId, DateOnly LastOn)> TaughtBy,
    IReadOnlyList<Guid> ScoredBy,
    DecisionForm Form,
    EarlierDecision? Before,
    Guid? ExceptionOf = null);

/// <summary>What was kept under the form's id.</summary>
/// <param name="IsGranted">Granted, or refused.</param>
/// <param name="On">On which day.</param>
public sealed record EarlierDecision(bool IsGranted, DateOnly On);

/// <summary>One requirement and everything that answers it.</summary>
/// <param name="Requirement">What is asked.</param>
/// <param name="Results">The newest first; only what is dated by the day of the decision.</param>
/// <param name="RestsOn">The results that the decision would rest on; empty where there are none.</param>
/// <param name="Standing">Of the scheme asked to be held; null where it was never held, or the requirement asks for a result.</param>
/// <param name="HeldThrough">Last day of that scheme's period, or null.</param>
/// <param name="Reasons">What is in the way; empty where it is met.</param>
public sealed record DecisionRow(
    Requirement Requirement, IReadOnlyList<PersonResult> Results, IReadOnlyList<Guid> RestsOn, Standing? Standing, DateOnly? HeldThrough,
    IReadOnlyList<DecisionReason> Reasons)
{
    private const int MostResults = 4;

    /// <summary>The rows of a case.</summary>
    public static IReadOnlyList<DecisionRow> Of(DecisionCase @case, IReadOnlyList<PersonResult> results)
    {
        var (route, reasons) = @case.Decision switch
        {
            Decision.Granted granted => (granted.Route, []),
            Decision.NotYet notYet => (notYet.Route, notYet.Reasons),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        var scheme = @case.Course.Scheme;
        var restsOn = @case.Decision is Decision.Granted { RestsOn: var ids } ? ids : [];
        return [.. (route == Certification.Route.Grant ? scheme.Grant : scheme.Renewal)
            .Select(requirement => Of(requirement, @case, results, restsOn, reasons))];
    }

    private static DecisionRow Of(
        Requirement requirement, DecisionCase @case, IReadOnlyList<PersonResult> results, IReadOnlyList<Guid> restsOn,
        IReadOnlyList<DecisionReason> reasons)
    {
        var answers = results.Where(result => result.On <= @case.On && Answers(result, requirement)).ToList();
        var chosen = answers.FindAll(result => result.ResultId is { } id && restsOn.Contains(id));
        var shown = answers.Take(MostResults).Union(chosen).ToList();
        var held = requirement is Requirement.Holds holds ? @case.File.Held.FirstOrDefault(one => one.SchemeId == holds.SchemeId) : null;
        return new(
            requirement, shown, [.. chosen.Select(result => result.ResultId).OfType<Guid>()], held is null ? null : Standings.On(held, @case.On),
            held is null ? null : Standings.ExpiresOn(held, @case.On), [.. reasons.Where(reason => DecisionWords.AskedBy(reason) == requirement)]);
    }

    private static bool Answers(PersonResult result, Requirement requirement) => requirement switch
    {
        Requirement.PassedQuiz quiz => result.Subject is null && result.Of == quiz.QuizId,
        Requirement.Practised practised => result.Subject == Subject.Model && result.Of == practised.ChecklistId,
        Requirement.PassedPractical practical => result.Subject == practical.Subject && result.Of == practical.ChecklistId,
        _ => false,
    };
}
