using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>What names one reminder: it is made once.</summary>
/// <param name="PersonId">Whose certification.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="PeriodNumber">Of which period.</param>
/// <param name="Milestone">For which day of the scheme, as it is stored.</param>
public readonly record struct ReminderKey(Guid PersonId, string SchemeId, int PeriodNumber, string Milestone);

/// <summary>Reads which reminders were made.</summary>
public static class ReminderQueries
{
    /// <summary>Those that these people were sent under a scheme about periods that end on a day or later.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="schemeId">Under which scheme.</param>
    /// <param name="personIds">At most a few hundred: the caller batches.</param>
    /// <param name="from">First last day.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlySet<ReminderKey>> MadeRemindersAsync(
        this RecordsContext records, string schemeId, IEnumerable<Guid> personIds, DateOnly from, CancellationToken cancellation)
    {
        var ids = personIds.ToList();
        var rows = await records.Reminders.Where(row => ids.Contains(row.PersonId) && row.SchemeId == schemeId && row.ExpiresOn >= from)
            .Select(row => new { row.PersonId, row.PeriodNumber, row.Milestone }).ToListAsync(cancellation);
        return rows.Select(row => new ReminderKey(row.PersonId, schemeId, row.PeriodNumber, row.Milestone)).ToHashSet();
    }
}
