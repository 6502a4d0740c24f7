using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.People;

/// <summary>What a sitting or a scoresheet came to.</summary>
public enum ResultOutcome
{
    /// <summary>Passed.</summary>
    Passed,

    /// <summary>Not passed.</summary>
    NotPassed,

    /// <summary>Steps were not observed: nothing is decided.</summary>
    Incomplete,

    /// <summary>Set aside on appeal: it counts no longer.</summary>
    SetAside,

    /// <summary>Other content came under the same id, or the same try was scored twice: it counts for nothing.</summary>
    Disputed,
}

/// <summary>One result of a person as a lead sees it, with who wore which hat.</summary>
/// <param name="ResultId">Of the latest grading; null for a disputed copy.</param>
/// <param name="FormId">Of the sitting or sheet.</param>
/// <param name="On">Its day.</param>
/// <param name="Of">Quiz or checklist id.</param>
/// <param name="Subject">Model or live; null for a quiz.</param>
/// <param name="Outcome">What it came to.</param>
/// <param name="Points">Points reached.</param>
/// <param name="Most">Points to be had.</param>
/// <param name="ScorerId">Who scored; null for a quiz, which the key scores.</param>
/// <param name="ExceptionReason">The written reason for which a scorer who taught may count, or null.</param>
/// <param name="Reading">Who read a quiz out.</param>
public sealed record PersonResult(
    Guid? ResultId, Guid FormId, DateOnly On, string Of, Subject? Subject, ResultOutcome Outcome, int Points, int Most, Guid? ScorerId,
    string? ExceptionReason, ReadOut Reading);

/// <summary>Reads results for a lead.</summary>
public static class PersonResults
{
    /// <summary>Most results of each sort that a page shows; the newest.</summary>
    public const int Most = 100;

    /// <summary>Sittings and sheets of a person, the newest first, disputed copies included.</summary>
    public static async Task<IReadOnlyList<PersonResult>> ResultsOfAsync(
        this RecordsContext records, Guid personId, CancellationToken cancellation)
    {
        var sittings = await (from sitting in records.Sittings
                              where sitting.PersonId == personId
                              from result in records.SittingResults.Where(result => result.SittingId == sitting.Id)
                                  .OrderByDescending(result => result.Number).Take(1).DefaultIfEmpty()
                              from started in records.StartedSittings.Where(started => started.Id == sitting.FormId).DefaultIfEmpty()
                              orderby sitting.TakenOn descending, sitting.Id descending
                              select new
                              {
                                  sitting.FormId, sitting.TakenOn, sitting.QuizId, sitting.Copy, Result = result, Started = started,
                                  IsSetAside = records.SittingSetAsides.Any(aside => aside.SittingId == sitting.Id),
                              })
            .AsNoTracking().Take(Most).ToListAsync(cancellation);
        var sheets = await (from sheet in records.Scoresheets
                            where sheet.CandidateId == personId
                            from result in records.ScoresheetResults.Where(result => result.ScoresheetId == sheet.Id)
                                .OrderByDescending(result => result.Number).Take(1).DefaultIfEmpty()
                            from reason in records.SeparationReasons.Where(reason => reason.ScoresheetId == sheet.Id).DefaultIfEmpty()
                            orderby sheet.ScoredOn descending, sheet.Id descending
                            select new
                            {
                                sheet.FormId, sheet.ScoredOn, sheet.ChecklistId, sheet.Subject, sheet.Copy, sheet.InstructorId, Result = result,
                                Reason = reason == null ? null : reason.Reason,
                                IsSetAside = records.ScoresheetSetAsides.Any(aside => aside.ScoresheetId == sheet.Id),
                            })
            .AsNoTracking().Take(Most).ToListAsync(cancellation);
        var all = sittings.Select(row => new PersonResult(
                row.Result?.Id, row.FormId, row.TakenOn, row.QuizId, null, row.IsSetAside ? ResultOutcome.SetAside : OutcomeOf(row.Copy, row.Result), row.Result?.Points ?? 0,
                row.Result?.MaxPoints ?? 0, null, null, row.Started is { } started ? new(started.Aid, started.ReadBy) : ReadOut.Nobody))
            .Concat(sheets.Select(row => new PersonResult(
                row.Result?.Id, row.FormId, row.ScoredOn, row.ChecklistId, row.Subject, row.IsSetAside ? ResultOutcome.SetAside : OutcomeOf(row.Copy, row.Result),
                row.Result?.Points ?? 0, row.Result?.MaxPoints ?? 0, row.InstructorId, row.Reason, ReadOut.Nobody)));
        return [.. all.OrderByDescending(result => result.On)];
    }

    private static ResultOutcome OutcomeOf(int copy, SittingResultRecord? result) =>
        copy > 1 || result is null ? ResultOutcome.Disputed : result.IsPassed ? ResultOutcome.Passed : ResultOutcome.NotPassed;

    private static ResultOutcome OutcomeOf(int copy, ScoresheetResultRecord? result) => copy > 1 || result is null
        ? ResultOutcome.Disputed
        : result.Outcome switch
        {
            PracticalOutcome.Passed => ResultOutcome.Passed,
            PracticalOutcome.Failed => ResultOutcome.NotPassed,
            PracticalOutcome.Incomplete => ResultOutcome.Incomplete,
        };
}
