using System.Linq.Expressions;
using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Keeps what holds for people over time: dated rows without overlap.</summary>
public static class PeopleKeeping
{
    /// <summary>Keeps an employment; refused where it overlaps another with the same employer.</summary>
    public static Task<Kept> KeepAsync(this RecordsContext records, Employment row, CancellationToken cancellation) =>
        records.KeepDatedAsync(row, other => other.EmployerId == row.EmployerId, cancellation);

    /// <summary>Keeps a badge number; refused where it names somebody already, or the person has another at that time.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, Badge row, CancellationToken cancellation)
    {
        var taken = await records.Badges.AnyAsync(
            other => other.EmployerId == row.EmployerId && other.NumberKey == row.NumberKey && other.Id != row.Id, cancellation);
        if (taken) return new Kept.Refused([RecordsProblems.At("badge", RecordsProblems.BadgeTaken, row.Number)]);
        return await records.KeepDatedAsync(row, other => other.EmployerId == row.EmployerId, cancellation);
    }

    /// <summary>Keeps a site assignment; refused where it overlaps another.</summary>
    public static Task<Kept> KeepAsync(this RecordsContext records, SiteAssignment row, CancellationToken cancellation) =>
        records.KeepDatedAsync(row, _ => true, cancellation);

    /// <summary>Keeps a crew assignment; refused where it overlaps another.</summary>
    public static Task<Kept> KeepAsync(this RecordsContext records, CrewAssignment row, CancellationToken cancellation) =>
        records.KeepDatedAsync(row, _ => true, cancellation);

    /// <summary>Keeps an appointment; refused where it overlaps another to the same role.</summary>
    public static Task<Kept> KeepAsync(this RecordsContext records, Appointment row, CancellationToken cancellation) =>
        records.KeepDatedAsync(row, other => other.Role == row.Role, cancellation);

    /// <summary>Keeps that somebody represents an employer; refused where it overlaps the same.</summary>
    public static Task<Kept> KeepAsync(this RecordsContext records, Representative row, CancellationToken cancellation) =>
        records.KeepDatedAsync(row, other => other.EmployerId == row.EmployerId, cancellation);

    /// <summary>Ends a row of a person that lasts: <paramref name="endsOn"/> is its last day, or its first where it begins later. False where there is none.</summary>
    public static async Task<bool> EndAsync<T>(this RecordsContext records, Guid personId, Guid rowId, DateOnly endsOn, CancellationToken cancellation)
        where T : DatedRow
    {
        var row = await records.Set<T>().SingleOrDefaultAsync(row => row.Id == rowId && row.PersonId == personId && row.EndsOn == null, cancellation);
        if (row is null) return false;
        row.EndsOn = row.StartsOn > endsOn ? row.StartsOn : endsOn;
        // Lost only to another that ended it: what was asked for is so then.
        await records.TrySaveAsync(cancellation);
        records.Entry(row).State = EntityState.Detached;
        return true;
    }

    private static async Task<Kept> KeepDatedAsync<T>(
        this RecordsContext records, T row, Expression<Func<T, bool>> beside, CancellationToken cancellation)
        where T : DatedRow
    {
        if (row.EndsOn < row.StartsOn) return Refuse(row, RecordsProblems.EndsBeforeStart);
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            if (await records.Set<T>().AnyAsync(other => other.Id == row.Id, cancellation)) return new Kept.AlreadyStored(row.Id);
            var person = await records.Persons.AsNoTracking().SingleOrDefaultAsync(person => person.Id == row.PersonId, cancellation);
            if (person is null) return Refuse(row, RecordsProblems.PersonUnknown, row.PersonId.ToString());
            var others = await records.Set<T>().AsNoTracking().Where(other => other.PersonId == row.PersonId).Where(beside)
                .OrderByDescending(other => other.StartsOn).Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);
            var overlapped = others.Find(row.Overlaps);
            if (overlapped is not null)
                return Refuse(row, RecordsProblems.Overlap, overlapped.StartsOn.ToString("O", System.Globalization.CultureInfo.InvariantCulture));
            if (await records.TryInsertUnderAsync(person, row, cancellation)) return new Kept.Stored(row.Id);
        }

        throw new InvalidOperationException($"Person {row.PersonId} was changed by others {Bounds.Attempts} times over.");
    }

    private static Kept.Refused Refuse<T>(T row, string code, params IReadOnlyList<string> arguments)
        where T : DatedRow => new([RecordsProblems.At($"{typeof(T).Name} {row.Id}", code, arguments)]);
}
