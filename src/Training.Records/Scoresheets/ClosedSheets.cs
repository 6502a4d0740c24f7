namespace Training.Records;

/// <summary>Keeps the sheet of one scorer from another who may still score the same try.</summary>
/// <remarks>Rule: docs/rules.md, "Two scorers of one try".</remarks>
public static class ClosedSheets
{
    /// <summary>
    /// Signed sheets of others that count and whose marks and outcome this instructor may not know yet: of a class at which they score, and
    /// of a try of which they signed no sheet. Closed until the day of the class is over, and for as long as they have an unsigned one of that try.
    /// A pass on the model is open to those without one once a live sheet was started on it, since that start shows it.
    /// </summary>
    /// <param name="records">Where from.</param>
    /// <param name="instructorId">Who would look.</param>
    /// <param name="today">On the calendar of the site.</param>
    public static IQueryable<ScoresheetRecord> SheetsClosedTo(this RecordsContext records, Guid instructorId, DateOnly today) =>
        records.Scoresheets.Where(sheet => sheet.Copy == 1 && sheet.InstructorId != instructorId && sheet.CandidateId != instructorId
            && records.ClassScorers.Any(scorer => scorer.ClassId == sheet.ClassId && scorer.InstructorId == instructorId)
            && !records.Scoresheets.Any(own => own.InstructorId == instructorId && own.ClassId == sheet.ClassId && own.CandidateId == sheet.CandidateId
                && own.ChecklistId == sheet.ChecklistId && own.Subject == sheet.Subject && own.Try == sheet.Try)
            && (records.StartedScoresheets.Any(own => own.InstructorId == instructorId && own.ClassId == sheet.ClassId
                    && own.CandidateId == sheet.CandidateId && own.ChecklistId == sheet.ChecklistId && own.Subject == sheet.Subject && own.Try == sheet.Try)
                || (records.Classes.Any(day => day.Id == sheet.ClassId && day.HeldOn >= today)
                    && !records.StartedScoresheets.Any(live => live.ModelPassId == sheet.FormId))));
}
