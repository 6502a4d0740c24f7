namespace Training.Courses;

/// <summary>The quiz of a course: what is drawn from the pool and what passes.</summary>
/// <param name="Id">Unique across all courses.</param>
/// <param name="PassPercent">Least share of points overall, 1–100, compared as <c>points * 100 ≥ pass * max</c>.</param>
/// <param name="TimeLimitMinutes">Minutes, or null: no limit. Off unless the scheme says so (standards: a limit must be adjustable).</param>
/// <param name="Blueprint">One row a topic, in the order of the course's topics.</param>
/// <param name="Retest">When it may be tried again; null: at any time.</param>
public sealed record Quiz(string Id, int PassPercent, int? TimeLimitMinutes, IReadOnlyList<BlueprintRow> Blueprint, RetestRules? Retest = null)
{
    /// <summary>Where the pass mark comes from; null where the provider set it without a panel.</summary>
    public Cut? Cut { get; init; }
}

/// <summary>How many questions of one topic a quiz draws.</summary>
/// <param name="Topic">Id of the topic.</param>
/// <param name="Questions">How many in all, at least 1.</param>
/// <param name="Critical">How many of them are critical; 0 to <paramref name="Questions"/>. Exactly so many, drawn from the critical pool.</param>
/// <param name="PassPercent">Least share of this topic's points, 0–100; 0 means no minimum of its own.</param>
public sealed record BlueprintRow(string Topic, int Questions, int Critical, int PassPercent);
