using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records;

/// <summary>Somebody who did not do in time what changed rules ask of those who were certified before.</summary>
public sealed record OverdueTransition(Guid PersonId, string SchemeId, DateOnly By);

/// <summary>Finds whom a change of a scheme's rules concerns.</summary>
public static class TransitionQueries
{
    /// <summary>Most people who are looked at under one scheme.</summary>
    public const int Most = PersonFileQueries.MostFiles;

    /// <summary>Whether any period under the scheme lasts on a day, or its grace does. What was withdrawn counts too: to ask for a rule once too often harms nobody.</summary>
    public static Task<bool> IsHeldAsync(this RecordsContext records, string schemeId, DateOnly today, CancellationToken cancellation) =>
        records.Periods.AnyAsync(period => period.SchemeId == schemeId && period.GraceEndsOn >= today, cancellation);

    /// <summary>Who is overdue under one scheme, by person; of the first <see cref="Most"/> whom its transition binds. Empty before its last day went by.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="scheme">The rules in force.</param>
    /// <param name="today">The day.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<OverdueTransition>> OverdueTransitionsAsync(
        this RecordsContext records, Scheme scheme, DateOnly today, CancellationToken cancellation)
    {
        if (scheme.Transition is not { By: { } by } || today <= by) return [];
        var bound = await records.Periods
            .Where(period => period.SchemeId == scheme.Id && period.DecidedOn < scheme.EffectiveFrom && period.ExpiresOn >= today)
            .Where(period => !records.Periods.Any(later =>
                later.PersonId == period.PersonId && later.SchemeId == scheme.Id && later.Number > period.Number))
            .OrderBy(period => period.PersonId).Select(period => period.PersonId).Take(Most).ToListAsync(cancellation);
        var files = await records.PersonFilesAsync(bound, cancellation);
        return
        [
            .. bound.Where(person => TransitionState.Of(files[person].Under(scheme), today)?.IsOverdue(today) == true)
                .Select(person => new OverdueTransition(person, scheme.Id, by)),
        ];
    }
}
