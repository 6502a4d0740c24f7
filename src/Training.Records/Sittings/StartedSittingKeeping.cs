using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>Starts sittings and keeps their answers one by one. What was answered with "kept" is on the disk.</summary>
public static class StartedSittingKeeping
{
    /// <summary>
    /// Starts a sitting, unless the person has an open one of that quiz: then that one is answered, so that two starts at once, or a
    /// second device, go on with the same questions. The same id again is the same sitting, submitted or not.
    /// </summary>
    /// <param name="records">Where to.</param>
    /// <param name="id">Made by the form.</param>
    /// <param name="personId">Who.</param>
    /// <param name="draw">Freshly drawn; dropped where a sitting is there already.</param>
    /// <param name="takenOn">The day in <paramref name="zone"/>.</param>
    /// <param name="zone">IANA time zone of the person's site, else the provider's.</param>
    /// <param name="reading">Who reads it out; a sitting that is there already keeps what was said at its start.</param>
    /// <param name="now">UTC.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <returns>The id of the sitting to go on with; null where <paramref name="id"/> is another person's.</returns>
    public static async Task<Guid?> StartSittingAsync(
        this RecordsContext records, Guid id, Guid personId, Draw draw, DateOnly takenOn, string zone, ReadOut reading, DateTimeOffset now,
        CancellationToken cancellation)
    {
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            var owner = await records.StartedSittings.Where(other => other.Id == id).Select(other => (Guid?)other.PersonId).SingleOrDefaultAsync(cancellation);
            if (owner is not null) return owner == personId ? id : null;
            var number = 1 + await records.Sittings.CountAsync(
                sent => sent.PersonId == personId && sent.QuizId == draw.QuizId && sent.Copy == 1, cancellation);
            var open = await records.StartedSittings
                .Where(other => other.PersonId == personId && other.QuizId == draw.QuizId && other.Number == number)
                .Select(other => (Guid?)other.Id).SingleOrDefaultAsync(cancellation);
            if (open is not null) return open;

            var row = new StartedSitting
            {
                Id = id, PersonId = personId, CourseHash = draw.CourseHash, QuizId = draw.QuizId, Number = number, Draw = draw,
                StartedAt = now, Zone = zone, TakenOn = takenOn, Aid = reading.Aid, ReadBy = reading.By,
            };
            if (await records.TryInsertAsync(cancellation, row)) return id;
        }

        throw new InvalidOperationException($"Sitting {id} was started by others {Bounds.Attempts} times over.");
    }

    /// <summary>Keeps an answer in place of an earlier one to the same question; one after the time limit lies beside the one in time.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="course">The snapshot that the draw comes from.</param>
    /// <param name="personId">Who answers.</param>
    /// <param name="sittingId">In which sitting.</param>
    /// <param name="answer">Saved now.</param>
    /// <param name="cancellation">Ends the wait; what was committed stays.</param>
    /// <returns>
    /// Stored; refused where it answers no drawn question, does not fit it, or the sitting was submitted
    /// (<see cref="RecordsProblems.SittingSubmitted"/>); null where the person has no such sitting.
    /// </returns>
    /// <exception cref="ArgumentException">The course is another snapshot.</exception>
    public static async Task<Kept?> SaveAnswerAsync(
        this RecordsContext records, Course course, Guid personId, Guid sittingId, Answer answer, CancellationToken cancellation)
    {
        await using var transaction = await records.Database.BeginTransactionAsync(cancellation);
        var sitting = await records.HoldStartedSittingAsync(personId, sittingId, cancellation);
        if (sitting is null) return null;
        if (sitting.Draw.CourseHash != course.Hash) throw new ArgumentException("The questions come from another snapshot.", nameof(course));
        if (ProblemsOf(sitting, course, answer) is { Count: > 0 } problems) return new Kept.Refused(problems);

        var savedAt = Instants.Truncate(answer.SavedAt);
        var row = new StartedAnswer
        {
            SittingId = sittingId,
            QuestionId = answer.QuestionId,
            IsLate = TimeLimit.IsLate(course.Quiz, sitting.StartedAt, savedAt),
            OptionIds = answer.OptionIds,
            Number = answer.Number,
            Language = answer.Language,
            SavedAt = savedAt,
        };
        await records.ReplaceAsync(row, cancellation);
        await transaction.CommitAsync(cancellation);
        return new Kept.Stored(sittingId);
    }

    /// <summary>
    /// Takes an answer back, if it is still the one that the person saw: an empty form from a tab that never showed the answer takes
    /// nothing. After the time limit an answer in time stays.
    /// </summary>
    /// <returns>As for <see cref="SaveAnswerAsync"/>; stored also where nothing was there to take back.</returns>
    public static async Task<Kept?> TakeBackAnswerAsync(
        this RecordsContext records, Course course, Guid personId, Guid sittingId, string questionId, DateTimeOffset seenSavedAt,
        DateTimeOffset now, CancellationToken cancellation)
    {
        await using var transaction = await records.Database.BeginTransactionAsync(cancellation);
        var sitting = await records.HoldStartedSittingAsync(personId, sittingId, cancellation);
        if (sitting is null) return null;
        if (sitting.IsSubmitted) return new Kept.Refused([Submitted(questionId)]);
        var isLate = TimeLimit.IsLate(course.Quiz, sitting.StartedAt, Instants.Truncate(now));
        await records.StartedAnswers
            .Where(other => other.SittingId == sittingId && other.QuestionId == questionId && other.IsLate == isLate && other.SavedAt == seenSavedAt)
            .ExecuteDeleteAsync(cancellation);
        await transaction.CommitAsync(cancellation);
        return new Kept.Stored(sittingId);
    }

    /// <summary>
    /// Reads a sitting of the person and holds it until the caller's transaction ends: nobody else saves an answer or submits meanwhile.
    /// Null where the person has no such sitting.
    /// </summary>
    /// <exception cref="InvalidOperationException">There is no transaction that would end the hold.</exception>
    public static async Task<KeptSitting?> HoldStartedSittingAsync(
        this RecordsContext records, Guid personId, Guid sittingId, CancellationToken cancellation)
    {
        if (records.Database.CurrentTransaction is null) throw new InvalidOperationException("Begin a transaction first.");
        var held = await records.StartedSittings.Where(sitting => sitting.Id == sittingId && sitting.PersonId == personId)
            .ExecuteUpdateAsync(row => row.SetProperty(sitting => sitting.Writes, sitting => sitting.Writes + 1), cancellation);
        return held == 0 ? null : await records.FindStartedSittingAsync(personId, sittingId, cancellation);
    }

    private static List<Problem> ProblemsOf(KeptSitting sitting, Course course, Answer answer)
    {
        if (sitting.IsSubmitted) return [Submitted(answer.QuestionId)];
        var problems = new List<Problem>();
        if (sitting.Draw.Questions.All(drawn => drawn.QuestionId != answer.QuestionId))
            problems.Add(new(SittingProblems.AnswerNotDrawn, Place.Of($"question {answer.QuestionId}"), answer.QuestionId));
        else
            AnswerCheck.Run(course.Questions.Single(question => question.Id == answer.QuestionId), answer, problems);
        return problems;
    }

    private static Problem Submitted(string questionId) => RecordsProblems.At($"question {questionId}", RecordsProblems.SittingSubmitted);

    // The sitting is held, so that nobody else writes this answer between the two statements.
    private static async Task ReplaceAsync(this RecordsContext records, StartedAnswer row, CancellationToken cancellation)
    {
        await records.StartedAnswers
            .Where(other => other.SittingId == row.SittingId && other.QuestionId == row.QuestionId && other.IsLate == row.IsLate)
            .ExecuteDeleteAsync(cancellation);
        if (!await records.TryInsertAsync(cancellation, row)) throw new InvalidOperationException($"Sitting {row.SittingId} was not held.");
    }
}
