using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Keeps who came to a class.</summary>
/// <remarks>Rule: docs/rules.md, "Class days".</remarks>
public static class PresenceKeeping
{
    /// <summary>
    /// Keeps an instructor's word on whether somebody came; the newest counts. Refused before the day of the class, for somebody without a
    /// seat, and where a scoresheet of the class says that they were there. The same form again is one; another content under its id is refused.
    /// </summary>
    public static async Task<Kept> MarkAsync(
        this RecordsContext records, Guid id, Guid classId, Guid personId, Presence presence, string? reason, Guid byId, DateTimeOffset now,
        CancellationToken cancellation)
    {
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            if (await records.ClassPresences.AsNoTracking().SingleOrDefaultAsync(row => row.Id == id, cancellation) is { } before)
            {
                return (before.ClassId, before.PersonId, before.Presence, before.Reason) == (classId, personId, presence, reason)
                    ? new Kept.AlreadyStored(id)
                    : ClassKeeping.Refuse("presence", RecordsProblems.OtherContent, id.ToString());
            }

            if (await records.Classes.AsNoTracking().SingleOrDefaultAsync(day => day.Id == classId, cancellation) is not { } day)
                return ClassKeeping.Refuse("class", RecordsProblems.ClassUnknown, classId.ToString());
            if (await records.ClassCancellations.AnyAsync(row => row.ClassId == classId, cancellation)) return ClassKeeping.Refuse("class", RecordsProblems.ClassCancelled);
            if (await records.DayAtClassAsync(classId, now, cancellation) < day.HeldOn)
                return ClassKeeping.Refuse("class", RecordsProblems.ClassNotYet, ClassKeeping.Text(day.HeldOn));
            if (!await records.SeatsHeld().AnyAsync(row => row.ClassId == classId && row.PersonId == personId, cancellation))
                return ClassKeeping.Refuse("presence", RecordsProblems.NoSeat);
            if (presence == Presence.DidNotCome
                && await records.Scoresheets.AnyAsync(row => row.ClassId == classId && row.CandidateId == personId, cancellation))
            {
                return ClassKeeping.Refuse("presence", RecordsProblems.SeatScored);
            }

            var row = new ClassPresence
            {
                Id = id, ClassId = classId, PersonId = personId, Presence = presence, Reason = reason, MarkedAt = now, MarkedById = byId,
                Number = 1 + await records.ClassPresences.CountAsync(row => row.ClassId == classId && row.PersonId == personId, cancellation),
            };
            if (await records.TryInsertAsync(cancellation, row)) return new Kept.Stored(id);
        }

        throw new InvalidOperationException($"Class {classId} was marked by others {Bounds.Attempts} times over.");
    }

    /// <summary>The newest word on each person of a class; who was not spoken of is not among them.</summary>
    public static async Task<IReadOnlyDictionary<Guid, ClassPresence>> PresencesAsync(this RecordsContext records, Guid classId, CancellationToken cancellation) =>
        (await records.ClassPresences.AsNoTracking()
            .Where(row => row.ClassId == classId && !records.ClassPresences.Any(
                later => later.ClassId == classId && later.PersonId == row.PersonId && later.Number > row.Number))
            .Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation)).ToDictionary(row => row.PersonId);
}
