using Training.Scoring;

namespace Training.Records;

/// <summary>A started sitting read back, submitted or not.</summary>
/// <param name="Id">The form's id.</param>
/// <param name="PersonId">Whose.</param>
/// <param name="CourseId">Which course the draw comes from.</param>
/// <param name="Number">1 for the person's first sitting of the quiz, as far as the records know.</param>
/// <param name="Draw">What is shown.</param>
/// <param name="StartedAt">UTC.</param>
/// <param name="TakenOn">The day of the start in <paramref name="Zone"/>.</param>
/// <param name="Zone">IANA time zone.</param>
/// <param name="Answers">In no order; for a question at most one in time and one late.</param>
/// <param name="IsSubmitted">What was submitted stands; no answer is taken any more.</param>
public sealed record KeptSitting(
    Guid Id,
    Guid PersonId,
    string CourseId,
    int Number,
    Draw Draw,
    DateTimeOffset StartedAt,
    DateOnly TakenOn,
    string Zone,
    IReadOnlyList<KeptAnswer> Answers,
    bool IsSubmitted)
{
    /// <summary>The answer that counts for a question: the one in time, else the late one, else null.</summary>
    public KeptAnswer? FindCounting(string questionId) =>
        Answers.Where(kept => kept.Answer.QuestionId == questionId).OrderBy(kept => kept.IsLate).FirstOrDefault();

    /// <summary>The last answer given to a question, late or not; null where none was.</summary>
    public KeptAnswer? FindLast(string questionId) =>
        Answers.Where(kept => kept.Answer.QuestionId == questionId).OrderByDescending(kept => kept.IsLate).FirstOrDefault();

    /// <summary>The sitting as it would be submitted now.</summary>
    /// <param name="now">UTC; an answer that another machine's clock stamped later moves the submission to its own instant.</param>
    public Sitting SubmittedAt(DateTimeOffset now)
    {
        var counting = Draw.Questions.Select(drawn => FindCounting(drawn.QuestionId)).OfType<KeptAnswer>().Select(kept => kept.Answer).ToList();
        return new(Id, PersonId, Draw, StartedAt, counting.Select(answer => answer.SavedAt).Append(now).Max(), counting);
    }
}

/// <summary>An answer as it was kept.</summary>
/// <param name="Answer">What was given, in which language, when.</param>
/// <param name="IsLate">Whether it came after the time limit.</param>
public sealed record KeptAnswer(Answer Answer, bool IsLate);
