using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>One decision in a list.</summary>
/// <param name="Id">Which.</param>
/// <param name="PersonId">About whom.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="DecidedOn">The day.</param>
/// <param name="Route">Grant or renewal.</param>
/// <param name="Outcome">What it said.</param>
/// <param name="IsByLead">A programme lead decided; else the published rule.</param>
/// <param name="Exceptions">So many written exceptions it relied on.</param>
public sealed record DecisionWithin(
    Guid Id, Guid PersonId, string SchemeId, DateOnly DecidedOn, Route Route, DecisionOutcome Outcome, bool IsByLead, int Exceptions);

/// <summary>Lists decisions of a span of days.</summary>
public static class DecisionsWithinQueries
{
    /// <summary>The decisions about these people from a day through another, both included: by day, then id.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="personIds">At most a few hundred: the caller batches.</param>
    /// <param name="from">First day.</param>
    /// <param name="through">Last day.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<DecisionWithin>> DecisionsWithinAsync(
        this RecordsContext records, IEnumerable<Guid> personIds, DateOnly from, DateOnly through, CancellationToken cancellation)
    {
        var ids = personIds.ToList();
        return await records.Decisions.Where(decision => ids.Contains(decision.PersonId) && decision.DecidedOn >= from && decision.DecidedOn <= through)
            .OrderBy(decision => decision.DecidedOn).ThenBy(decision => decision.Id)
            .Select(decision => new DecisionWithin(
                decision.Id, decision.PersonId, decision.SchemeId, decision.DecidedOn, decision.Route, decision.Outcome, decision.LeadId != null, decision.Exceptions.Count))
            .Take(ids.Count * Bounds.RowsOfOnePerson).ToListAsync(cancellation);
    }
}
