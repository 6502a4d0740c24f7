using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>An open sitting of a person.</summary>
/// <param name="Id">The form's id.</param>
/// <param name="QuizId">Which quiz.</param>
/// <param name="StartedAt">UTC.</param>
/// <param name="TakenOn">The day of the start in its zone.</param>
/// <param name="Questions">How many were drawn.</param>
/// <param name="Answered">How many of them have an answer.</param>
public sealed record OpenSitting(Guid Id, string QuizId, DateTimeOffset StartedAt, DateOnly TakenOn, int Questions, int Answered);

/// <summary>A submitted sitting of a person, by its latest result.</summary>
/// <param name="Id">The form's id.</param>
/// <param name="QuizId">Which quiz.</param>
/// <param name="TakenOn">The day that it counts as.</param>
/// <param name="SubmittedAt">UTC.</param>
/// <param name="IsPassed">Whether it was passed.</param>
/// <param name="Points">One for each right question.</param>
/// <param name="MaxPoints">One for each drawn question.</param>
public sealed record SentSitting(Guid Id, string QuizId, DateOnly TakenOn, DateTimeOffset SubmittedAt, bool IsPassed, int Points, int MaxPoints);

/// <summary>Reads the sittings of one person; what is another's is not found.</summary>
public static class StartedSittingQueries
{
    /// <summary>The started sitting of that id if it is this person's, or null.</summary>
    public static async Task<KeptSitting?> FindStartedSittingAsync(
        this RecordsContext records, Guid personId, Guid sittingId, CancellationToken cancellation)
    {
        var found = await (from sitting in records.StartedSittings.AsNoTracking()
                           where sitting.Id == sittingId && sitting.PersonId == personId
                           join snapshot in records.CourseSnapshots on sitting.CourseHash equals snapshot.Hash
                           select new { Row = sitting, snapshot.CourseId }).SingleOrDefaultAsync(cancellation);
        if (found is null) return null;
        var answers = await records.StartedAnswers.AsNoTracking().Where(answer => answer.SittingId == sittingId)
            .OrderBy(answer => answer.SavedAt).Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
        var isSubmitted = await records.Sittings.AnyAsync(
            sent => sent.FormId == sittingId && sent.PersonId == personId && sent.Copy == 1, cancellation);
        var row = found.Row;
        return new(
            row.Id, row.PersonId, found.CourseId, row.Number, row.Draw, row.StartedAt, row.TakenOn, row.Zone,
            answers.ConvertAll(answer => new KeptAnswer(
                new(answer.QuestionId, answer.OptionIds, answer.Number, answer.Language, answer.SavedAt), answer.IsLate)),
            isSubmitted);
    }

    /// <summary>The submitted sitting of that form id that counts, if it is this person's, or null.</summary>
    public static async Task<StoredSitting?> FindSittingAsync(
        this RecordsContext records, Guid personId, Guid formId, CancellationToken cancellation) =>
        await records.FindSittingAsync(formId, cancellation) is { } stored && stored.Sitting.PersonId == personId ? stored : null;

    /// <summary>The person's open sittings, at most one a quiz; the latest start first.</summary>
    public static async Task<IReadOnlyList<OpenSitting>> OpenSittingsOfAsync(
        this RecordsContext records, Guid personId, CancellationToken cancellation)
    {
        var rows = await (from sitting in records.StartedSittings.AsNoTracking()
                          where sitting.PersonId == personId
                          where !records.Sittings.Any(sent => sent.FormId == sitting.Id && sent.PersonId == personId)
                          orderby sitting.StartedAt descending
                          select new
                          {
                              Row = sitting,
                              Answered = records.StartedAnswers.Where(answer => answer.SittingId == sitting.Id)
                                  .Select(answer => answer.QuestionId).Distinct().Count(),
                          }).Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
        return rows.ConvertAll(found => new OpenSitting(
            found.Row.Id, found.Row.QuizId, found.Row.StartedAt, found.Row.TakenOn, found.Row.Draw.Questions.Count, found.Answered));
    }

    /// <summary>The person's submitted sittings that count, the latest submission first.</summary>
    public static async Task<IReadOnlyList<SentSitting>> SentSittingsOfAsync(
        this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        await (from sitting in records.CountingSittings()
               where sitting.PersonId == personId
               join result in records.SittingResults on sitting.Id equals result.SittingId
               where result.Number == records.SittingResults.Where(other => other.SittingId == sitting.Id).Max(other => other.Number)
               orderby sitting.SubmittedAt descending
               select new SentSitting(
                   sitting.FormId, sitting.QuizId, sitting.TakenOn, sitting.SubmittedAt, result.IsPassed, result.Points, result.MaxPoints))
            .Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
}
