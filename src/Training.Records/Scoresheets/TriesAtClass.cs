using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records;

/// <summary>The tries of one candidate at one checklist of a class, as one of its scorers may number them.</summary>
/// <param name="InstructorId">Who would start a sheet.</param>
/// <param name="Sheets">Everybody's that count, signed or started; order means nothing.</param>
/// <remarks>Rule: docs/rules.md, "Two scorers of one try".</remarks>
public sealed record TriesAtClass(Guid InstructorId, IReadOnlyList<SheetOfTry> Sheets)
{
    /// <summary>
    /// The number of the next try: one more than the highest that was signed, or that somebody else started. What this instructor started and
    /// left unsigned is begun anew under its number.
    /// </summary>
    public int Next(Subject subject) => 1 + Sheets
        .Where(sheet => sheet.Subject == subject && (sheet.IsSigned || sheet.InstructorId != InstructorId))
        .Select(sheet => sheet.Try).DefaultIfEmpty(0).Max();

    /// <summary>
    /// Sheets of others whose try this instructor may score too: they signed none of it, and know of no outcome of it. By subject, number and scorer.
    /// </summary>
    public IReadOnlyList<SheetOfTry> Second =>
    [
        .. Sheets.Where(sheet => sheet.InstructorId != InstructorId)
            .Where(sheet => !Sheets.Any(same => (same.Subject, same.Try) == (sheet.Subject, sheet.Try) && same.IsSigned && !same.IsClosed))
            .OrderBy(sheet => sheet.Subject).ThenBy(sheet => sheet.Try).ThenBy(sheet => sheet.InstructorId),
    ];

    /// <summary>Whether a sheet of this number may be started.</summary>
    public bool May(TryChoice choice, Subject subject, int number) => choice switch
    {
        TryChoice.Next => number == Next(subject),
        TryChoice.SecondScoring => Second.Any(sheet => (sheet.Subject, sheet.Try) == (subject, number)),
    };
}

/// <summary>One sheet of a try.</summary>
/// <param name="Subject">On what.</param>
/// <param name="Try">Its number at the class.</param>
/// <param name="InstructorId">Who scores it.</param>
/// <param name="IsSigned">Signed, or only started.</param>
/// <param name="IsClosed">Signed, and its outcome is not for the instructor who asks: <see cref="ClosedSheets"/>.</param>
public sealed record SheetOfTry(Subject Subject, int Try, Guid InstructorId, bool IsSigned, bool IsClosed);

/// <summary>Which try a new sheet is of.</summary>
public enum TryChoice
{
    /// <summary>One that nobody scored.</summary>
    Next,

    /// <summary>One that another instructor scores or scored, independently of them.</summary>
    SecondScoring,
}

/// <summary>Reads the tries of a candidate.</summary>
public static class TriesAtClassQueries
{
    /// <summary>What was signed and started for a candidate with a checklist at a class.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="classId">At which class.</param>
    /// <param name="candidateId">Whose.</param>
    /// <param name="checklistId">With which checklist.</param>
    /// <param name="instructorId">Who would start a sheet.</param>
    /// <param name="today">On the calendar of the site.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<TriesAtClass> TriesAtClassAsync(
        this RecordsContext records, Guid classId, Guid candidateId, string checklistId, Guid instructorId, DateOnly today, CancellationToken cancellation)
    {
        var closed = records.SheetsClosedTo(instructorId, today);
        var signed = await records.Scoresheets
            .Where(sheet => sheet.ClassId == classId && sheet.CandidateId == candidateId && sheet.ChecklistId == checklistId && sheet.Copy == 1)
            // What an appeal set aside is no try; its own scorer's number stays taken all the same.
            .Where(sheet => sheet.InstructorId == instructorId || !records.ScoresheetSetAsides.Any(aside => aside.ScoresheetId == sheet.Id))
            .OrderBy(sheet => sheet.Try).ThenBy(sheet => sheet.Id).Take(Bounds.RowsOfOnePerson)
            .Select(sheet => new SheetOfTry(sheet.Subject, sheet.Try, sheet.InstructorId, true, closed.Any(one => one.Id == sheet.Id)))
            .ToListAsync(cancellation);
        var started = await records.StartedScoresheets
            .Where(sheet => sheet.ClassId == classId && sheet.CandidateId == candidateId && sheet.ChecklistId == checklistId
                && !records.Scoresheets.Any(other => other.FormId == sheet.Id))
            .OrderBy(sheet => sheet.Try).ThenBy(sheet => sheet.Id).Take(Bounds.RowsOfOnePerson)
            .Select(sheet => new SheetOfTry(sheet.Subject, sheet.Try, sheet.InstructorId, false, false)).ToListAsync(cancellation);
        return new(instructorId, [.. signed, .. started]);
    }
}
