using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records;

/// <summary>Keeps a scoresheet mark by mark, until it is signed. Every call may come twice from a flaky phone.</summary>
public static class StartedScoresheetKeeping
{
    /// <summary>
    /// Starts a sheet. The same id again with the same entries is the same sheet; with other entries it is refused, and what was started stays.
    /// </summary>
    /// <param name="records">Where to.</param>
    /// <param name="sheet">Without observations.</param>
    /// <param name="choice">Whether its number is of the next try, or of one that another instructor scores.</param>
    /// <param name="today">On the calendar of the site.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<Kept> StartAsync(
        this RecordsContext records, StartedScoresheet sheet, TryChoice choice, DateOnly today, CancellationToken cancellation)
    {
        var problems = new List<Problem>();
        if (sheet.InstructorId == sheet.CandidateId) problems.Add(RecordsProblems.At("instructor", RecordsProblems.ScoresOneself));
        await records.RequireInClassAsync(sheet.ClassId, sheet.CandidateId, sheet.InstructorId, problems, cancellation);
        await records.RequireSnapshotAsync(sheet.CourseHash, problems, cancellation);
        if (problems.Count > 0) return new Kept.Refused(problems);

        StartedKit[] kit = [.. sheet.UsedKit];
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            if (await records.FindFirstAsync(sheet.Id, cancellation) is { } first) return SameOrOther(first, sheet, choice);
            // What was started stays started, whatever became of the instructor's file.
            problems.AddRange(await records.ProblemsOfFileAsync(sheet, cancellation));
            if (problems.Count > 0) return new Kept.Refused(problems);
            var day = await records.Classes.AsNoTracking().SingleAsync(day => day.Id == sheet.ClassId, cancellation);
            var tries = await records.TriesAtClassAsync(sheet.ClassId, sheet.CandidateId, sheet.ChecklistId, sheet.InstructorId, today, cancellation);
            if (!tries.May(choice, sheet.Subject, sheet.Try))
            {
                var code = choice == TryChoice.Next ? RecordsProblems.TryTaken : RecordsProblems.NoSecondScoring;
                return new Kept.Refused([RecordsProblems.At("scoresheet", code, sheet.Try.ToString(CultureInfo.InvariantCulture))]);
            }

            // No index can say that a try is somebody else's, since two may score it on purpose: of two starts at a class one looks again.
            if (await records.TryInsertUnderAsync(day, sheet, cancellation, kit)) return new Kept.Stored(sheet.Id);
        }

        throw new InvalidOperationException($"Class {sheet.ClassId} was changed by others {Bounds.Attempts} times over.");
    }

    /// <summary>Keeps that the instructions were read. The first time stays.</summary>
    public static Task<Kept> KeepReadAsync(this RecordsContext records, Guid sheetId, DateTimeOffset readAt, CancellationToken cancellation) => records.ChangeAsync(
        sheetId,
        sheet =>
        {
            if (sheet.InstructionsReadAt is not null) return new Kept.AlreadyStored(sheet.Id);
            sheet.InstructionsReadAt = readAt;
            return new Kept.Stored(sheet.Id);
        },
        cancellation);

    /// <summary>Keeps a mark; a second mark of a step takes the place of the first.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="mark">Of a sheet that was started.</param>
    /// <param name="effect">Whether the mark stops the practical at its step.</param>
    /// <param name="cancellation">Ends the wait.</param>
    /// <returns>Refused where the sheet is signed, or was stopped by something else.</returns>
    public static Task<Kept> MarkAsync(this RecordsContext records, StartedObservation mark, MarkEffect effect, CancellationToken cancellation) =>
        records.ChangeAsync(
            mark.ScoresheetId,
            sheet =>
            {
                var there = sheet.Observations.FirstOrDefault(other => other.StepId == mark.StepId);
                if (sheet.StoppedAtStep is { } stop)
                {
                    return stop == mark.StepId && there?.Observation == mark.Observation
                        ? new Kept.AlreadyStored(sheet.Id)
                        : new Kept.Refused([RecordsProblems.At("scoresheet", RecordsProblems.StoppedAlready, stop)]);
                }

                if (there is null)
                {
                    sheet.Observations.Add(mark);
                }
                else
                {
                    there.Observation = mark.Observation;
                    there.SavedAt = mark.SavedAt;
                }

                if (effect == MarkEffect.Stops) sheet.StoppedAtStep = mark.StepId;
                return new Kept.Stored(sheet.Id);
            },
            cancellation);

    /// <summary>Stops the practical at a step. The first stop stays.</summary>
    public static Task<Kept> StopAsync(this RecordsContext records, Guid sheetId, string stepId, CancellationToken cancellation) => records.ChangeAsync(
        sheetId,
        sheet =>
        {
            if (sheet.StoppedAtStep is not null) return new Kept.AlreadyStored(sheet.Id);
            sheet.StoppedAtStep = stepId;
            return new Kept.Stored(sheet.Id);
        },
        cancellation);

    /// <summary>
    /// Takes back what was last done, if that was at this step: the stop and the mark of its step, or the mark of the last step marked.
    /// Asked again, it changes nothing, so that a repeated post takes back no second mark.
    /// </summary>
    public static Task<Kept> UndoAsync(this RecordsContext records, Guid sheetId, string stepId, CancellationToken cancellation) => records.ChangeAsync(
        sheetId,
        sheet =>
        {
            var last = sheet.StoppedAtStep ?? sheet.Observations.MaxBy(mark => mark.Position)?.StepId;
            if (last != stepId) return new Kept.AlreadyStored(sheet.Id);
            sheet.StoppedAtStep = null;
            if (sheet.Observations.FirstOrDefault(mark => mark.StepId == stepId) is { } mark) sheet.Observations.Remove(mark);
            return new Kept.Stored(sheet.Id);
        },
        cancellation);

    private static async Task<IReadOnlyList<Problem>> ProblemsOfFileAsync(
        this RecordsContext records, StartedScoresheet sheet, CancellationToken cancellation)
    {
        var heldOn = await records.Classes.Where(day => day.Id == sheet.ClassId).Select(day => day.HeldOn).SingleAsync(cancellation);
        var courseId = await records.CourseSnapshots.Where(text => text.Hash == sheet.CourseHash).Select(text => text.CourseId).SingleAsync(cancellation);
        return await records.SheetProblemsAsync(sheet.InstructorId, sheet.CandidateId, courseId, sheet.Subject, sheet.Language, heldOn, cancellation);
    }

    // The number of a next try is ours to give, and the first one stays; the number of a second scoring was chosen.
    private static Kept SameOrOther(StartedScoresheet first, StartedScoresheet again, TryChoice choice) =>
        first.IsStartedAs(again) && (choice == TryChoice.Next || first.Try == again.Try)
            ? new Kept.AlreadyStored(first.Id)
            : new Kept.Refused([RecordsProblems.At("scoresheet", RecordsProblems.StartedOtherwise, first.Id.ToString())]);

    private static Task<StartedScoresheet?> FindFirstAsync(this RecordsContext records, Guid sheetId, CancellationToken cancellation) =>
        records.StartedScoresheets.AsNoTracking().SingleOrDefaultAsync(other => other.Id == sheetId, cancellation);

    // Every change counts the sheet's version up, so that of two at once (two tabs) one starts again from what is there.
    private static async Task<Kept> ChangeAsync(
        this RecordsContext records, Guid sheetId, Func<StartedScoresheet, Kept> change, CancellationToken cancellation)
    {
        for (var attempt = 0; attempt < Bounds.Attempts; attempt++)
        {
            if (await records.IsSignedAsync(sheetId, cancellation))
                return new Kept.Refused([RecordsProblems.At("scoresheet", RecordsProblems.SignedAlready)]);
            var sheet = await records.StartedScoresheets.Include(started => started.Observations)
                .SingleAsync(started => started.Id == sheetId, cancellation);
            var kept = change(sheet);
            // Counted up whatever changed: of two marks at once one starts again.
            records.Entry(sheet).Property(started => started.Version).IsModified = true;
            if (kept is not Kept.Stored || await records.TrySaveAsync(cancellation))
            {
                records.ChangeTracker.Clear();
                return kept;
            }

            records.ChangeTracker.Clear();
        }

        throw new InvalidOperationException($"Scoresheet {sheetId} was changed by others {Bounds.Attempts} times over.");
    }
}

/// <summary>What a mark does to the practical.</summary>
public enum MarkEffect
{
    /// <summary>It goes on.</summary>
    GoesOn,

    /// <summary>A critical step failed: it stops there.</summary>
    Stops,
}
