using Training.Certification;

namespace Training.Web.Features.ClassPlans;

/// <summary>How long a page lets the search go on.</summary>
public static class PlanSearch
{
    /// <summary>Partial plans that are looked at.</summary>
    public const int Steps = 5_000;

    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(5);

    /// <summary>Searches within both limits.</summary>
    public static ClassPlan Propose(PlanProblem problem, TimeProvider clock)
    {
        var startedAt = clock.GetTimestamp();
        return ClassPlanning.Propose(problem, Steps, () => clock.GetElapsedTime(startedAt) > Longest);
    }
}
