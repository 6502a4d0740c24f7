using System.Diagnostics;
using Training.Courses;
using Training.Scoring;

namespace Training.Certification;

/// <summary>What was found for one requirement: a result to rest on, or why there is none.</summary>
/// <param name="ResultId">The result chosen, also where <paramref name="Reasons"/> say that it cannot count; null for a scheme held.</param>
/// <param name="ScorerId">Who scored it; null where nobody did.</param>
/// <param name="Exception">The recorded exception that it needs, if any.</param>
/// <param name="Reasons">Empty where the requirement is met.</param>
internal sealed record RequirementFinding(
    Guid? ResultId, Guid? ScorerId, SeparationException? Exception, IReadOnlyList<DecisionReason> Reasons)
{
    public static RequirementFinding Unmet(params IReadOnlyList<DecisionReason> reasons) => new(null, null, null, reasons);
}

/// <summary>Looks for what each requirement asks for.</summary>
/// <param name="file">What there is.</param>
/// <param name="decider">Who decides: a sheet of another scorer is taken before the decider's own.</param>
/// <param name="on">The day of the decision.</param>
/// <param name="windowOpensOn">For a renewal the first day that evidence may be dated; null for a grant.</param>
/// <remarks>Rule: docs/rules.md, "Evidence and its age", "Two scorers of one try" and "Separation of hats".</remarks>
internal sealed class EvidenceSearch(CaseFile file, Decider decider, DateOnly on, DateOnly? windowOpensOn)
{
    /// <summary>What answers a requirement: one finding, or one for each try of practice.</summary>
    public IReadOnlyList<RequirementFinding> Find(Requirement requirement) => requirement switch
    {
        Requirement.PassedQuiz quiz => [Weigh(quiz, quiz.GreatestAge, ResultsOf(quiz))],
        Requirement.PassedPractical practical => [Weigh(practical, practical.GreatestAge, ResultsOf(practical))],
        Requirement.Practised practised => Count(practised),
        Requirement.Holds holds => [Look(holds)],
        _ => throw new UnreachableException(),
    };

    /// <summary>The last day through which the requirement stays met if nothing is added; null where it is not met.</summary>
    /// <remarks>Rule: docs/rules.md, "What is to be done next".</remarks>
    public DateOnly? FindMetUntil(Requirement requirement) => requirement switch
    {
        Requirement.PassedQuiz quiz => LastDayOf(quiz, quiz.GreatestAge, ResultsOf(quiz)),
        Requirement.PassedPractical practical => LastDayOf(practical, practical.GreatestAge, ResultsOf(practical)),
        Requirement.Practised practised => LastDayOf(practised),
        Requirement.Holds holds => Look(holds).Reasons.Count == 0 && FindHeld(holds.SchemeId) is { } held ? Standings.ExpiresOn(held, on) : null,
        _ => throw new UnreachableException(),
    };

    private HeldCertification? FindHeld(string schemeId) => file.Held.FirstOrDefault(held => held.SchemeId == schemeId);

    private RequirementFinding Look(Requirement.Holds holds)
    {
        var held = FindHeld(holds.SchemeId);
        var standing = held is null ? null : Standings.On(held, on);
        return standing is Standing.Current or Standing.RenewalDue
            ? RequirementFinding.Unmet()
            : RequirementFinding.Unmet(new DecisionReason.NotHeld(holds.SchemeId, standing));
    }

    private IEnumerable<Evidence> ResultsOf(Requirement.PassedQuiz quiz) =>
        file.Evidence.OfType<Evidence.OfQuiz>().Where(sitting => sitting.QuizId == quiz.QuizId);

    private IEnumerable<Evidence> ResultsOf(Requirement.PassedPractical practical) =>
        file.Evidence.OfType<Evidence.OfPractical>()
            .Where(sheet => sheet.ChecklistId == practical.ChecklistId && sheet.Subject == practical.Subject);

    private RequirementFinding Weigh(Requirement requirement, Duration greatestAge, IEnumerable<Evidence> evidence)
    {
        // Latest first, and by id within a day: the order in which results were handed in must not matter.
        Evidence[] results = [.. evidence.Where(e => e.On <= on).OrderByDescending(e => e.On).ThenBy(e => e.ResultId)];
        if (results.Length == 0) return RequirementFinding.Unmet(new DecisionReason.Missing(requirement));
        Evidence[] passes = [.. results.Where(IsPass)];
        if (passes.Length == 0) return RequirementFinding.Unmet(new DecisionReason.NotPassed(requirement, results[0].ResultId));

        Evidence[] counting = [.. passes.Where(e => !ReasonsOfAge(requirement, greatestAge, e).Any())];
        return counting.Length == 0
            ? RequirementFinding.Unmet([.. ReasonsOfAge(requirement, greatestAge, passes[0])])
            : counting.Select(e => Examine(requirement, e)).MinBy(Rank)!; // not null: there is at least one
    }

    /// <summary>The tries that practice rests on, one sheet of each; or why they are too few.</summary>
    private RequirementFinding[] Count(Requirement.Practised practised)
    {
        // Of each try the sheet that serves best: two who scored it saw one try.
        RequirementFinding[] tries =
            [.. TriesOf(practised).Select(sheets => sheets.Select(sheet => Examine(practised, sheet)).MinBy(Rank)!)]; // not null: a try has a sheet
        RequirementFinding[] counting = [.. tries.Where(one => one.Reasons.Count == 0).OrderBy(Rank).Take(practised.Times)];
        if (counting.Length == practised.Times) return counting;
        // A lead may write the reason for which a sheet of a scorer who taught counts: where that would be enough, it is all that is in the way.
        RequirementFinding[] taught =
            [.. tries.Where(one => one.Reasons is [DecisionReason.ScorerTaught]).Take(practised.Times - counting.Length)];
        return counting.Length + taught.Length == practised.Times
            ? [.. counting, .. taught]
            : [RequirementFinding.Unmet(new DecisionReason.PractisedTooLittle(practised, counting.Length))];
    }

    private DateOnly? LastDayOf(Requirement.Practised practised)
    {
        var days = TriesOf(practised).Select(sheets => sheets.Where(sheet => Examine(practised, sheet).Reasons.Count == 0).Max(sheet => (DateOnly?)sheet.On))
            .OfType<DateOnly>().OrderDescending().Take(practised.Times).ToList();
        return days.Count == practised.Times ? CountedThrough(days[^1], practised.Within) : null;
    }

    /// <summary>The tries that were passed on the model within the span, the latest first; of each its sheets, likewise.</summary>
    private IEnumerable<IEnumerable<Evidence.OfPractical>> TriesOf(Requirement.Practised practised) => file.Evidence.OfType<Evidence.OfPractical>()
        .Where(sheet => sheet.ChecklistId == practised.ChecklistId && sheet.Subject == Subject.Model && IsPass(sheet))
        .Where(sheet => sheet.On <= on && sheet.On >= practised.Within.Before(on))
        .OrderByDescending(sheet => sheet.On).ThenBy(sheet => sheet.ResultId)
        .GroupBy(sheet => (sheet.ClassId, sheet.Try));

    private DateOnly? LastDayOf(Requirement requirement, Duration greatestAge, IEnumerable<Evidence> evidence) => evidence
        .Where(e => e.On <= on && IsPass(e) && !ReasonsOfAge(requirement, greatestAge, e).Any())
        .Where(e => Examine(requirement, e).Reasons.Count == 0)
        .Max(e => (DateOnly?)CountedThrough(e.On, greatestAge));

    private static bool IsPass(Evidence evidence) => evidence switch
    {
        Evidence.OfQuiz sitting => sitting.IsPassed,
        Evidence.OfPractical sheet => sheet.Outcome == PracticalOutcome.Passed,
        _ => throw new UnreachableException(),
    };

    private IEnumerable<DecisionReason> ReasonsOfAge(Requirement requirement, Duration greatestAge, Evidence pass)
    {
        if (pass.On < greatestAge.Before(on))
            yield return new DecisionReason.TooOld(requirement, pass.ResultId, CountedThrough(pass.On, greatestAge));
        if (windowOpensOn is { } opensOn && pass.On < opensOn)
            yield return new DecisionReason.BeforeWindow(requirement, pass.ResultId, opensOn);
    }

    /// <summary>The last day from which counting back <paramref name="greatestAge"/> does not go past <paramref name="date"/>.</summary>
    private static DateOnly CountedThrough(DateOnly date, Duration greatestAge)
    {
        // Counting forward gives that day but at the end of a short month: 28 February + 1 month is 28 March,
        // yet 31 March - 1 month is 28 February too. At most three days lie between.
        var day = greatestAge.After(date);
        while (greatestAge.Before(day.AddDays(1)) <= date) day = day.AddDays(1);
        return day;
    }

    private RequirementFinding Examine(Requirement requirement, Evidence evidence)
    {
        if (evidence is not Evidence.OfPractical sheet) return new(evidence.ResultId, null, null, []);

        var reasons = new List<DecisionReason>();
        if (FindFailureOfSameTry(sheet) is { } failure) reasons.Add(new DecisionReason.ScorersDisagree(requirement, sheet.ResultId, failure.ResultId));
        if (sheet.ScorerId == file.PersonId) reasons.Add(new DecisionReason.ScoredThemselves(requirement, sheet.ResultId));
        SeparationException? exception = null;
        if (FindTeachingByScorer(sheet) is { } teaching)
        {
            if (string.IsNullOrWhiteSpace(sheet.SeparationReason))
                reasons.Add(new DecisionReason.ScorerTaught(requirement, sheet.ResultId, sheet.ScorerId, teaching.On));
            else
                exception = new(sheet.ResultId, sheet.ScorerId, sheet.SeparationReason);
        }

        return new(sheet.ResultId, sheet.ScorerId, exception, reasons);
    }

    private Evidence.OfPractical? FindFailureOfSameTry(Evidence.OfPractical pass) => file.Evidence.OfType<Evidence.OfPractical>()
        .Where(other => other.Outcome == PracticalOutcome.Failed && other.On <= on && IsSameTry(other, pass))
        .MinBy(other => other.ResultId);

    private static bool IsSameTry(Evidence.OfPractical one, Evidence.OfPractical other) =>
        (one.ClassId, one.ChecklistId, one.Subject, one.Try) == (other.ClassId, other.ChecklistId, other.Subject, other.Try);

    private Teaching? FindTeachingByScorer(Evidence.OfPractical sheet) =>
        file.Scheme.Separation == Separation.None ? null : ScorerBond.Find(file.TaughtBy, sheet.ScorerId, sheet.On);

    /// <summary>0 for a result that stands by itself, 1 for one that needs its exception, 2 for one that cannot count.</summary>
    private int Rank(RequirementFinding finding)
    {
        var isDecidersOwn = file.Scheme.Separation != Separation.None
            && decider is Decider.Lead lead && finding.ScorerId == lead.PersonId;
        if (isDecidersOwn || finding.Reasons.Count > 0) return 2;
        return finding.Exception is null ? 0 : 1;
    }
}
