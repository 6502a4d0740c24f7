using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>Keeps graded scoresheets. Nothing twice, nothing lost.</summary>
public static class ScoresheetKeeping
{
    /// <summary>
    /// Keeps a signed scoresheet with its first result, in one transaction. The same id and content again is answered with what is
    /// stored. Other content under the same id, and a second sheet of the same try, are kept beside the first as disputed, without a result.
    /// </summary>
    /// <param name="records">Where to.</param>
    /// <param name="sheet">As signed; each step once.</param>
    /// <param name="result">What grading it found.</param>
    /// <param name="scoredOn">The day of the sheet in <paramref name="zone"/>; the instructor must be appointed on it.</param>
    /// <param name="zone">IANA time zone of the class's site.</param>
    /// <param name="now">When it is kept, UTC.</param>
    /// <param name="cancellation">Ends the wait; what was committed stays.</param>
    /// <exception cref="ArgumentException">A step is there twice: it was never graded.</exception>
    public static async Task<Kept> KeepAsync(
        this RecordsContext records, Scoresheet sheet, ScoresheetResult result, DateOnly scoredOn, string zone, DateTimeOffset now,
        CancellationToken cancellation)
    {
        if (sheet.Observations.DistinctBy(step => step.StepId, StringComparer.Ordinal).Count() != sheet.Observations.Count)
            throw new ArgumentException("A step is observed twice.", nameof(sheet));
        var problems = await records.ProblemsOfAsync(sheet, scoredOn, cancellation);
        var modelPassRow = await records.RequireModelPassAsync(sheet, problems, cancellation);
        if (problems.Count > 0) return new Kept.Refused(problems);

        var hash = ContentHash.Of(sheet);
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            var copies = await records.CopiesAsync(sheet, cancellation);
            var same = copies.Find(other => other.FormId == sheet.Id && other.ContentHash == hash);
            if (same is { Copy: 1 }) return new Kept.AlreadyStored(await records.FirstResultAsync(same.Id, cancellation));
            if (same is not null) return Dispute(same.Id, sheet, copies);

            var copy = copies.Count == 0 ? 1 : copies.Max(other => other.Copy) + 1;
            var row = ScoresheetRows.Of(sheet, hash, copy, modelPassRow, scoredOn, zone, now);
            if (row.Copy > 1)
            {
                if (await records.TryInsertAsync(cancellation, row)) return Dispute(row.Id, sheet, copies);
                continue;
            }

            var graded = ScoresheetRows.Of(result, row.Id, number: 1, now);
            if (await records.TryInsertAsync(cancellation, row, graded)) return new Kept.Stored(graded.Id);
        }

        throw new InvalidOperationException($"Scoresheet {sheet.Id} came with {Bounds.Attempts} contents at once.");
    }

    /// <summary>Adds the result of grading a kept sheet again; earlier results and the decisions on them stay as they are.</summary>
    /// <returns>The id of the new result.</returns>
    /// <exception cref="InvalidOperationException">No such sheet.</exception>
    public static async Task<Guid> KeepRegradedAsync(
        this RecordsContext records, Guid sheetId, ScoresheetResult result, DateTimeOffset now, CancellationToken cancellation)
    {
        var rowId = await records.Scoresheets.Where(sheet => sheet.FormId == sheetId && sheet.Copy == 1)
            .Select(sheet => sheet.Id).SingleAsync(cancellation);
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            var last = await records.ScoresheetResults.Where(other => other.ScoresheetId == rowId).MaxAsync(other => other.Number, cancellation);
            var graded = ScoresheetRows.Of(result, rowId, last + 1, now);
            if (await records.TryInsertAsync(cancellation, graded)) return graded.Id;
        }

        throw new InvalidOperationException($"Scoresheet {sheetId} was regraded by others {Bounds.Attempts} times over.");
    }

    /// <summary>Keeps the written reason why this sheet's scorer may count although they taught. The first reason stays.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="sheetId">The form's id of the sheet.</param>
    /// <param name="writerId">The sheet's own scorer, or somebody appointed as programme lead on <paramref name="writtenOn"/>.</param>
    /// <param name="reason">Why; at most 2,000 characters.</param>
    /// <param name="writtenOn">Today in the provider's zone.</param>
    /// <param name="now">UTC.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<Kept> KeepSeparationReasonAsync(
        this RecordsContext records, Guid sheetId, Guid writerId, string reason, DateOnly writtenOn, DateTimeOffset now, CancellationToken cancellation)
    {
        var problems = new List<Problem>();
        var sheet = await records.Scoresheets.Where(sheet => sheet.FormId == sheetId && sheet.Copy == 1)
            .Select(sheet => new { sheet.Id, sheet.InstructorId }).SingleOrDefaultAsync(cancellation);
        if (sheet is null) problems.Add(RecordsProblems.At("scoresheet", RecordsProblems.ResultUnknown, sheetId.ToString()));
        if (writerId != sheet?.InstructorId && !await records.IsAppointedAsync(writerId, AppointedRole.ProgrammeLead, writtenOn, cancellation))
        {
            problems.Add(RecordsProblems.At(
                "writer", RecordsProblems.NotTheScorerNorALead, writerId.ToString(), writtenOn.ToString("O", CultureInfo.InvariantCulture)));
        }

        if (problems.Count > 0 || sheet is not { Id: var id }) return new Kept.Refused(problems);

        var row = new SeparationReasonRecord { ScoresheetId = id, WriterId = writerId, Reason = reason, WrittenAt = now };
        if (await records.TryInsertAsync(cancellation, row)) return new Kept.Stored(id);
        var first = await records.SeparationReasons.AsNoTracking().SingleAsync(other => other.ScoresheetId == id, cancellation);
        return first.WriterId == writerId && first.Reason == reason
            ? new Kept.AlreadyStored(id)
            : new Kept.Refused([RecordsProblems.At("scoresheet", RecordsProblems.OtherContent, sheetId.ToString())]);
    }

    private static async Task<List<Problem>> ProblemsOfAsync(
        this RecordsContext records, Scoresheet sheet, DateOnly scoredOn, CancellationToken cancellation)
    {
        var problems = new List<Problem>();
        if (sheet.InstructorId == sheet.CandidateId) problems.Add(RecordsProblems.At("instructor", RecordsProblems.ScoresOneself));
        await records.RequirePersonAsync(sheet.CandidateId, "candidate", problems, cancellation);
        await records.RequireAppointedAsync(sheet.InstructorId, AppointedRole.Instructor, scoredOn, problems, cancellation);
        if (sheet.Live is { } live) await records.RequirePersonAsync(live.WatcherId, "watcher", problems, cancellation);
        await records.RequireSnapshotAsync(sheet.CourseHash, problems, cancellation);
        await records.RequireInClassAsync(sheet.ClassId, sheet.CandidateId, sheet.InstructorId, problems, cancellation);
        return problems;
    }

    internal static async Task RequireInClassAsync(
        this RecordsContext records, Guid classId, Guid candidateId, Guid instructorId, List<Problem> problems, CancellationToken cancellation)
    {
        if (!await records.Classes.AnyAsync(day => day.Id == classId, cancellation))
        {
            problems.Add(RecordsProblems.At("class", RecordsProblems.ClassUnknown, classId.ToString()));
            return;
        }

        if (!await records.ClassAttendances.AnyAsync(row => row.ClassId == classId && row.PersonId == candidateId, cancellation))
            problems.Add(RecordsProblems.At("candidate", RecordsProblems.NotInClass, candidateId.ToString()));
        if (!await records.ClassScorers.AnyAsync(row => row.ClassId == classId && row.InstructorId == instructorId, cancellation))
            problems.Add(RecordsProblems.At("instructor", RecordsProblems.NotAScorer, instructorId.ToString()));
    }

    private static async Task<Guid?> RequireModelPassAsync(
        this RecordsContext records, Scoresheet sheet, List<Problem> problems, CancellationToken cancellation)
    {
        if (sheet.Live is not { } live) return null;
        var signedAt = Instants.Truncate(sheet.SignedAt);
        var row = await (from pass in records.Scoresheets
                         where pass.FormId == live.ModelPassId && pass.Copy == 1 && pass.Subject == Subject.Model
                             && pass.CandidateId == sheet.CandidateId && pass.ChecklistId == sheet.ChecklistId && pass.SignedAt < signedAt
                         join result in records.ScoresheetResults on pass.Id equals result.ScoresheetId
                         where result.Outcome == PracticalOutcome.Passed
                             && result.Number == records.ScoresheetResults.Where(other => other.ScoresheetId == pass.Id).Max(other => other.Number)
                         select (Guid?)pass.Id).SingleOrDefaultAsync(cancellation);
        if (row is null) problems.Add(RecordsProblems.At("live", RecordsProblems.ModelPassMissing));
        return row;
    }

    private static Task<List<CopyOfSheet>> CopiesAsync(this RecordsContext records, Scoresheet sheet, CancellationToken cancellation) =>
        records.Scoresheets
            .Where(other => other.FormId == sheet.Id
                || (other.ClassId == sheet.ClassId && other.CandidateId == sheet.CandidateId && other.ChecklistId == sheet.ChecklistId
                    && other.Subject == sheet.Subject && other.Try == sheet.Try && other.InstructorId == sheet.InstructorId))
            .Select(other => new CopyOfSheet(other.Id, other.FormId, other.Copy, other.ContentHash)).ToListAsync(cancellation);

    private static Task<Guid> FirstResultAsync(this RecordsContext records, Guid rowId, CancellationToken cancellation) =>
        records.ScoresheetResults.Where(result => result.ScoresheetId == rowId && result.Number == 1)
            .Select(result => result.Id).SingleAsync(cancellation);

    private static Kept.Disputed Dispute(Guid rowId, Scoresheet sheet, List<CopyOfSheet> copies)
    {
        var isOtherContent = copies.Exists(other => other.FormId == sheet.Id && other.Copy == 1);
        return new(rowId, isOtherContent
            ? RecordsProblems.At("scoresheet", RecordsProblems.OtherContent, sheet.Id.ToString())
            : RecordsProblems.At("scoresheet", RecordsProblems.TryScored, sheet.Try.ToString(CultureInfo.InvariantCulture)));
    }

    private sealed record CopyOfSheet(Guid Id, Guid FormId, int Copy, string ContentHash);
}
