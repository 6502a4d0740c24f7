using Training.Courses;

namespace Training.Scoring;

/// <summary>What one observed step is worth.</summary>
internal static class StepMark
{
    /// <summary>Most points of a step.</summary>
    public const int Most = 2;

    /// <summary>2 done, 1 after a prompt where the step allows it, 0 otherwise.</summary>
    public static int Points(ChecklistStep step, Observation observation) => observation switch
    {
        Observation.Done => Most,
        Observation.DoneAfterPrompt => step.MayBePrompted ? 1 : 0,
        Observation.NotDone => 0,
        Observation.NotObserved => 0,
    };

    /// <summary>Whether a critical step was seen and earned nothing. A step not observed fails nothing: nobody saw it.</summary>
    public static bool FailsCritically(ChecklistStep step, Observation observation) =>
        step.IsCritical && observation != Observation.NotObserved && Points(step, observation) == 0;
}
