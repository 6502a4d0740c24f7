using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;

namespace Training.Records;

/// <summary>What a class is to be from now on.</summary>
/// <param name="HeldOn">The day, in the site's zone.</param>
/// <param name="StartsAt">The start, on the clocks of the site.</param>
/// <param name="LengthMinutes">How long it lasts.</param>
/// <param name="Seats">How many seats, at least 1.</param>
public sealed record ClassPlan(DateOnly HeldOn, TimeOnly StartsAt, int LengthMinutes, int Seats);

/// <summary>Moves and cancels classes, and keeps what is said about them.</summary>
/// <remarks>Rule: docs/rules.md, "Class days". Who is to be told is worked out from what is kept ("Invitations").</remarks>
public static class ClassChanging
{
    /// <summary>
    /// Moves a class or changes its seats. Refused, for every reason at once, where it is cancelled, scored, would lie on a day that is over or
    /// have fewer seats than people, or where an instructor cannot on the new day. New seats go to who waits.
    /// </summary>
    public static async Task<Kept> ChangeAsync(
        this RecordsContext records, Guid id, Guid classId, ClassPlan plan, Guid byId, string reason, DateTimeOffset now, CancellationToken cancellation)
    {
        if (await records.ClassChanges.AsNoTracking().SingleOrDefaultAsync(row => row.Id == id, cancellation) is { } before)
        {
            return (before.ClassId, PlanOf(before), before.Reason) == (classId, plan, reason)
                ? new Kept.AlreadyStored(id)
                : ClassKeeping.Refuse("class", RecordsProblems.OtherContent, id.ToString());
        }

        if (await records.DayAtClassAsync(classId, now, cancellation) is not { } today) return ClassKeeping.Refuse("class", RecordsProblems.ClassUnknown, classId.ToString());
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            var day = await records.Classes.AsNoTracking().SingleAsync(day => day.Id == classId, cancellation);
            var problems = await records.ProblemsOfAsync(day, plan, today, cancellation);
            if (problems.Count > 0) return new Kept.Refused(problems);
            var row = new ClassChange
            {
                Id = id, ClassId = classId, Number = 1 + await records.ClassChanges.CountAsync(row => row.ClassId == classId, cancellation),
                FromOn = day.HeldOn, FromStartsAt = day.StartsAt, FromMinutes = day.LengthMinutes, FromSeats = day.Capacity,
                ToOn = plan.HeldOn, ToStartsAt = plan.StartsAt, ToMinutes = plan.LengthMinutes, ToSeats = plan.Seats,
                ChangedAt = now, ChangedById = byId, Reason = reason,
            };
            if (!await records.TryChangeAsync(day, row, cancellation)) continue;
            await records.SeatWaitingAsync(classId, now, cancellation);
            return new Kept.Stored(id);
        }

        throw new InvalidOperationException($"Class {classId} was changed by others {Bounds.Attempts} times over.");
    }

    /// <summary>Cancels a class. Refused where it is scored; the first time and its reason stay.</summary>
    public static async Task<Kept> CancelAsync(this RecordsContext records, ClassCancellation row, CancellationToken cancellation)
    {
        if (!await records.Classes.AnyAsync(day => day.Id == row.ClassId, cancellation))
            return ClassKeeping.Refuse("class", RecordsProblems.ClassUnknown, row.ClassId.ToString());
        if (await records.IsScoredAsync(row.ClassId, cancellation)) return ClassKeeping.Refuse("class", RecordsProblems.ClassScored);
        if (await records.TryInsertAsync(cancellation, row)) return new Kept.Stored(row.ClassId);
        var first = await records.ClassCancellations.AsNoTracking().SingleAsync(other => other.ClassId == row.ClassId, cancellation);
        return (first.CancelledById, first.Reason) == (row.CancelledById, row.Reason)
            ? new Kept.AlreadyStored(row.ClassId)
            : ClassKeeping.Refuse("class", RecordsProblems.ClassCancelled);
    }

    /// <summary>Keeps what the people of a class are to know before it. The same form again is one; another content under its id is refused.</summary>
    public static async Task<Kept> BriefAsync(
        this RecordsContext records, Guid id, Guid classId, string meetingPlace, string kit, string weather, Guid byId, DateTimeOffset now,
        CancellationToken cancellation)
    {
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            if (await records.ClassBriefings.AsNoTracking().SingleOrDefaultAsync(row => row.Id == id, cancellation) is { } before)
            {
                return (before.ClassId, before.MeetingPlace, before.Kit, before.Weather) == (classId, meetingPlace, kit, weather)
                    ? new Kept.AlreadyStored(id)
                    : ClassKeeping.Refuse("class", RecordsProblems.OtherContent, id.ToString());
            }

            if (!await records.Classes.AnyAsync(day => day.Id == classId, cancellation))
                return ClassKeeping.Refuse("class", RecordsProblems.ClassUnknown, classId.ToString());
            var row = new ClassBriefing
            {
                Id = id, ClassId = classId, Number = 1 + await records.ClassBriefings.CountAsync(row => row.ClassId == classId, cancellation),
                MeetingPlace = meetingPlace, Kit = kit, Weather = weather, WrittenAt = now, WrittenById = byId,
            };
            if (await records.TryInsertAsync(cancellation, row)) return new Kept.Stored(id);
        }

        throw new InvalidOperationException($"Class {classId} was written about by others {Bounds.Attempts} times over.");
    }

    private static async Task<List<Problem>> ProblemsOfAsync(
        this RecordsContext records, ClassRecord day, ClassPlan plan, DateOnly today, CancellationToken cancellation)
    {
        var problems = new List<Problem>();
        if (await records.ClassCancellations.AnyAsync(row => row.ClassId == day.Id, cancellation)) problems.Add(RecordsProblems.At("class", RecordsProblems.ClassCancelled));
        if (plan == new ClassPlan(day.HeldOn, day.StartsAt, day.LengthMinutes, day.Capacity)) problems.Add(RecordsProblems.At("class", RecordsProblems.NothingChanges));
        var taken = await records.SeatsHeld().CountAsync(row => row.ClassId == day.Id, cancellation);
        if (taken > plan.Seats) problems.Add(RecordsProblems.At("seats", RecordsProblems.SeatsTaken, ClassKeeping.Text(taken)));
        var isMoved = (plan.HeldOn, plan.StartsAt, plan.LengthMinutes) != (day.HeldOn, day.StartsAt, day.LengthMinutes);
        if (!isMoved) return problems;
        if (plan.HeldOn < today) problems.Add(RecordsProblems.At("day", RecordsProblems.DayOver, ClassKeeping.Text(plan.HeldOn)));
        if (await records.IsScoredAsync(day.Id, cancellation)) problems.Add(RecordsProblems.At("day", RecordsProblems.ClassScored));
        if (plan.HeldOn != day.HeldOn) problems.AddRange(await records.InstructorProblemsAsync(day, plan.HeldOn, cancellation));
        return problems;
    }

    // Who was put to the class is asked again for its new day, as if they were put to it now.
    private static async Task<IReadOnlyList<Problem>> InstructorProblemsAsync(
        this RecordsContext records, ClassRecord day, DateOnly on, CancellationToken cancellation)
    {
        var employerId = await records.Sites.Where(site => site.Id == day.SiteId).Select(site => site.EmployerId).SingleAsync(cancellation);
        var teachers = await records.ClassTeachings.Where(row => row.ClassId == day.Id).Select(row => row.InstructorId).ToListAsync(cancellation);
        var scorers = await records.ClassScorers.Where(row => row.ClassId == day.Id).Select(row => row.InstructorId).ToListAsync(cancellation);
        var all = teachers.Union(scorers).ToList();
        var appointed = await records.Appointments
            .Where(row => all.Contains(row.PersonId) && row.Role == AppointedRole.Instructor && row.StartsOn <= on && (row.EndsOn == null || row.EndsOn >= on))
            .Select(row => row.PersonId).ToListAsync(cancellation);
        return
        [
            .. all.Except(appointed).Select(id => RecordsProblems.At("instructor", RecordsProblems.NotAnInstructor, id.ToString(), ClassKeeping.Text(on))),
            .. await records.AssignmentProblemsAsync(
            [
                .. teachers.Select(id => (id, (Assignment)new Assignment.Teaching(day.CourseId))),
                .. scorers.Select(id => (id, (Assignment)new Assignment.Scoring(day.CourseId, employerId))),
            ], on, cancellation),
        ];
    }

    private static Task<bool> IsScoredAsync(this RecordsContext records, Guid classId, CancellationToken cancellation) =>
        records.Scoresheets.AnyAsync(sheet => sheet.ClassId == classId, cancellation);

    private static ClassPlan PlanOf(ClassChange row) => new(row.ToOn, row.ToStartsAt, row.ToMinutes, row.ToSeats);

    // The row and what it says of the class are one step.
    private static async Task<bool> TryChangeAsync(this RecordsContext records, ClassRecord day, ClassChange row, CancellationToken cancellation)
    {
        foreach (var other in records.ChangeTracker.Entries<ClassRecord>().ToList()) other.State = EntityState.Detached;
        var tracked = records.Attach(day);
        (day.HeldOn, day.StartsAt, day.LengthMinutes, day.Capacity) = (row.ToOn, row.ToStartsAt, row.ToMinutes, row.ToSeats);
        var added = records.Add(row);
        try
        {
            return await records.TrySaveAsync(cancellation);
        }
        finally
        {
            added.State = EntityState.Detached;
            tracked.State = EntityState.Detached;
        }
    }
}
