using Training.Courses;

namespace Training.Scoring;

/// <summary>How one text of a question that turned out wrong is graded from now on. A closed family.</summary>
/// <param name="QuestionId">Which question.</param>
/// <param name="Version">The text that was shown; other texts of the question are graded as before.</param>
/// <remarks>Rule: docs/rules.md, "When a question turns out wrong".</remarks>
public abstract record KeyCorrection(string QuestionId, string Version)
{
    /// <summary>It is left out: it earns nothing, asks nothing, and the form is so much shorter.</summary>
    public sealed record LeaveOut(string QuestionId, string Version) : KeyCorrection(QuestionId, Version);

    /// <summary>It is marked by the key of a later text of the same question.</summary>
    /// <param name="QuestionId">Which question.</param>
    /// <param name="Version">The text that was shown.</param>
    /// <param name="By">The later text; see <see cref="Fits"/>.</param>
    public sealed record OtherKey(string QuestionId, string Version, Question By) : KeyCorrection(QuestionId, Version);

    /// <summary>
    /// Whether answers to one text of a question can be marked by the key of another: the same question, type, options and matches. Words
    /// may differ, since it is for people to say that they mean the same.
    /// </summary>
    public static bool Fits(Question shown, Question by) =>
        shown.Id == by.Id
        && shown.Key.GetType() == by.Key.GetType()
        && shown.OptionIds.ToHashSet(StringComparer.Ordinal).SetEquals(by.OptionIds)
        && MatchesOf(shown).SetEquals(MatchesOf(by));

    private static HashSet<string> MatchesOf(Question question) =>
        question.Key is QuestionKey.Match match ? [.. match.MatchIds] : [];
}
