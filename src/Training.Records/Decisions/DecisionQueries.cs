using System.Runtime.CompilerServices;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records;

/// <summary>A decision read back.</summary>
public sealed record StoredDecision(MadeDecision Made, DateTimeOffset KeptAt);

/// <summary>Whether those count of whom a reminder was made already.</summary>
public enum MadeReminders
{
    /// <summary>They do.</summary>
    Included,

    /// <summary>They do not.</summary>
    LeftOut,
}

/// <summary>Reads what decisions are made from, and what they made.</summary>
public static class DecisionQueries
{
    private const int PersonsABatch = 200;

    /// <summary>A decision with what it rests on, or null.</summary>
    public static async Task<StoredDecision?> FindDecisionAsync(this RecordsContext records, Guid id, CancellationToken cancellation)
    {
        var row = await records.Decisions.AsNoTracking().AsSplitQuery()
            .Include(decision => decision.Evidence).Include(decision => decision.Exceptions)
            .SingleOrDefaultAsync(decision => decision.Id == id, cancellation);
        if (row is null) return null;
        var period = await records.Periods.AsNoTracking().SingleOrDefaultAsync(period => period.DecisionId == id, cancellation);
        return new(DecisionRows.Read(row, period), row.KeptAt);
    }

    /// <summary>Why a decision was not granted; empty where it was.</summary>
    public static IReadOnlyList<DecisionReason> ReadReasons(this DecisionRecord decision) => StoredJson.Read<DecisionReason>(decision.Reasons);

    /// <summary>
    /// Everything that a decision about the person under the scheme is made from: the latest result of each sitting and sheet that
    /// counts, who taught them, what they hold. Null where there is no such person.
    /// </summary>
    public static async Task<CaseFile?> FindCaseFileAsync(
        this RecordsContext records, Guid personId, Scheme scheme, CancellationToken cancellation)
    {
        if (!await records.Persons.AnyAsync(person => person.Id == personId, cancellation)) return null;
        return (await records.PersonFilesAsync([personId], cancellation))[personId].Under(scheme);
    }

    /// <summary>What the person holds or held, by scheme id.</summary>
    public static Task<IReadOnlyList<HeldCertification>> HeldCertificationsAsync(
        this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        records.HeldCertificationsAsync([personId], cancellation);

    /// <summary>Everything that anybody holds or held, read in batches of 200 people, so that the size of the programme does not matter.</summary>
    public static IAsyncEnumerable<HeldCertification> AllHeldCertificationsAsync(this RecordsContext records, CancellationToken cancellation) =>
        records.AllHeldCertificationsAsync(PersonsABatch, cancellation);

    /// <summary>
    /// What ends within a span under a scheme, as a whole, 200 people at a time by last day: it reads that span of an index, however much
    /// else is stored. A period that was renewed by the day is not looked for.
    /// </summary>
    /// <param name="records">Where from.</param>
    /// <param name="schemeId">Under which scheme.</param>
    /// <param name="span">From which last day through which, and for which milestone.</param>
    /// <param name="made">Whether also those are read whose holders were reminded of that milestone.</param>
    /// <param name="day">The day.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async IAsyncEnumerable<IReadOnlyList<HeldCertification>> HeldEndingAsync(
        this RecordsContext records, string schemeId, MilestoneSpan span, MadeReminders made, DateOnly day, [EnumeratorCancellation] CancellationToken cancellation)
    {
        var (from, through, milestone) = (span.From, span.Through, span.Milestone.ToString());
        var ending = records.Periods.Where(period => period.SchemeId == schemeId && period.ExpiresOn <= through
            && !records.Periods.Any(later => later.PersonId == period.PersonId && later.SchemeId == schemeId && later.Number > period.Number && later.StartsOn <= day));
        if (made == MadeReminders.LeftOut)
        {
            ending = ending.Where(period => !records.Reminders.Any(row => row.PersonId == period.PersonId && row.SchemeId == schemeId
                && row.PeriodNumber == period.Number && row.Milestone == milestone));
        }

        var last = Guid.Empty;
        while (true)
        {
            var next = await ending.Where(period => period.ExpiresOn >= from && (period.ExpiresOn > from || period.PersonId > last))
                .OrderBy(period => period.ExpiresOn).ThenBy(period => period.PersonId)
                .Select(period => new { period.ExpiresOn, period.PersonId }).Take(PersonsABatch).ToListAsync(cancellation);
            if (next.Count == 0) yield break;
            var persons = next.Select(row => row.PersonId).Distinct().ToList();
            yield return await records.HeldCertificationsAsync(records.Persons.Where(person => persons.Contains(person.Id)).Select(person => person.Id), schemeId, cancellation);
            (from, last) = (next[^1].ExpiresOn, next[^1].PersonId);
        }
    }

    internal static IAsyncEnumerable<HeldCertification> AllHeldCertificationsAsync(
        this RecordsContext records, int batch, CancellationToken cancellation) =>
        records.HeldCertificationsAsync(records.Persons, batch, cancellation);

    private static async IAsyncEnumerable<HeldCertification> HeldCertificationsAsync(
        this RecordsContext records, IQueryable<Person> people, int batch, [EnumeratorCancellation] CancellationToken cancellation)
    {
        Guid? last = null;
        while (true)
        {
            var persons = await people.Where(person => last == null || person.Id > last)
                .Where(person => records.Periods.Any(period => period.PersonId == person.Id))
                .OrderBy(person => person.Id).Select(person => person.Id).Take(batch).ToListAsync(cancellation);
            if (persons.Count == 0) yield break;
            foreach (var held in await records.HeldCertificationsAsync(persons, cancellation)) yield return held;
            last = persons[^1];
        }
    }

    /// <summary>What these people hold or held, by person and scheme.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="personIds">At most a few hundred: the caller batches.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static Task<IReadOnlyList<HeldCertification>> HeldCertificationsAsync(
        this RecordsContext records, IReadOnlyList<Guid> personIds, CancellationToken cancellation)
    {
        var ids = personIds.ToList();
        return records.HeldCertificationsAsync(records.Persons.Where(person => ids.Contains(person.Id)).Select(person => person.Id), cancellation);
    }

    /// <summary>What the people of a query hold or held, by person and scheme: three queries, however many they are.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="people">A query of the same context that gives each id once; bounded by what it starts from, such as one employer.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static Task<IReadOnlyList<HeldCertification>> HeldCertificationsAsync(
        this RecordsContext records, IQueryable<Guid> people, CancellationToken cancellation) =>
        records.HeldCertificationsAsync(people, schemeId: null, cancellation);

    private static async Task<IReadOnlyList<HeldCertification>> HeldCertificationsAsync(
        this RecordsContext records, IQueryable<Guid> people, string? schemeId, CancellationToken cancellation)
    {
        var periods = await records.Periods.AsNoTracking()
            .Where(period => people.Contains(period.PersonId) && (schemeId == null || period.SchemeId == schemeId)).ToListAsync(cancellation);
        var suspensions = await (from suspension in records.Suspensions.AsNoTracking()
                                 where people.Contains(suspension.PersonId) && (schemeId == null || suspension.SchemeId == schemeId)
                                 join end in records.Reinstatements.AsNoTracking() on suspension.Id equals end.SuspensionId into ends
                                 from end in ends.DefaultIfEmpty()
                                 select new { Row = suspension, End = end }).ToListAsync(cancellation);
        var withdrawals = await records.Withdrawals.AsNoTracking()
            .Where(withdrawal => people.Contains(withdrawal.PersonId) && (schemeId == null || withdrawal.SchemeId == schemeId)).ToListAsync(cancellation);

        var suspensionsOf = suspensions.OrderBy(row => row.Row.StartsOn).ThenBy(row => row.Row.Number).ToLookup(
            row => (row.Row.PersonId, row.Row.SchemeId),
            row => DecisionRows.Read(row.Row, row.End));
        var withdrawalsOf = withdrawals.OrderBy(row => row.WithdrawnOn).ToLookup(
            row => (row.PersonId, row.SchemeId),
            DecisionRows.Read);
        return [.. periods.GroupBy(period => (period.PersonId, period.SchemeId))
            .OrderBy(group => group.Key.PersonId).ThenBy(group => group.Key.SchemeId, StringComparer.Ordinal)
            .Select(group => new HeldCertification(
                group.Key.PersonId, group.Key.SchemeId,
                [.. group.OrderBy(period => period.Number).Select(DecisionRows.Read)],
                [.. suspensionsOf[group.Key]], [.. withdrawalsOf[group.Key]]))];
    }
}
