using Microsoft.Extensions.Localization;
using Training.Scoring;

namespace Training.Web.Features.Calibrations;

/// <summary>Says marks and outcomes in words.</summary>
public static class MarkWords
{
    /// <summary>Marks in the order in which they are offered.</summary>
    public static IReadOnlyList<Observation> All { get; } = [Observation.Done, Observation.DoneAfterPrompt, Observation.NotDone, Observation.NotObserved];

    /// <summary>The word of a mark.</summary>
    public static string Of(this IStringLocalizer<CalibrationText> text, Observation mark) => mark switch
    {
        Observation.Done => text["Done"],
        Observation.DoneAfterPrompt => text["Prompted"],
        Observation.NotDone => text["NotDone"],
        Observation.NotObserved => text["NotSeen"],
    };

    /// <summary>The word of an outcome.</summary>
    public static string Of(this IStringLocalizer<CalibrationText> text, PracticalOutcome outcome) => outcome switch
    {
        PracticalOutcome.Passed => text["Passed"],
        PracticalOutcome.Failed => text["Failed"],
        PracticalOutcome.Incomplete => text["Incomplete"],
    };
}
