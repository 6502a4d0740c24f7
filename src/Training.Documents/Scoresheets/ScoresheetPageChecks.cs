using System.Globalization;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.Scoresheets;

/// <summary>Finds what would keep a scoresheet from being printed as written.</summary>
public static class ScoresheetPageChecks
{
    /// <summary>Adds every problem of the sheet, each with its field, and the number of its step, as the place.</summary>
    /// <param name="page">The sheet.</param>
    /// <param name="fonts">The faces that it would be printed in.</param>
    /// <param name="problems">Receives the problems (<see cref="PaperProblems"/>).</param>
    /// <returns>True where nothing was added.</returns>
    public static bool CanPrint(ScoresheetPage page, FontFaces fonts, ICollection<Problem> problems)
    {
        var before = problems.Count;
        var fields = new FieldChecks(fonts, problems);
        fields.Required("provider-name", page.ProviderName, ScoresheetPage.LongestName);
        fields.Optional("candidate-name", page.CandidateName, ScoresheetPage.LongestName);
        fields.Optional("badge-number", page.BadgeNumber, ScoresheetPage.LongestNumber);
        fields.Optional("instructor-name", page.InstructorName, ScoresheetPage.LongestName);
        fields.Required("site-name", page.SiteName, ScoresheetPage.LongestName);
        fields.Required("checklist-title", page.ChecklistTitle, ScoresheetPage.LongestName);
        fields.Required("checklist-version", page.ChecklistVersion, ScoresheetPage.LongestHash);
        fields.Required("surroundings", page.Surroundings, ScoresheetPage.LongestConditions);
        fields.Required("kit", page.Kit, ScoresheetPage.LongestConditions);
        fields.Optional("remarks", page.Remarks, ScoresheetPage.LongestRemarks);
        fields.Optional("separation-reason", page.SeparationReason, ScoresheetPage.LongestRemarks);
        fields.Required("signed-name", page.SignedName, ScoresheetPage.LongestName);
        fields.Required("record-hash", page.RecordHash, ScoresheetPage.LongestHash);
        fields.Optional("permit-number", page.Live?.PermitNumber, ScoresheetPage.LongestNumber);
        fields.Optional("watcher-name", page.Live?.WatcherName, ScoresheetPage.LongestName);
        CheckWord(fields, page.CandidateWord);
        fields.Between("steps", page.Steps.Count, 1, ScoresheetPage.MostSteps);
        foreach (var (index, step) in page.Steps.Index())
        {
            fields.Required($"step {(index + 1).ToString(CultureInfo.InvariantCulture)}", step.Text, ScoresheetPage.LongestConditions);
        }

        return problems.Count == before;
    }

    private static void CheckWord(FieldChecks fields, ScoresheetWord? word)
    {
        var (name, reason) = word switch
        {
            ScoresheetWord.Agreed agreed => (agreed.SignedName, null),
            ScoresheetWord.Objected objected => (objected.SignedName, objected.Reason),
            ScoresheetWord.DidNotSign unsigned => ((string?)null, (string?)unsigned.Reason),
            _ => (null, null),
        };
        fields.Optional("candidate-signed-name", name, ScoresheetPage.LongestName);
        fields.Optional("candidate-reason", reason, ScoresheetPage.LongestRemarks);
    }
}
