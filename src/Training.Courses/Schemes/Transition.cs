namespace Training.Courses;

/// <summary>
/// What those do who were certified by the rules before: a changed text of a scheme is published only with it (docs/course-format.md, "When rules
/// change"). They keep their terms through their last day, and renew by the rules in force.
/// </summary>
/// <param name="From">Mark of the rules that it takes over from, as <see cref="SchemeRules.MarkOf"/> gives it.</param>
/// <param name="By">Last day for what is asked besides; null where nothing is.</param>
/// <param name="Also">What is asked besides before the next renewal; empty: nothing.</param>
public sealed record Transition(string From, DateOnly? By, IReadOnlyList<Requirement> Also);
