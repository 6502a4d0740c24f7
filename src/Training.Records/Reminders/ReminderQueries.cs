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
    /// <summary>Those about periods that end within a span, both days included.</summary>
    public static async Task<IReadOnlySet<ReminderKey>> MadeRemindersAsync(
        this RecordsContext records, DateOnly from, DateOnly through, CancellationToken cancellation) =>
        (await records.Reminders.Where(row => row.ExpiresOn >= from && row.ExpiresOn <= through)
            .Select(row => new { row.PersonId, row.SchemeId, row.PeriodNumber, row.Milestone }).ToListAsync(cancellation))
        .Select(row => new ReminderKey(row.PersonId, row.SchemeId, row.PeriodNumber, row.Milestone)).ToHashSet();
}
