using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>Which places of the status lists are set. A few queries a list, however many papers there are; what decides is <see cref="Standings"/>.</summary>
/// <remarks>Rule: docs/rules.md, "Status lists".</remarks>
public static class StatusQueries
{
    // The calendar of no zone is further from UTC (Kiribati is 14 hours ahead, no land more than 12 behind).
    private static readonly TimeSpan FurthestAhead = TimeSpan.FromHours(14);
    private static readonly TimeSpan FurthestBehind = TimeSpan.FromHours(12);

    /// <summary>How many places were ever given: what the size of the lists follows from.</summary>
    public static Task<int> PlacesGivenAsync(this RecordsContext records, CancellationToken cancellation) =>
        records.PaperCredentials.CountAsync(cancellation);

    /// <summary>Whether a paper has that place in the status lists.</summary>
    public static Task<bool> IsPlaceGivenAsync(this RecordsContext records, int place, CancellationToken cancellation) =>
        records.PaperCredentials.AnyAsync(credential => credential.StatusIndex == place, cancellation);

    /// <summary>
    /// Places of the papers that are revoked for good: those of a period that had begun when the certification was withdrawn, and those whose place a
    /// later revision of the same decision took.
    /// </summary>
    /// <param name="records">Where from.</param>
    /// <param name="now">UTC; a withdrawal counts from its day on, in the zone of the paper's decision.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlySet<int>> RevokedPlacesAsync(this RecordsContext records, DateTimeOffset now, CancellationToken cancellation)
    {
        var withdrawn = await (from withdrawal in records.Withdrawals
                               from period in records.Periods
                               where period.PersonId == withdrawal.PersonId && period.SchemeId == withdrawal.SchemeId
                                   && period.StartsOn <= withdrawal.WithdrawnOn
                               join paper in records.Papers on period.DecisionId equals paper.DecisionId
                               join credential in records.PaperCredentials on paper.Id equals credential.PaperId
                               join decision in records.Decisions on paper.DecisionId equals decision.Id
                               select new { credential.StatusIndex, decision.Zone, withdrawal.WithdrawnOn }).ToListAsync(cancellation);
        var revised = await (from later in records.Papers
                             where later.Revision > 1
                             join paper in records.Papers on later.DecisionId equals paper.DecisionId
                             where paper.Revision < later.Revision
                             join credential in records.PaperCredentials on paper.Id equals credential.PaperId
                             select credential.StatusIndex).ToListAsync(cancellation);
        var days = new DaysOfZones(now);
        return withdrawn.Where(row => row.WithdrawnOn <= days[row.Zone]).Select(row => row.StatusIndex).Concat(revised).ToHashSet();
    }

    /// <summary>Places of the papers of certifications that are suspended today, a day in the zone of each paper's decision.</summary>
    public static async Task<IReadOnlySet<int>> SuspendedPlacesAsync(this RecordsContext records, DateTimeOffset now, CancellationToken cancellation)
    {
        var (earliest, latest) = (DayOf(now - FurthestBehind), DayOf(now + FurthestAhead));
        var touched = (from suspension in records.Suspensions
                       where suspension.StartsOn <= latest
                           && !records.Reinstatements.Any(end => end.SuspensionId == suspension.Id && end.ReinstatedOn < earliest)
                       select suspension.PersonId).Distinct();
        var held = (await records.HeldCertificationsAsync(touched, cancellation)).ToDictionary(one => (one.PersonId, one.SchemeId));
        var papers = await (from period in records.Periods
                            where touched.Contains(period.PersonId)
                            join paper in records.Papers on period.DecisionId equals paper.DecisionId
                            join credential in records.PaperCredentials on paper.Id equals credential.PaperId
                            join decision in records.Decisions on paper.DecisionId equals decision.Id
                            select new { period.PersonId, period.SchemeId, decision.Zone, credential.StatusIndex }).ToListAsync(cancellation);
        var days = new DaysOfZones(now);
        return papers.Where(row => Standings.On(held[(row.PersonId, row.SchemeId)], days[row.Zone]) == Standing.Suspended)
            .Select(row => row.StatusIndex).ToHashSet();
    }

    private static DateOnly DayOf(DateTimeOffset instant) => DateOnly.FromDateTime(instant.UtcDateTime);

    // One look a zone and not a paper.
    private sealed class DaysOfZones(DateTimeOffset now)
    {
        private readonly Dictionary<string, DateOnly> days = new(StringComparer.Ordinal);

        public DateOnly this[string zone]
        {
            get
            {
                if (!days.TryGetValue(zone, out var day)) days[zone] = day = DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(zone));
                return day;
            }
        }
    }
}
