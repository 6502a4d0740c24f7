using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>What a folder is asked for.</summary>
/// <param name="EmployerId">Of whose people; null for all.</param>
/// <param name="SiteId">Who works on this site; null for all.</param>
/// <param name="PersonId">One person alone; null for all.</param>
/// <param name="From">First day.</param>
/// <param name="Through">Last day.</param>
/// <param name="EmployedOn">Only who works for the employer on this day; null: on any of the days.</param>
public sealed record AuditScope(Guid? EmployerId, Guid? SiteId, Guid? PersonId, DateOnly From, DateOnly Through, DateOnly? EmployedOn);

/// <summary>Everything about one person within a scope, as it is stored.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="Decisions">Of those days, with what they rest on.</param>
/// <param name="Periods">All of them: standing on a day is worked out from the chain.</param>
/// <param name="Suspensions">All of them.</param>
/// <param name="Reinstatements">All of them.</param>
/// <param name="Withdrawals">All of them.</param>
/// <param name="Papers">Of those decisions.</param>
/// <param name="SittingFormIds">Of those days, and those that the decisions rest on.</param>
/// <param name="ScoresheetFormIds">The same of scoresheets.</param>
/// <param name="Classes">Class days of those days at which they had a seat.</param>
public sealed record AuditedPerson(
    Guid PersonId,
    IReadOnlyList<DecisionRecord> Decisions,
    IReadOnlyList<PeriodRecord> Periods,
    IReadOnlyList<SuspensionRecord> Suspensions,
    IReadOnlyList<ReinstatementRecord> Reinstatements,
    IReadOnlyList<WithdrawalRecord> Withdrawals,
    IReadOnlyList<PaperRecord> Papers,
    IReadOnlyList<Guid> SittingFormIds,
    IReadOnlyList<Guid> ScoresheetFormIds,
    IReadOnlyList<Guid> Classes);

/// <summary>Reads what goes into a folder for an auditor.</summary>
public static class AuditQueries
{
    /// <summary>The people of a scope, by id; one more than the most where there are more.</summary>
    public static async Task<IReadOnlyList<Guid>> AuditedPeopleAsync(this RecordsContext records, AuditScope scope, int most, CancellationToken cancellation)
    {
        var (first, last) = scope.EmployedOn is { } day ? (day, day) : (scope.From, scope.Through);
        var people = records.Persons.Select(person => person.Id);
        if (scope.PersonId is { } personId) people = people.Where(id => id == personId);
        if (scope.EmployerId is { } employerId)
        {
            people = people.Where(id => records.Employments.Any(row => row.PersonId == id && row.EmployerId == employerId
                && row.StartsOn <= last && (row.EndsOn == null || row.EndsOn >= first)));
        }
        else
        {
            people = people.Where(id => records.Employments.Any(row => row.PersonId == id && row.StartsOn <= last && (row.EndsOn == null || row.EndsOn >= first)));
        }

        if (scope.SiteId is { } siteId)
        {
            people = people.Where(id => records.SiteAssignments.Any(row => row.PersonId == id && row.SiteId == siteId
                && row.StartsOn <= last && (row.EndsOn == null || row.EndsOn >= first)));
        }

        return await people.OrderBy(id => id).Take(most + 1).ToListAsync(cancellation);
    }

    /// <summary>Everything about some of these people, in their order: one query a kind of row, however many they are.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="personIds">At most a few hundred: the caller batches.</param>
    /// <param name="scope">For which days.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<AuditedPerson>> AuditedAsync(
        this RecordsContext records, IReadOnlyList<Guid> personIds, AuditScope scope, CancellationToken cancellation)
    {
        var (ids, from, through) = (personIds.ToList(), scope.From, scope.Through);
        var decisions = await records.Decisions.AsNoTracking().AsSplitQuery().Include(row => row.Evidence).Include(row => row.Exceptions)
            .Where(row => ids.Contains(row.PersonId) && row.DecidedOn >= from && row.DecidedOn <= through)
            .OrderBy(row => row.DecidedOn).ThenBy(row => row.Id).ToListAsync(cancellation);
        var decided = decisions.ConvertAll(row => row.Id);
        var periods = await records.Periods.AsNoTracking().Where(row => ids.Contains(row.PersonId))
            .OrderBy(row => row.SchemeId).ThenBy(row => row.Number).ToListAsync(cancellation);
        var suspensions = await records.Suspensions.AsNoTracking().Where(row => ids.Contains(row.PersonId))
            .OrderBy(row => row.SchemeId).ThenBy(row => row.Number).ToListAsync(cancellation);
        var suspended = suspensions.ConvertAll(row => row.Id);
        var reinstatements = (await records.Reinstatements.AsNoTracking().Where(row => suspended.Contains(row.SuspensionId)).ToListAsync(cancellation))
            .ToDictionary(row => row.SuspensionId);
        var withdrawals = await records.Withdrawals.AsNoTracking().Where(row => ids.Contains(row.PersonId))
            .OrderBy(row => row.SchemeId).ThenBy(row => row.PeriodNumber).ToListAsync(cancellation);
        var papers = (await records.Papers.AsNoTracking().Where(row => decided.Contains(row.DecisionId))
            .OrderBy(row => row.Serial).ToListAsync(cancellation)).ToLookup(row => row.DecisionId);
        var sittings = (await (from row in records.Sittings
                               where ids.Contains(row.PersonId) && ((row.TakenOn >= @from && row.TakenOn <= through)
                                   || records.SittingResults.Any(result => result.SittingId == row.Id
                                       && records.Decisions.Any(one => decided.Contains(one.Id) && one.Evidence.Any(basis => basis.SittingResultId == result.Id))))
                               orderby row.TakenOn, row.FormId
                               select new { row.PersonId, row.FormId }).ToListAsync(cancellation)).ToLookup(row => row.PersonId, row => row.FormId);
        var sheets = (await (from row in records.Scoresheets
                             where ids.Contains(row.CandidateId) && ((row.ScoredOn >= @from && row.ScoredOn <= through)
                                 || records.ScoresheetResults.Any(result => result.ScoresheetId == row.Id
                                     && records.Decisions.Any(one => decided.Contains(one.Id) && one.Evidence.Any(basis => basis.ScoresheetResultId == result.Id))))
                             orderby row.ScoredOn, row.FormId
                             select new { row.CandidateId, row.FormId }).ToListAsync(cancellation)).ToLookup(row => row.CandidateId, row => row.FormId);
        var seats = (await (from seat in records.SeatsHeld()
                            where ids.Contains(seat.PersonId)
                            join day in records.StandingClasses() on seat.ClassId equals day.Id
                            where day.HeldOn >= @from && day.HeldOn <= through
                            orderby day.HeldOn, day.Id
                            select new { seat.PersonId, seat.ClassId }).ToListAsync(cancellation)).ToLookup(row => row.PersonId, row => row.ClassId);
        return [.. ids.Select(id =>
        {
            DecisionRecord[] own = [.. decisions.Where(row => row.PersonId == id)];
            SuspensionRecord[] ownSuspensions = [.. suspensions.Where(row => row.PersonId == id)];
            return new AuditedPerson(
                id, own, [.. periods.Where(row => row.PersonId == id)], ownSuspensions,
                [.. ownSuspensions.Select(row => reinstatements.GetValueOrDefault(row.Id)).OfType<ReinstatementRecord>()],
                [.. withdrawals.Where(row => row.PersonId == id)],
                [.. own.SelectMany(row => papers[row.Id])],
                [.. sittings[id].Distinct()], [.. sheets[id].Distinct()], [.. seats[id]]);
        })];
    }
}
