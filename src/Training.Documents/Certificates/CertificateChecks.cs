using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.Certificates;

/// <summary>Finds what would keep a page from being printed as written: an empty field, one too long, a character without a glyph.</summary>
public static class CertificateChecks
{
    /// <summary>Adds every problem of the page, each with its field as the place.</summary>
    /// <param name="page">The page; its texts come from rosters, courses and settings.</param>
    /// <param name="fonts">The faces that it would be printed in.</param>
    /// <param name="problems">Receives the problems (<see cref="PaperProblems"/>).</param>
    /// <returns>True where nothing was added.</returns>
    public static bool CanPrint(CertificatePage page, FontFaces fonts, ICollection<Problem> problems)
    {
        var before = problems.Count;
        var fields = new FieldChecks(fonts, problems);
        fields.Required("provider-name", page.ProviderName, CertificatePage.LongestTitle);
        fields.Required("provider-address", page.ProviderAddress, CertificatePage.LongestAddress);
        fields.Required("worker-name", page.WorkerName, CertificatePage.LongestName);
        fields.Required("trainee-number", page.TraineeNumber, CertificatePage.LongestNumber);
        fields.Required("scheme-title", page.SchemeTitle, CertificatePage.LongestTitle);
        fields.Required("scheme-revision", page.SchemeRevision, CertificatePage.LongestNumber);
        fields.Required("shown-text", page.ShownText, CertificatePage.LongestShown);
        if (page.Place is not null) fields.Required("place", page.Place, CertificatePage.LongestTitle);
        if (page.Credits is not null) fields.Required("credits", page.Credits, CertificatePage.LongestTitle);
        if (page.DecidedBy is not null) fields.Required("decided-by", page.DecidedBy, CertificatePage.LongestName);
        fields.Required("serial", page.Serial, CertificatePage.LongestNumber);
        fields.Required("revision", page.Revision, CertificatePage.LongestNumber);
        fields.Required("check-address", page.CheckAddress, CertificatePage.LongestCheckAddress);
        fields.Required("code-address", page.CodeAddress, CertificatePage.LongestCodeAddress);
        return problems.Count == before;
    }
}
