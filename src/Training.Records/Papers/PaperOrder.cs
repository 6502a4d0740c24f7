using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>A paper that is to be made: of which granted decision, and which revision.</summary>
/// <param name="DecisionId">The decision.</param>
/// <param name="Revision">1 for the first.</param>
/// <param name="PersonId">About whom it was made.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="CourseHash">Snapshot whose rules decided.</param>
/// <param name="LeadId">Who decided; null where the rule did.</param>
/// <param name="DecidedOn">The day in <paramref name="Zone"/>.</param>
/// <param name="Zone">IANA time zone of the decision.</param>
/// <param name="Period">What was granted.</param>
/// <param name="CountedFrom">The day that its validity was counted from.</param>
public sealed record PaperOrder(
    Guid DecisionId, int Revision, Guid PersonId, string SchemeId, string CourseHash, Guid? LeadId, DateOnly DecidedOn, string Zone, Period Period,
    DateOnly CountedFrom)
{
    /// <summary>The first paper of a decision that was just made.</summary>
    /// <param name="made">A granted one.</param>
    /// <param name="countedFrom">The day that its validity was counted from.</param>
    /// <exception cref="ArgumentException">Nothing was granted.</exception>
    public static PaperOrder First(MadeDecision made, DateOnly countedFrom) => made.Decision is Decision.Granted granted
        ? new(
            made.Id, 1, made.PersonId, made.SchemeId, made.CourseHash, made.Decider is Decider.Lead lead ? lead.PersonId : null, made.DecidedOn, made.Zone,
            granted.Period, countedFrom)
        : throw new ArgumentException("Nothing was granted.", nameof(made));
}

/// <summary>Reads orders of papers from decisions that were kept.</summary>
public static class PaperOrderQueries
{
    /// <summary>The order of a revision of a decision, or null where that decision granted nothing.</summary>
    public static async Task<PaperOrder?> FindOrderAsync(this RecordsContext records, Guid decisionId, int revision, CancellationToken cancellation)
    {
        var found = await (from period in records.Periods.AsNoTracking()
                           where period.DecisionId == decisionId
                           join decision in records.Decisions.AsNoTracking() on period.DecisionId equals decision.Id
                           select new
                           {
                               Period = period,
                               Decision = decision,
                               Before = records.Periods
                                   .Where(other => other.PersonId == period.PersonId && other.SchemeId == period.SchemeId && other.Number == period.Number - 1)
                                   .Select(other => (DateOnly?)other.ExpiresOn).FirstOrDefault(),
                           })
            .SingleOrDefaultAsync(cancellation);
        if (found is null) return null;
        var decided = found.Decision;
        // docs/rules.md, "Renewal": the later of the last expiry and the decision.
        var countedFrom = decided.Route switch
        {
            Route.Grant => decided.DecidedOn,
            Route.Renewal => found.Before is { } before && before > decided.DecidedOn ? before : decided.DecidedOn,
        };
        return new(
            decided.Id, revision, decided.PersonId, decided.SchemeId, decided.CourseHash, decided.LeadId, decided.DecidedOn, decided.Zone,
            DecisionRows.Read(found.Period), countedFrom);
    }
}
