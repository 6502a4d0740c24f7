using Training.Courses;

namespace Training.Scoring;

/// <summary>A graded sitting as the statistics of a quiz read it: nobody's name, and nothing that does not count.</summary>
/// <param name="StartedAt">UTC.</param>
/// <param name="IsPassed">By its latest result.</param>
/// <param name="Questions">In the order shown; a question that was left out of the grading afterwards is not among them.</param>
public sealed record AnsweredSitting(DateTimeOffset StartedAt, bool IsPassed, IReadOnlyList<AnsweredQuestion> Questions)
{
    /// <summary>The language in which most of it was answered, the first of two that tie; null where nothing was answered.</summary>
    public Language? Language => Questions.Where(question => question.Language is not null)
        .GroupBy(question => question.Language).MaxBy(group => group.Count())?.Key;

    /// <summary>Questions answered right.</summary>
    public int Right => Questions.Count(question => question.Mark is Mark.Right);

    /// <summary>
    /// How long each question took, from the answer that was kept before it, whatever the order of the questions: people go back and forth.
    /// Null where there is no answer.
    /// </summary>
    public IReadOnlyList<TimeSpan?> Times()
    {
        var times = new TimeSpan?[Questions.Count];
        var before = StartedAt;
        foreach (var (place, savedAt) in Questions.Select((question, place) => (place, question.SavedAt))
            .Where(one => one.SavedAt is not null).OrderBy(one => one.SavedAt))
        {
            times[place] = savedAt - before;
            before = savedAt!.Value; // not null: chosen above
        }

        return times;
    }
}

/// <summary>One question as it was shown and answered.</summary>
/// <param name="QuestionId">Which question.</param>
/// <param name="Version">Its version as it was shown, whatever key marked it.</param>
/// <param name="Mark">By the latest result.</param>
/// <param name="OptionIds">What was chosen; empty for a number, and where nothing was.</param>
/// <param name="Language">Shown when it was answered; null where it was not.</param>
/// <param name="SavedAt">When the answer was kept last, UTC; null where there is none.</param>
public readonly record struct AnsweredQuestion(
    string QuestionId, string Version, Mark Mark, IReadOnlyList<string> OptionIds, Language? Language, DateTimeOffset? SavedAt);
