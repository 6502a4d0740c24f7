using System.Runtime.CompilerServices;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>Reads the sittings of a quiz for its statistics: row by row, so that a million answers take no more memory than one sitting.</summary>
public static class AnsweredSittingQueries
{
    /// <summary>
    /// Each person's first sitting of a quiz, marked by its latest result. Later sittings of the same person are left out, since they depend on
    /// the first; so are disputed copies, what an appeal set aside, and questions that were left out of the grading afterwards.
    /// </summary>
    /// <param name="records">Where from.</param>
    /// <param name="quizId">Which quiz.</param>
    /// <param name="courseHashes">Drawn from one of these course texts.</param>
    /// <param name="cancellation">Ends the reading.</param>
    public static async IAsyncEnumerable<AnsweredSitting> AnsweredSittingsAsync(
        this RecordsContext records, string quizId, IReadOnlyCollection<string> courseHashes,
        [EnumeratorCancellation] CancellationToken cancellation)
    {
        AnsweredRow? first = null;
        var questions = new List<AnsweredQuestion>();
        await foreach (var row in records.AnsweredRows(quizId, courseHashes).AsAsyncEnumerable().WithCancellation(cancellation))
        {
            if (first is { } known && known.SittingId != row.SittingId)
            {
                yield return new(known.StartedAt, known.IsPassed, questions);
                (first, questions) = (row, new(questions.Count));
            }

            first ??= row;
            if (row.Mark is Mark.LeftOut) continue;
            questions.Add(new(row.QuestionId, row.Version, row.Mark, row.OptionIds ?? [], row.Language, row.SavedAt));
        }

        if (first is { } last) yield return new(last.StartedAt, last.IsPassed, questions);
    }

    /// <summary>Which texts of a course sittings of a quiz were drawn from, and how many sittings each; the newest text first.</summary>
    public static async Task<IReadOnlyList<DrawnText>> DrawnTextsAsync(this RecordsContext records, string quizId, CancellationToken cancellation) =>
        [
            .. (await records.Sittings.Where(sitting => sitting.QuizId == quizId && sitting.Copy == 1)
                    .GroupBy(sitting => sitting.CourseHash)
                    .Select(group => new
                    {
                        group.Key, Count = group.Count(), First = group.Min(sitting => sitting.TakenOn), Last = group.Max(sitting => sitting.TakenOn),
                    })
                    .ToListAsync(cancellation))
                .Select(text => new DrawnText(text.Key, text.Count, text.First, text.Last))
                .OrderByDescending(text => text.LastOn).ThenBy(text => text.CourseHash, StringComparer.Ordinal),
        ];

    /// <summary>
    /// Each person's first sitting of a quiz, of those that count: what an appeal set aside says nothing, and a later one depends on the first.
    /// </summary>
    internal static IQueryable<SittingRecord> FirstSittings(this RecordsContext records, string quizId) =>
        records.CountingSittings().Where(sitting => sitting.QuizId == quizId
            && !records.CountingSittings().Any(earlier =>
                earlier.PersonId == sitting.PersonId && earlier.QuizId == quizId && earlier.StartedAt < sitting.StartedAt));

    // The order is that of the sittings' key and of their results' key: no engine has to sort a million rows.
    private static IQueryable<AnsweredRow> AnsweredRows(this RecordsContext records, string quizId, IReadOnlyCollection<string> courseHashes) =>
        from sitting in records.FirstSittings(quizId)
        where courseHashes.Contains(sitting.CourseHash)
        join result in records.SittingResults on sitting.Id equals result.SittingId
        where !records.SittingResults.Any(later => later.SittingId == sitting.Id && later.Number > result.Number)
        from marked in records.Set<QuestionResultRecord>().Where(marked => marked.ResultId == result.Id)
        from drawn in records.Set<DrawnQuestionRecord>().Where(drawn => drawn.SittingId == sitting.Id && drawn.QuestionId == marked.QuestionId)
        from answer in records.Set<AnswerRecord>()
            .Where(answer => answer.SittingId == sitting.Id && answer.QuestionId == marked.QuestionId).DefaultIfEmpty()
        orderby sitting.Id, marked.Position
        select new AnsweredRow(
            sitting.Id,
            sitting.StartedAt,
            result.IsPassed,
            marked.QuestionId,
            drawn.QuestionVersion,
            marked.Mark,
            answer == null ? null : answer.OptionIds,
            answer == null ? null : answer.Language,
            answer == null ? null : answer.SavedAt);

    private sealed record AnsweredRow(
        Guid SittingId,
        DateTimeOffset StartedAt,
        bool IsPassed,
        string QuestionId,
        string Version,
        Mark Mark,
        IReadOnlyList<string>? OptionIds,
        Language? Language,
        DateTimeOffset? SavedAt);
}

/// <summary>A course text that sittings were drawn from.</summary>
/// <param name="CourseHash">The snapshot.</param>
/// <param name="Sittings">How many, of everybody and every try.</param>
/// <param name="FirstOn">Day of the first.</param>
/// <param name="LastOn">Day of the last.</param>
public sealed record DrawnText(string CourseHash, int Sittings, DateOnly FirstOn, DateOnly LastOn);
