using System.Runtime.CompilerServices;
using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>What somebody has to do with a class.</summary>
public enum ClassPart
{
    /// <summary>Has a seat.</summary>
    Seat,

    /// <summary>Teaches.</summary>
    Teaches,

    /// <summary>Scores, and perhaps teaches besides.</summary>
    Scores,
}

/// <summary>Somebody who is expected at a class, or was told so.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="Part">What as; null where they are not expected any more.</param>
/// <param name="Last">What they were told last; null where nothing yet.</param>
/// <param name="IsReminded">They were reminded of that.</param>
public sealed record PersonToTell(Guid PersonId, ClassPart? Part, ClassInvitation? Last, bool IsReminded);

/// <summary>A class with everybody who is expected there or was told so.</summary>
/// <param name="Class">Which.</param>
/// <param name="Site">Where.</param>
/// <param name="Briefing">What is said about it; null where nothing is.</param>
/// <param name="Cancellation">That it does not take place, or null.</param>
/// <param name="LastChange">The last change, or null.</param>
/// <param name="People">In the order of their ids.</param>
public sealed record ClassToTell(
    ClassRecord Class, Site Site, ClassBriefing? Briefing, ClassCancellation? Cancellation, ClassChange? LastChange, IReadOnlyList<PersonToTell> People);

/// <summary>Reads who is to be told about classes.</summary>
public static class InvitationQueries
{
    private const int ClassesAtOnce = 50;

    /// <summary>All classes from a day on, cancelled ones too, some at a time: what it costs grows with what is planned, not with what was held.</summary>
    public static async IAsyncEnumerable<ClassToTell> ClassesToTellAsync(
        this RecordsContext records, DateOnly from, [EnumeratorCancellation] CancellationToken cancellation)
    {
        var after = (HeldOn: from.AddDays(-1), Id: Guid.Empty);
        while (true)
        {
            var ids = await records.Classes.Where(day => day.HeldOn > after.HeldOn || (day.HeldOn == after.HeldOn && day.Id > after.Id))
                .OrderBy(day => day.HeldOn).ThenBy(day => day.Id).Select(day => day.Id).Take(ClassesAtOnce).ToListAsync(cancellation);
            if (ids.Count == 0) yield break;
            var page = await records.ClassesToTellAsync(ids, cancellation);
            foreach (var one in page) yield return one;
            after = (page[^1].Class.HeldOn, page[^1].Class.Id);
        }
    }

    /// <summary>Classes where somebody waits although a seat is free, from a day on; at most 500.</summary>
    public static async Task<IReadOnlyList<Guid>> ClassesToFillAsync(this RecordsContext records, DateOnly from, CancellationToken cancellation) =>
        await records.StandingClasses()
            .Where(day => day.HeldOn >= from
                && records.ClassWaitings.Any(row => row.ClassId == day.Id && !records.ClassWaitingEnds.Any(end => end.WaitingId == row.Id))
                && records.SeatsHeld().Count(seat => seat.ClassId == day.Id) < day.Capacity)
            .OrderBy(day => day.HeldOn).ThenBy(day => day.Id).Select(day => day.Id).Take(Bounds.RowsOfOnePerson / 2).ToListAsync(cancellation);

    private static async Task<List<ClassToTell>> ClassesToTellAsync(this RecordsContext records, List<Guid> ids, CancellationToken cancellation)
    {
        var classes = await (from day in records.Classes.AsNoTracking()
                             where ids.Contains(day.Id)
                             join site in records.Sites.AsNoTracking() on day.SiteId equals site.Id
                             orderby day.HeldOn, day.Id
                             select new { Day = day, Site = site }).ToListAsync(cancellation);
        var seats = (await records.SeatsHeld().Where(row => ids.Contains(row.ClassId)).Select(row => new { row.ClassId, row.PersonId }).ToListAsync(cancellation))
            .ToLookup(row => row.ClassId, row => row.PersonId);
        var teachers = (await records.ClassTeachings.Where(row => ids.Contains(row.ClassId)).Select(row => new { row.ClassId, row.InstructorId }).ToListAsync(cancellation))
            .ToLookup(row => row.ClassId, row => row.InstructorId);
        var scorers = (await records.ClassScorers.Where(row => ids.Contains(row.ClassId)).Select(row => new { row.ClassId, row.InstructorId }).ToListAsync(cancellation))
            .ToLookup(row => row.ClassId, row => row.InstructorId);
        var told = (await records.ClassInvitations.AsNoTracking()
            .Where(row => ids.Contains(row.ClassId) && !records.ClassInvitations.Any(
                later => later.ClassId == row.ClassId && later.PersonId == row.PersonId && later.Sequence > row.Sequence))
            .ToListAsync(cancellation)).ToDictionary(row => (row.ClassId, row.PersonId));
        var reminded = (await records.ClassReminders.Where(row => ids.Contains(row.ClassId))
            .Select(row => new { row.ClassId, row.PersonId, row.Sequence }).ToListAsync(cancellation))
            .Select(row => (row.ClassId, row.PersonId, row.Sequence)).ToHashSet();
        var briefings = (await records.ClassBriefings.AsNoTracking()
            .Where(row => ids.Contains(row.ClassId) && !records.ClassBriefings.Any(later => later.ClassId == row.ClassId && later.Number > row.Number))
            .ToListAsync(cancellation)).ToDictionary(row => row.ClassId);
        var changes = (await records.ClassChanges.AsNoTracking()
            .Where(row => ids.Contains(row.ClassId) && !records.ClassChanges.Any(later => later.ClassId == row.ClassId && later.Number > row.Number))
            .ToListAsync(cancellation)).ToDictionary(row => row.ClassId);
        var ends = (await records.ClassCancellations.AsNoTracking().Where(row => ids.Contains(row.ClassId)).ToListAsync(cancellation)).ToDictionary(row => row.ClassId);
        return classes.ConvertAll(one =>
        {
            var id = one.Day.Id;
            var parts = new Dictionary<Guid, ClassPart>();
            if (!ends.ContainsKey(id))
            {
                foreach (var person in seats[id]) parts[person] = ClassPart.Seat;
                foreach (var person in teachers[id]) parts[person] = ClassPart.Teaches;
                foreach (var person in scorers[id]) parts[person] = ClassPart.Scores;
            }

            var people = parts.Keys.Union(told.Keys.Where(key => key.ClassId == id).Select(key => key.PersonId)).Order();
            return new ClassToTell(
                one.Day, one.Site, briefings.GetValueOrDefault(id), ends.GetValueOrDefault(id), changes.GetValueOrDefault(id),
                [.. people.Select(person =>
                {
                    var last = told.GetValueOrDefault((id, person));
                    return new PersonToTell(
                        person, parts.TryGetValue(person, out var part) ? part : null, last, last is not null && reminded.Contains((id, person, last.Sequence)));
                })]);
        });
    }
}
