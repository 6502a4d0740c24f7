namespace Training.Courses;

/// <summary>What a practical is done on.</summary>
public enum Subject
{
    /// <summary>A model (rubber or rope) snake.</summary>
    Model,

    /// <summary>A live snake; only after a pass on the model (docs/rules.md, "Practicals").</summary>
    Live,
}

/// <summary>What a checklist observes.</summary>
public enum ChecklistKind
{
    /// <summary>Somebody handles a snake or a model. Never timed.</summary>
    Handling,

    /// <summary>Nobody handles anything, such as in a bite drill. May have a time limit where time is the skill.</summary>
    Drill,
}

/// <summary>What an instructor observes, step by step, in the order of the act.</summary>
/// <param name="Id">Unique across all courses.</param>
/// <param name="PassPercent">Least share of points, 1–100, compared as <c>points * 100 ≥ pass * max</c>.</param>
/// <param name="Subjects">What it may be scored on.</param>
/// <param name="Steps">In order; at least one.</param>
/// <param name="Words">Title and standard instructions; one entry for each language.</param>
/// <param name="Version">SHA-256 (lower-case hex) over structure and words.</param>
/// <param name="Kind">Handling, or a drill.</param>
/// <param name="TimeLimitMinutes">1–60, or null: not timed. Drills only (docs/rules.md, "Practicals").</param>
/// <param name="Retest">When it may be tried again; null: at any time. No part of the version: a sheet is scored the same whatever it says.</param>
public sealed record Checklist(
    string Id,
    int PassPercent,
    IReadOnlyList<Subject> Subjects,
    IReadOnlyList<ChecklistStep> Steps,
    IReadOnlyDictionary<Language, ChecklistWords> Words,
    string Version,
    ChecklistKind Kind = ChecklistKind.Handling,
    int? TimeLimitMinutes = null,
    RetestRules? Retest = null)
{
    /// <summary>Where the pass mark comes from, no part of the version; null where the provider set it without a panel.</summary>
    public Cut? Cut { get; init; }

    /// <summary>The time limit in seconds, or null: not timed.</summary>
    public int? TimeLimitSeconds => TimeLimitMinutes * 60;
}

/// <summary>One step of a checklist.</summary>
/// <param name="Id">Unique within the checklist.</param>
/// <param name="Objective">Id of the objective that it observes.</param>
/// <param name="IsCritical">True: failing it stops the practical.</param>
/// <param name="MayBePrompted">True: done after a prompt earns 1 of 2 points and, on a critical step, passes it. False: it earns 0.</param>
/// <param name="FactId">The fact or common practice that it rests on.</param>
public sealed record ChecklistStep(string Id, string Objective, bool IsCritical, bool MayBePrompted, string FactId);

/// <summary>The words of one checklist in one language.</summary>
/// <param name="Title">Plain text.</param>
/// <param name="InstructionsHtml">Read to every candidate before the start; carries the caution.</param>
/// <param name="StepHtml">What is to be seen, by step id.</param>
/// <param name="StepText">The same as plain text, for what shows no markup; guidance as its value.</param>
/// <param name="ReasonHtml">Why a step is critical, by step id; critical steps only.</param>
/// <param name="TimeReasonHtml">Why time is the skill and more time is refused; null where nothing is timed.</param>
public sealed record ChecklistWords(
    string Title,
    string InstructionsHtml,
    IReadOnlyDictionary<string, string> StepHtml,
    IReadOnlyDictionary<string, string> StepText,
    IReadOnlyDictionary<string, string> ReasonHtml,
    string? TimeReasonHtml = null);
