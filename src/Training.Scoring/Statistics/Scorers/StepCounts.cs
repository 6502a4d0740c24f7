using Training.Courses;

namespace Training.Scoring;

/// <summary>How often one step was done, prompted, not done and not observed.</summary>
/// <param name="StepId">Which.</param>
/// <param name="IsCritical">Whether failing it stops the practical.</param>
/// <param name="Done">Sheets.</param>
/// <param name="Prompted">Sheets.</param>
/// <param name="NotDone">Sheets.</param>
/// <param name="NotObserved">Sheets, those after a stop among them.</param>
public sealed record StepCounts(string StepId, bool IsCritical, int Done, int Prompted, int NotDone, int NotObserved)
{
    /// <summary>Sheets that observed it.</summary>
    public int Observed => Done + Prompted + NotDone;

    /// <summary>Share done without a prompt of those that observed it, with its 95 % interval.</summary>
    public Estimate<Interval> LikelyDone => ShareInterval.Wilson(Done, Observed, 0.95);

    /// <summary>The share itself, 0–1.</summary>
    public Estimate<double> ShareDone => Observed == 0 ? Obstacle.NoAnswers : (double)Done / Observed;

    /// <summary>Counts the steps of a checklist on sheets.</summary>
    public static IReadOnlyList<StepCounts> Of(Checklist checklist, IReadOnlyList<PerformanceSheet> sheets) =>
    [
        .. checklist.Steps.Select(step =>
        {
            var numbers = sheets.Select(sheet => sheet.Number(step.Id)).ToList();
            return new StepCounts(
                step.Id, step.IsCritical, numbers.Count(number => number == 2), numbers.Count(number => number == 1), numbers.Count(number => number == 0),
                numbers.Count(number => number is null));
        }),
    ];
}
