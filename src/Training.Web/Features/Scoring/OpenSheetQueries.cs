using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.ClassDays;
using Training.Web.Features.Scoresheets;
using Training.Web.Shelf;

namespace Training.Web.Features.Scoring;

/// <summary>Finds the visitor's own sheets.</summary>
internal static class OpenSheetQueries
{
    /// <summary>Null where there is no such sheet, or it is somebody else's.</summary>
    public static async Task<OpenSheet?> FindOpenSheetAsync(
        this RecordsContext records, CoursesByHash courses, Visitor visitor, Guid sheetId, CancellationToken cancellation)
    {
        var started = await records.FindStartedScoresheetAsync(visitor.PersonId, sheetId, cancellation)
            ?? await records.FindSignedAsStartedAsync(visitor.PersonId, sheetId, cancellation);
        if (started is null) return null;
        var day = await (from row in records.Classes
                         where row.Id == started.ClassId
                         join site in records.Sites on row.SiteId equals site.Id
                         select new { row.CourseId, row.HeldOn, site.Name, site.Zone }).AsNoTracking().SingleAsync(cancellation);
        if (await courses.FindAsync(records, day.CourseId, started.CourseHash, cancellation) is not { } course) return null;
        if (course.Checklists.FirstOrDefault(list => list.Id == started.ChecklistId) is not { } checklist) return null;
        Guid[] people = started.WatcherId is { } watcher ? [started.CandidateId, watcher] : [started.CandidateId];
        var names = await records.NamesAsync(people, day.HeldOn, cancellation);
        return new(
            started, course, checklist, names[started.CandidateId], people.Length > 1 ? names[people[1]] : null, day.Name, day.Zone,
            await records.IsSignedAsync(sheetId, cancellation));
    }

    // A sheet may have been kept without a start on these pages; it is shown as if it had one.
    private static async Task<StartedScoresheet?> FindSignedAsStartedAsync(
        this RecordsContext records, Guid instructorId, Guid sheetId, CancellationToken cancellation) =>
        await records.FindScoresheetAsync(sheetId, cancellation) is { } stored && stored.Sheet.InstructorId == instructorId
            ? stored.Sheet.ToStarted()
            : null;
}
