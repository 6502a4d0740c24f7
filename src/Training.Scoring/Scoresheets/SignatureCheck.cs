using Training.Courses;

namespace Training.Scoring;

/// <summary>
/// Finds what a sheet lacks that is signed from now on. Grading does not ask for it: sheets that were signed before the rule stay as they are
/// and are graded again without.
/// </summary>
/// <remarks>Rule: docs/rules.md, "Practicals".</remarks>
public static class SignatureCheck
{
    /// <param name="sheet">As it would be signed.</param>
    /// <param name="problems">Receives what is lacking (<see cref="ScoresheetProblems"/>).</param>
    public static void Run(Scoresheet sheet, ICollection<Problem> problems)
    {
        void Report(string code, string part) => problems.Add(new(code, Place.Of(part)));
        if (sheet.Conditions.Pieces.Count == 0) Report(ScoresheetProblems.KitNotRegistered, nameof(sheet.Conditions.Kit));
        if (sheet.InstructionsReadAt is null) Report(ScoresheetProblems.InstructionsNotRead, nameof(sheet.InstructionsReadAt));
        if (sheet.IsWhole && sheet.Impression is null) Report(ScoresheetProblems.ImpressionMissing, nameof(sheet.Impression));
        if (!sheet.IsWhole && sheet.Impression is not null) Report(ScoresheetProblems.ImpressionOfAPart, nameof(sheet.Impression));
    }
}
