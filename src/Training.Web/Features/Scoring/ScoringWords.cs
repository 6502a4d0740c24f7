using System.Diagnostics;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Scoring;

namespace Training.Web.Features.Scoring;

/// <summary>Puts marks and outcomes in words.</summary>
public static class ScoringWords
{
    /// <summary>What a mark is called.</summary>
    public static string Of(this IStringLocalizer<ScoringText> text, Observation? mark) => mark switch
    {
        Observation.Done => text["Done"],
        Observation.DoneAfterPrompt => text["DoneAfterPrompt"],
        Observation.NotDone => text["NotDone"],
        Observation.NotObserved => text["NotObserved"],
        null => text["NoMark"],
    };

    /// <summary>What an overall impression is called.</summary>
    public static string Of(this IStringLocalizer<ScoringText> text, Impression? impression) => impression switch
    {
        Impression.NotReady => text["NotReady"],
        Impression.Borderline => text["Borderline"],
        Impression.Ready => text["Ready"],
        Impression.Assured => text["Assured"],
        null => text["NoImpression"],
    };

    /// <summary>What a practical was done on.</summary>
    public static string Of(this IStringLocalizer<ScoringText> text, Subject subject) => subject switch
    {
        Subject.Model => text["OnModel"],
        Subject.Live => text["OnLive"],
    };

    /// <summary>What a sheet comes to, as a sentence.</summary>
    public static string Says(this IStringLocalizer<ScoringText> text, ScoresheetResult result, Checklist checklist) => result.Outcome switch
    {
        PracticalOutcome.Passed => text["SaysPassed", result.Points, result.MaxPoints],
        PracticalOutcome.Failed => result.Reasons.OfType<ScoresheetReason.Stopped>().FirstOrDefault() is { } stop
            ? text["SaysStopped", checklist.NumberOf(stop.StepId)]
            : result.Reasons is [ScoresheetReason.OverTime late]
                ? text["SaysOverTime", Clock(late.Seconds), Clock(late.LimitSeconds)]
                : text["SaysFailed", result.Points, result.MaxPoints],
        PracticalOutcome.Incomplete => text["SaysIncomplete"],
    };

    /// <summary>Why it is not passed, one sentence a reason; steps not observed stand in one.</summary>
    public static IEnumerable<string> Because(this IStringLocalizer<ScoringText> text, IReadOnlyList<ScoresheetReason> reasons, Checklist checklist)
    {
        foreach (var reason in reasons.Where(reason => reason is not ScoresheetReason.StepNotObserved)) yield return text.Because(reason, checklist);
        var unseen = reasons.OfType<ScoresheetReason.StepNotObserved>().Select(reason => checklist.NumberOf(reason.StepId)).ToList();
        if (unseen.Count > 0) yield return text["StepsNotObserved", string.Join(", ", unseen)];
    }

    private static string Because(this IStringLocalizer<ScoringText> text, ScoresheetReason reason, Checklist checklist) => reason switch
    {
        ScoresheetReason.BelowPass below => text["BelowPass", below.Points, below.MaxPoints, below.PassPercent],
        ScoresheetReason.OverTime late => text["OverTime", Clock(late.Seconds), Clock(late.LimitSeconds)],
        ScoresheetReason.CriticalStepFailed failed => text["CriticalStepFailed", checklist.NumberOf(failed.StepId)],
        ScoresheetReason.Stopped stopped => text["StoppedAt", checklist.NumberOf(stopped.StepId)],
        _ => throw new UnreachableException(),
    };

    /// <summary>Seconds as minutes and seconds: 275 is 4:35.</summary>
    public static string Clock(int seconds) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{seconds / 60}:{seconds % 60:00}");

    /// <summary>The place of a step, from 1.</summary>
    public static int NumberOf(this Checklist checklist, string stepId) => checklist.Steps.Index().First(step => step.Item.Id == stepId).Index + 1;
}
