using Microsoft.EntityFrameworkCore;
using Training.Documents.SignInSheets;
using Training.Records;
using Training.Web.Features.Classes;
using Training.Web.Features.Seats;

namespace Training.Web.Features.SignInSheets;

/// <summary>Reads what goes onto the paper of a class.</summary>
internal static class SignInSheetReading
{
    /// <summary>The paper of a class; null where there is none.</summary>
    public static async Task<ClassSheet?> FindClassSheetAsync(
        this RecordsContext records, Guid classId, IReadOnlyDictionary<string, string> titles, Uri address, CancellationToken cancellation)
    {
        if (await records.FindClassAsync(classId, cancellation) is not { } day) return null;
        var details = (await records.SeatDaysAsync(records.Classes.Where(one => one.Id == classId), cancellation)).Single();
        var seated = await records.SeatsHeld().Where(seat => seat.ClassId == classId).OrderBy(seat => seat.PersonId).Select(seat => seat.PersonId)
            .Take(SeatReading.Most).ToListAsync(cancellation);
        var waiting = await records.Waiting(classId).Select(row => row.PersonId).Take(SeatReading.Most).ToListAsync(cancellation);
        var lines = await records.LinesAsync([.. seated, .. waiting], day.HeldOn, cancellation);
        return new(
            details, titles.GetValueOrDefault(day.CourseId, day.CourseId), day.Employer,
            await NamesAsync(records.ClassTeachings.Where(row => row.ClassId == classId).Select(row => row.InstructorId)),
            await NamesAsync(records.ClassScorers.Where(row => row.ClassId == classId).Select(row => row.InstructorId)),
            [.. seated.Select(id => lines[id]).OrderBy(line => line.Name is null).ThenBy(line => line.Name, StringComparer.CurrentCultureIgnoreCase)],
            [.. waiting.Select(id => lines[id])], address);

        async Task<IReadOnlyList<string>> NamesAsync(IQueryable<Guid> people) =>
            [.. (await records.ChoicesAsync(people, day.HeldOn, cancellation)).Select(one => one.Name ?? "–")];
    }

    /// <summary>These people as a paper names them, on a day.</summary>
    public static async Task<IReadOnlyDictionary<Guid, SignInLine>> LinesAsync(
        this RecordsContext records, List<Guid> ids, DateOnly day, CancellationToken cancellation)
    {
        var names = await records.NamesOfAsync(ids, day, cancellation);
        var employers = (await (from row in records.Employments
                                where ids.Contains(row.PersonId) && row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day)
                                join employer in records.Employers on row.EmployerId equals employer.Id
                                select new { row.PersonId, row.EmployerId, employer.Name }).ToListAsync(cancellation)).ToLookup(row => row.PersonId);
        var badges = (await records.Badges.Where(row => ids.Contains(row.PersonId) && row.StartsOn <= day && (row.EndsOn == null || row.EndsOn >= day))
            .Select(row => new { row.PersonId, row.EmployerId, row.Number }).ToListAsync(cancellation)).ToLookup(row => row.PersonId);
        var languages = await records.Persons.Where(person => ids.Contains(person.Id)).ToDictionaryAsync(person => person.Id, person => person.Language, cancellation);
        return ids.Distinct().ToDictionary(id => id, id => new SignInLine(
            names.GetValueOrDefault(id), Joined(badges[id].Select(row => row.Number)), Joined(employers[id].Select(row => row.Name)), languages[id]));
    }

    private static string? Joined(IEnumerable<string> texts) => string.Join(", ", texts.Order(StringComparer.Ordinal)) is { Length: > 0 } joined ? joined : null;
}
