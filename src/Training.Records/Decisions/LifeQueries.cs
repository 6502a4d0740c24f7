using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>A result that a decision rests on.</summary>
/// <param name="ResultId">The result.</param>
/// <param name="Of">Which quiz or checklist.</param>
/// <param name="Subject">On what; null for a quiz.</param>
/// <param name="On">The day of the sitting or sheet.</param>
/// <param name="StillCounts">False where it was set aside since then, or a later grading of it was not passed.</param>
public sealed record RestedOn(Guid ResultId, string Of, Subject? Subject, DateOnly On, bool StillCounts);

/// <summary>Reads certifications with the day on which each row came into the records: what histories and past standing are told from.</summary>
public static class LifeQueries
{
    /// <summary>What the person holds or held, by scheme id.</summary>
    public static Task<IReadOnlyList<KeptCertification>> KeptCertificationsAsync(
        this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        records.KeptCertificationsAsync([personId], cancellation);

    /// <summary>What these people hold or held, by person and scheme: four queries, however many they are.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="personIds">At most <see cref="PersonFileQueries.MostFiles"/>: the caller batches.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <exception cref="ArgumentOutOfRangeException">More people than that.</exception>
    public static async Task<IReadOnlyList<KeptCertification>> KeptCertificationsAsync(
        this RecordsContext records, IReadOnlyList<Guid> personIds, CancellationToken cancellation)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(personIds.Count, PersonFileQueries.MostFiles, nameof(personIds));
        var people = personIds.ToList();
        var periods = await (from period in records.Periods.AsNoTracking()
                             where people.Contains(period.PersonId)
                             join decision in records.Decisions.AsNoTracking() on period.DecisionId equals decision.Id
                             select new { Row = period, decision.Route, decision.LeadId, decision.CourseHash, decision.Zone, decision.KeptAt })
            .ToListAsync(cancellation);
        var evidence = await (from row in records.Decisions.AsNoTracking().SelectMany(decision => decision.Evidence)
                              join period in records.Periods on row.DecisionId equals period.DecisionId
                              where people.Contains(period.PersonId)
                              orderby row.Position
                              select new { row.DecisionId, ResultId = row.SittingResultId ?? row.ScoresheetResultId }).ToListAsync(cancellation);
        var suspensions = await (from suspension in records.Suspensions.AsNoTracking()
                                 where people.Contains(suspension.PersonId)
                                 join end in records.Reinstatements.AsNoTracking() on suspension.Id equals end.SuspensionId into ends
                                 from end in ends.DefaultIfEmpty()
                                 select new { Row = suspension, End = end }).ToListAsync(cancellation);
        var withdrawals = await records.Withdrawals.AsNoTracking().Where(row => people.Contains(row.PersonId)).ToListAsync(cancellation);

        var restsOn = evidence.ToLookup(row => row.DecisionId, row => row.ResultId!.Value); // not null: a check of the table, one of the two
        var zones = new Dictionary<string, TimeZoneInfo>(StringComparer.Ordinal);
        DateOnly Day(DateTimeOffset at, string zone)
        {
            if (!zones.TryGetValue(zone, out var found)) zones[zone] = found = TimeZoneInfo.FindSystemTimeZoneById(zone);
            return DecisionDay.On(at, found);
        }

        var zoneOf = periods.ToDictionary(row => (row.Row.PersonId, row.Row.SchemeId, row.Row.Number), row => row.Zone);
        var suspensionsOf = suspensions.OrderBy(row => row.Row.StartsOn).ThenBy(row => row.Row.Number).ToLookup(
            row => (row.Row.PersonId, row.Row.SchemeId),
            row =>
            {
                var zone = zoneOf[(row.Row.PersonId, row.Row.SchemeId, row.Row.PeriodNumber)];
                return new KeptSuspension(row.Row.Id, DecisionRows.Read(row.Row, row.End), Day(row.Row.KeptAt, zone), row.End is null ? null : Day(row.End.KeptAt, zone));
            });
        var withdrawalsOf = withdrawals.OrderBy(row => row.WithdrawnOn).ThenBy(row => row.PeriodNumber).ToLookup(
            row => (row.PersonId, row.SchemeId),
            row => new KeptWithdrawal(row.Id, DecisionRows.Read(row), Day(row.KeptAt, zoneOf[(row.PersonId, row.SchemeId, row.PeriodNumber)])));
        return [.. periods.GroupBy(row => (row.Row.PersonId, row.Row.SchemeId))
            .OrderBy(group => group.Key.PersonId).ThenBy(group => group.Key.SchemeId, StringComparer.Ordinal)
            .Select(group => new KeptCertification(
                group.Key.PersonId, group.Key.SchemeId,
                [.. group.OrderBy(row => row.Row.Number).Select(row => new KeptPeriod(
                    DecisionRows.Read(row.Row), row.Row.DecisionId, row.Route, row.LeadId, row.CourseHash, row.Zone,
                    [.. restsOn[row.Row.DecisionId]], Day(row.KeptAt, row.Zone)))],
                [.. suspensionsOf[group.Key]], [.. withdrawalsOf[group.Key]]))];
    }

    /// <summary>What these results are of, by their ids.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="resultIds">Those of a few decisions.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyDictionary<Guid, RestedOn>> RestedOnAsync(
        this RecordsContext records, IReadOnlyList<Guid> resultIds, CancellationToken cancellation)
    {
        var ids = resultIds.Distinct().ToList();
        var sittings = await (from result in records.SittingResults
                              where ids.Contains(result.Id)
                              join sitting in records.Sittings on result.SittingId equals sitting.Id
                              select new RestedOn(
                                  result.Id, sitting.QuizId, null, sitting.TakenOn,
                                  !records.SittingSetAsides.Any(aside => aside.SittingId == sitting.Id)
                                      && records.SittingResults.Any(last => last.SittingId == sitting.Id && last.IsPassed
                                          && !records.SittingResults.Any(later => later.SittingId == sitting.Id && later.Number > last.Number))))
            .ToListAsync(cancellation);
        var sheets = await (from result in records.ScoresheetResults
                            where ids.Contains(result.Id)
                            join sheet in records.Scoresheets on result.ScoresheetId equals sheet.Id
                            select new RestedOn(
                                result.Id, sheet.ChecklistId, sheet.Subject, sheet.ScoredOn,
                                !records.ScoresheetSetAsides.Any(aside => aside.ScoresheetId == sheet.Id)
                                    && records.ScoresheetResults.Any(last => last.ScoresheetId == sheet.Id && last.Outcome == PracticalOutcome.Passed
                                        && !records.ScoresheetResults.Any(later => later.ScoresheetId == sheet.Id && later.Number > last.Number))))
            .ToListAsync(cancellation);
        return sittings.Concat(sheets).ToDictionary(result => result.ResultId);
    }
}
