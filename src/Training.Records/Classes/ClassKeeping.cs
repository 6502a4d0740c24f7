using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Certification;

namespace Training.Records;

/// <summary>Keeps classes, who teaches and who scores there; what changes about one; who came.</summary>
public static class ClassKeeping
{
    /// <summary>Keeps a class. The same id again is answered with what is stored.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, ClassRecord day, CancellationToken cancellation)
    {
        if (!await records.Sites.AnyAsync(site => site.Id == day.SiteId, cancellation))
            return Refuse("site", RecordsProblems.SiteUnknown, day.SiteId.ToString());
        if (await records.TryInsertAsync(cancellation, day)) return new Kept.Stored(day.Id);
        var stored = await records.Classes.AsNoTracking().SingleAsync(other => other.Id == day.Id, cancellation);
        var isSame = (stored.SiteId, stored.HeldOn, stored.StartsAt, stored.LengthMinutes, stored.CourseId, stored.Capacity)
            == (day.SiteId, day.HeldOn, day.StartsAt, day.LengthMinutes, day.CourseId, day.Capacity);
        return isSame ? new Kept.AlreadyStored(day.Id) : Refuse("class", RecordsProblems.OtherContent, day.Id.ToString());
    }

    /// <summary>Notes that an instructor teaches at a class. Refused where they are not appointed on its day, or their file says otherwise.</summary>
    public static async Task<Kept> TeachAsync(this RecordsContext records, Guid classId, Guid instructorId, CancellationToken cancellation) =>
        await records.ClassTeachings.AnyAsync(row => row.ClassId == classId && row.InstructorId == instructorId, cancellation)
            ? new Kept.AlreadyStored(instructorId)
            : await records.KeepInstructorAsync(
                classId, instructorId, Duty.Teach, new ClassTeaching { ClassId = classId, InstructorId = instructorId }, cancellation);

    /// <summary>Lets an instructor score at a class. Refused as for <see cref="TeachAsync"/>; the rules judge each sheet by who taught whom.</summary>
    public static async Task<Kept> LetScoreAsync(this RecordsContext records, Guid classId, Guid instructorId, CancellationToken cancellation) =>
        await records.ClassScorers.AnyAsync(row => row.ClassId == classId && row.InstructorId == instructorId, cancellation)
            ? new Kept.AlreadyStored(instructorId)
            : await records.KeepInstructorAsync(
                classId, instructorId, Duty.Score, new ClassScorer { ClassId = classId, InstructorId = instructorId }, cancellation);

    private static async Task<Kept> KeepInstructorAsync(
        this RecordsContext records, Guid classId, Guid instructorId, Duty duty, object row, CancellationToken cancellation)
    {
        var held = await (from one in records.Classes
                          where one.Id == classId
                          join site in records.Sites on one.SiteId equals site.Id
                          select new { one.HeldOn, one.CourseId, site.EmployerId }).SingleOrDefaultAsync(cancellation);
        if (held is not { HeldOn: var day }) return Refuse("class", RecordsProblems.ClassUnknown, classId.ToString());
        if (!await records.IsAppointedAsync(instructorId, AppointedRole.Instructor, day, cancellation))
        {
            return Refuse(
                "instructor", RecordsProblems.NotAnInstructor, instructorId.ToString(), day.ToString("O", CultureInfo.InvariantCulture));
        }

        var problems = await records.AssignmentProblemsAsync(
            instructorId, duty == Duty.Teach ? new Assignment.Teaching(held.CourseId) : new Assignment.Scoring(held.CourseId, held.EmployerId), day, cancellation);
        if (problems.Count > 0) return new Kept.Refused(problems);
        return await records.TryInsertAsync(cancellation, row)
            ? new Kept.Stored(instructorId)
            : new Kept.AlreadyStored(instructorId);
    }

    internal static Kept.Refused Refuse(string part, string code, params IReadOnlyList<string> arguments) =>
        new([RecordsProblems.At(part, code, arguments)]);

    internal static string Text(DateOnly day) => day.ToString("O", CultureInfo.InvariantCulture);

    internal static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
