using Training.Courses;

namespace Training.Scoring;

/// <summary>A drawn quiz, as stored: what was put before the person, not only the seed.</summary>
/// <param name="CourseHash">Snapshot that the questions come from.</param>
/// <param name="QuizId">Which quiz.</param>
/// <param name="Seed">Seed of the draw; kept for explanation, never needed to show or regrade it.</param>
/// <param name="Questions">In the order shown.</param>
public sealed record Draw(string CourseHash, string QuizId, ulong Seed, IReadOnlyList<DrawnQuestion> Questions);

/// <summary>One question of a draw.</summary>
/// <param name="QuestionId">Which question.</param>
/// <param name="QuestionVersion"><see cref="Question.Version"/> at the draw.</param>
/// <param name="OptionIds">Options in the order shown, for pairs followed by the matches in theirs; empty for a number.</param>
public sealed record DrawnQuestion(string QuestionId, string QuestionVersion, IReadOnlyList<string> OptionIds)
{
    /// <summary>The options in the order shown.</summary>
    /// <param name="question">The question that was drawn.</param>
    public IReadOnlyList<string> OptionsOf(Question question) => [.. OptionIds.Take(question.OptionIds.Count)];

    /// <summary>What can be matched, in the order shown; empty for other types than pairs.</summary>
    /// <param name="question">The question that was drawn.</param>
    public IReadOnlyList<string> MatchesOf(Question question) => [.. OptionIds.Skip(question.OptionIds.Count)];
}

/// <summary>One answer, as kept when it was given.</summary>
/// <param name="QuestionId">Which question.</param>
/// <param name="OptionIds">Chosen options: one for one answer, any number for several (order means nothing), all in order for order, the region for a spot, a <see cref="MatchPair"/> for each option of pairs; empty for a number.</param>
/// <param name="Number">The number typed, in the key's unit; null otherwise.</param>
/// <param name="Language">The language shown when it was given.</param>
/// <param name="SavedAt">UTC.</param>
public sealed record Answer(string QuestionId, IReadOnlyList<string> OptionIds, decimal? Number, Language Language, DateTimeOffset SavedAt);

/// <summary>One person's go at one drawn quiz, submitted.</summary>
/// <param name="Id">Made by the form before there is signal.</param>
/// <param name="PersonId">Who.</param>
/// <param name="Draw">What was shown.</param>
/// <param name="StartedAt">UTC.</param>
/// <param name="SubmittedAt">UTC.</param>
/// <param name="Answers">At most one a question: the last one kept. A question without one was left blank.</param>
public sealed record Sitting(
    Guid Id,
    Guid PersonId,
    Draw Draw,
    DateTimeOffset StartedAt,
    DateTimeOffset SubmittedAt,
    IReadOnlyList<Answer> Answers);

/// <summary>What grading a sitting found.</summary>
/// <param name="CourseHash">The key version that it was graded with.</param>
/// <param name="IsPassed">True where <paramref name="Reasons"/> is empty.</param>
/// <param name="Points">One for each right question.</param>
/// <param name="MaxPoints">One for each drawn question.</param>
/// <param name="Topics">In blueprint order.</param>
/// <param name="Questions">In the order shown.</param>
/// <param name="Reasons">All reasons why it is not passed; empty for a pass.</param>
public sealed record SittingResult(
    string CourseHash,
    bool IsPassed,
    int Points,
    int MaxPoints,
    IReadOnlyList<TopicResult> Topics,
    IReadOnlyList<QuestionResult> Questions,
    IReadOnlyList<SittingReason> Reasons);

/// <summary>Points of one topic.</summary>
public sealed record TopicResult(string Topic, int Points, int MaxPoints);

/// <summary>How one question was answered.</summary>
public enum Mark
{
    /// <summary>As the key says.</summary>
    Right,

    /// <summary>Not as the key says.</summary>
    Wrong,

    /// <summary>No answer was given.</summary>
    Blank,

    /// <summary>The answer came after the time limit; kept, not counted.</summary>
    Late,

    /// <summary>The question turned out wrong and was left out of the grading afterwards: it earns nothing and asks nothing.</summary>
    LeftOut,
}

/// <summary>One question's mark.</summary>
public sealed record QuestionResult(string QuestionId, string QuestionVersion, Mark Mark);

/// <summary>Why a sitting is not passed. A closed family.</summary>
public abstract record SittingReason
{
    private SittingReason()
    {
    }

    /// <summary>Too few points overall: <c>Points * 100 &lt; PassPercent * MaxPoints</c>.</summary>
    public sealed record BelowPass(int Points, int MaxPoints, int PassPercent) : SittingReason;

    /// <summary>Too few points in a topic with a minimum of its own.</summary>
    public sealed record TopicBelowPass(string Topic, int Points, int MaxPoints, int PassPercent) : SittingReason;

    /// <summary>A critical question was not answered right.</summary>
    public sealed record CriticalMissed(string QuestionId) : SittingReason;
}
