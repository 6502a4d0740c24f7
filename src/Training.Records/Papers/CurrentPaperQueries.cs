using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>A paper that may be shown at a gate today, as it was printed.</summary>
/// <param name="Serial">As issued.</param>
/// <param name="Revision">1 for the first.</param>
/// <param name="PersonId">Whose.</param>
/// <param name="PrintedName">As printed.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="CourseHash">Snapshot whose rules decided: the scheme's words of that day.</param>
/// <param name="ExpiresOn">Last day of the period that it shows.</param>
/// <param name="Today">The day, in the zone of its decision.</param>
public sealed record CurrentPaper(
    string Serial, int Revision, Guid PersonId, string PrintedName, string SchemeId, string CourseHash, DateOnly ExpiresOn, DateOnly Today);

/// <summary>Finds the papers that the check page would call genuine and current.</summary>
public static class CurrentPaperQueries
{
    /// <summary>
    /// Those of the papers that no later one took the place of, under a certification that is current (renewal due included), and whose name was not erased.
    /// </summary>
    /// <param name="records">Where from.</param>
    /// <param name="serials">Upper-case, without hyphens; at most a few hundred: the caller batches. The answer is in their order.</param>
    /// <param name="now">UTC; each paper's today is the day in the zone of its decision.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<CurrentPaper>> CurrentPapersAsync(
        this RecordsContext records, IReadOnlyList<string> serials, DateTimeOffset now, CancellationToken cancellation)
    {
        var rows = await (from paper in records.Papers
                          where serials.Contains(paper.Serial)
                              && !records.Papers.Any(other => other.DecisionId == paper.DecisionId && other.Revision > paper.Revision)
                          join period in records.Periods on paper.DecisionId equals period.DecisionId
                          where !(from later in records.Periods
                                  where later.PersonId == period.PersonId && later.SchemeId == period.SchemeId && later.Number > period.Number
                                  join other in records.Papers on later.DecisionId equals other.DecisionId
                                  select other.Id).Any()
                          join decision in records.Decisions on paper.DecisionId equals decision.Id
                          join name in records.PersonNames on paper.PersonNameId equals name.Id
                          where name.Text != null
                          select new { paper.Serial, paper.Revision, period.PersonId, period.SchemeId, period.ExpiresOn, decision.CourseHash, decision.Zone, name.Text })
            .ToListAsync(cancellation);
        var held = (await records.HeldCertificationsAsync([.. rows.Select(row => row.PersonId).Distinct()], cancellation))
            .ToDictionary(one => (one.PersonId, one.SchemeId));
        var order = serials.Index().ToDictionary(serial => serial.Item, serial => serial.Index, StringComparer.Ordinal);
        return
        [
            .. rows.OrderBy(row => order[row.Serial])
                .Select(row => new CurrentPaper(
                    row.Serial, row.Revision, row.PersonId, row.Text!, row.SchemeId, row.CourseHash, row.ExpiresOn, // not null: asked for above
                    DecisionDay.On(now, TimeZoneInfo.FindSystemTimeZoneById(row.Zone))))
                .Where(paper => Standings.On(held[(paper.PersonId, paper.SchemeId)], paper.Today) is Standing.Current or Standing.RenewalDue),
        ];
    }
}
