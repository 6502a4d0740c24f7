using Training.Records;

namespace Training.Web.Features.Encounters;

/// <summary>Puts a page of encounters together.</summary>
public static class EncountersReading
{
    /// <summary>Counts and the newest lines of what the visitor may see: two queries, however many there are.</summary>
    public static async Task<EncountersPage> EncountersPageAsync(
        this RecordsContext records, IQueryable<EncounterRecord> seen, EncounterFilter filter, string home, string? employerName, DateOnly today,
        IReadOnlyList<(Guid Id, string Name)> sites, EncounterWords words, CancellationToken cancellation)
    {
        var counts = await records.CountEncountersAsync(seen, filter, cancellation);
        return new(
            home, employerName, today, sites, filter,
            EncounterTallies.ByMonth(counts, filter.From ?? today, filter.Through ?? today), EncounterTallies.BySite(counts),
            await records.EncountersAsync(seen, filter, EncountersPage.MostLines, cancellation), words);
    }
}
