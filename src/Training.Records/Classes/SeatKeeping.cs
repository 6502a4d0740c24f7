using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Keeps who has a seat, who gave one back and who waits.</summary>
/// <remarks>Rule: docs/rules.md, "Class days". Everything that a limit decides counts the version of the class up, so that of two at once one starts again.</remarks>
public static class SeatKeeping
{
    /// <summary>Gives a person a seat. Refused where the class is full or cancelled; somebody who has a seat keeps it.</summary>
    public static async Task<Kept> AttendAsync(this RecordsContext records, Guid classId, Guid personId, CancellationToken cancellation)
    {
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            if (await records.SeatsHeld().AnyAsync(row => row.ClassId == classId && row.PersonId == personId, cancellation))
                return new Kept.AlreadyStored(personId);
            var day = await records.Classes.AsNoTracking().SingleOrDefaultAsync(day => day.Id == classId, cancellation);
            if (day is null) return ClassKeeping.Refuse("class", RecordsProblems.ClassUnknown, classId.ToString());
            if (await records.ClassCancellations.AnyAsync(row => row.ClassId == classId, cancellation))
                return ClassKeeping.Refuse("class", RecordsProblems.ClassCancelled);
            if (!await records.Persons.AnyAsync(person => person.Id == personId, cancellation))
                return ClassKeeping.Refuse("person", RecordsProblems.PersonUnknown, personId.ToString());
            if (await records.FreeSeatsAsync(day, cancellation) <= 0) return ClassKeeping.Refuse("class", RecordsProblems.ClassFull, ClassKeeping.Text(day.Capacity));
            if (await records.TrySeatAsync(day, personId, await records.WaitingRowOfAsync(classId, personId, cancellation), null, cancellation))
                return new Kept.Stored(personId);
        }

        throw TooManyAttempts(classId);
    }

    /// <summary>
    /// Gives a seat back, and the freed one to the first in line. Refused where there is none, the day is over, or a scoresheet says that they
    /// are there. The same form again changes nothing.
    /// </summary>
    /// <param name="records">Where to.</param>
    /// <param name="id">Made by the form.</param>
    /// <param name="classId">At which class.</param>
    /// <param name="personId">Whose seat.</param>
    /// <param name="byId">Who gives it back.</param>
    /// <param name="reason">Why, or null.</param>
    /// <param name="now">UTC.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<Kept> GiveBackAsync(
        this RecordsContext records, Guid id, Guid classId, Guid personId, Guid byId, string? reason, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await records.SeatReturns.AsNoTracking().SingleOrDefaultAsync(row => row.Id == id, cancellation) is { } before)
        {
            return (before.ClassId, before.PersonId, before.Reason) == (classId, personId, reason)
                ? new Kept.AlreadyStored(id)
                : ClassKeeping.Refuse("seat", RecordsProblems.OtherContent, id.ToString());
        }

        if (await records.DayAtClassAsync(classId, now, cancellation) is not { } today) return ClassKeeping.Refuse("class", RecordsProblems.ClassUnknown, classId.ToString());
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            var day = await records.Classes.AsNoTracking().SingleAsync(day => day.Id == classId, cancellation);
            var turn = await records.SeatsHeld().Where(row => row.ClassId == classId && row.PersonId == personId).Select(row => (int?)row.Turn)
                .SingleOrDefaultAsync(cancellation);
            if (turn is not { } number) return ClassKeeping.Refuse("seat", RecordsProblems.NoSeat);
            if (day.HeldOn < today) return ClassKeeping.Refuse("seat", RecordsProblems.ClassOver, ClassKeeping.Text(day.HeldOn));
            var isScored = await records.StartedScoresheets.AnyAsync(row => row.ClassId == classId && row.CandidateId == personId, cancellation)
                || await records.Scoresheets.AnyAsync(row => row.ClassId == classId && row.CandidateId == personId, cancellation);
            if (isScored) return ClassKeeping.Refuse("seat", RecordsProblems.SeatScored);
            var row = new SeatReturn
            {
                Id = id, ClassId = classId, PersonId = personId, Turn = number, ReturnedAt = now, ReturnedById = byId, Reason = reason,
            };
            if (!await records.TryInsertUnderAsync(day, row, cancellation)) continue;
            await records.SeatWaitingAsync(classId, now, cancellation);
            return new Kept.Stored(id);
        }

        throw TooManyAttempts(classId);
    }

    /// <summary>
    /// Puts a person on the waiting list of a class, at its end. Refused where a seat is free, the class is cancelled or its day has come, or
    /// the person has a seat. Somebody who waits already keeps their place.
    /// </summary>
    public static async Task<Kept> WaitAsync(
        this RecordsContext records, Guid id, Guid classId, Guid personId, Guid byId, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await records.DayAtClassAsync(classId, now, cancellation) is not { } today) return ClassKeeping.Refuse("class", RecordsProblems.ClassUnknown, classId.ToString());
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            if (await records.ClassWaitings.AnyAsync(row => row.Id == id, cancellation)) return new Kept.AlreadyStored(id);
            if (await records.Waiting(classId).AnyAsync(row => row.PersonId == personId, cancellation)) return new Kept.AlreadyStored(id);
            var day = await records.Classes.AsNoTracking().SingleAsync(day => day.Id == classId, cancellation);
            if (await records.ClassCancellations.AnyAsync(row => row.ClassId == classId, cancellation)) return ClassKeeping.Refuse("class", RecordsProblems.ClassCancelled);
            if (day.HeldOn <= today) return ClassKeeping.Refuse("class", RecordsProblems.ClassOver, ClassKeeping.Text(day.HeldOn));
            if (await records.SeatsHeld().AnyAsync(row => row.ClassId == classId && row.PersonId == personId, cancellation))
                return ClassKeeping.Refuse("person", RecordsProblems.SeatedAlready);
            if (await records.FreeSeatsAsync(day, cancellation) > 0) return ClassKeeping.Refuse("class", RecordsProblems.SeatFree);
            var row = new ClassWaiting
            {
                Id = id, ClassId = classId, PersonId = personId, AskedAt = now, AskedById = byId,
                Turn = 1 + await records.ClassWaitings.CountAsync(other => other.ClassId == classId && other.PersonId == personId, cancellation),
            };
            if (await records.TryInsertUnderAsync(day, row, cancellation)) return new Kept.Stored(id);
        }

        throw TooManyAttempts(classId);
    }

    /// <summary>Takes a person off the waiting list. Somebody who does not wait: nothing changes.</summary>
    public static async Task StopWaitingAsync(
        this RecordsContext records, Guid classId, Guid personId, Guid byId, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await records.WaitingRowOfAsync(classId, personId, cancellation) is { } waiting)
            await records.TryInsertAsync(cancellation, new ClassWaitingEnd { WaitingId = waiting.Id, EndedAt = now, EndedById = byId });
    }

    /// <summary>
    /// Gives free seats to those who wait, the first in line first, through the day before the class. Safe to run twice and at once: a seat
    /// that was freed while the program was killed is given by the next who looks.
    /// </summary>
    /// <returns>Who got one.</returns>
    public static async Task<IReadOnlyList<Guid>> SeatWaitingAsync(
        this RecordsContext records, Guid classId, DateTimeOffset now, CancellationToken cancellation)
    {
        var seated = new List<Guid>();
        var today = await records.DayAtClassAsync(classId, now, cancellation);
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            var day = await records.StandingClasses().AsNoTracking().SingleOrDefaultAsync(day => day.Id == classId, cancellation);
            // On the day itself nobody is sent for without being asked.
            if (day is null || day.HeldOn <= today || await records.FreeSeatsAsync(day, cancellation) <= 0) return seated;
            if (await records.Waiting(classId).FirstOrDefaultAsync(cancellation) is not { } first) return seated;
            if (!await records.TrySeatAsync(day, first.PersonId, first, now, cancellation)) continue;
            seated.Add(first.PersonId);
            attempt = 0;
        }

        throw TooManyAttempts(classId);
    }

    internal static async Task<int> FreeSeatsAsync(this RecordsContext records, ClassRecord day, CancellationToken cancellation) =>
        day.Capacity - await records.SeatsHeld().CountAsync(row => row.ClassId == day.Id, cancellation);

    private static Task<ClassWaiting?> WaitingRowOfAsync(this RecordsContext records, Guid classId, Guid personId, CancellationToken cancellation) =>
        records.Waiting(classId).FirstOrDefaultAsync(row => row.PersonId == personId, cancellation);

    // The seat and the end of the wait are one step: nobody waits for what they have.
    private static async Task<bool> TrySeatAsync(
        this RecordsContext records, ClassRecord day, Guid personId, ClassWaiting? waiting, DateTimeOffset? now, CancellationToken cancellation)
    {
        var turn = 1 + await records.ClassAttendances.CountAsync(row => row.ClassId == day.Id && row.PersonId == personId, cancellation);
        var seat = new ClassAttendance { ClassId = day.Id, PersonId = personId, Turn = turn };
        return waiting is null
            ? await records.TryInsertUnderAsync(day, seat, cancellation)
            : await records.TryInsertUnderAsync(
                day, seat, cancellation, new ClassWaitingEnd { WaitingId = waiting.Id, EndedAt = now, EndedById = null });
    }

    private static InvalidOperationException TooManyAttempts(Guid classId) =>
        new($"Class {classId} was changed by others {Bounds.Attempts} times over.");
}
