using Training.Courses;

namespace Training.Scoring;

/// <summary>The time limit of a quiz; off unless the quiz has one.</summary>
/// <remarks>Rule: docs/rules.md, "Grading a sitting".</remarks>
public static class TimeLimit
{
    /// <summary>The last instant at which an answer counts, that instant included; null where nothing is timed.</summary>
    public static DateTimeOffset? EndsAt(Quiz quiz, DateTimeOffset startedAt) =>
        quiz.TimeLimitMinutes is { } minutes ? startedAt.AddMinutes(minutes) : null;

    /// <summary>Whether an answer saved at that instant came after the limit.</summary>
    public static bool IsLate(Quiz quiz, DateTimeOffset startedAt, DateTimeOffset savedAt) => savedAt > EndsAt(quiz, startedAt);
}
