using Training.Courses;
using Training.Documents.Fonts;

namespace Training.Documents.Certificates;

/// <summary>Finds what would keep a page from being printed as written: an empty field, one too long, a character without a glyph.</summary>
public static class CertificateChecks
{
    /// <summary>Adds every problem of the page, each with its field as the place.</summary>
    /// <param name="page">The page; its texts come from rosters, courses and settings.</param>
    /// <param name="fonts">The faces that it would be printed in.</param>
    /// <param name="problems">Receives the problems (<see cref="CertificateProblems"/>).</param>
    /// <returns>True where nothing was added.</returns>
    public static bool CanPrint(CertificatePage page, FontFaces fonts, ICollection<Problem> problems)
    {
        var before = problems.Count;
        foreach (var (field, text, longest) in Fields(page))
        {
            var composed = text.Normalize().Trim();
            if (composed.Length == 0) problems.Add(new(CertificateProblems.FieldEmpty, Place.Of(field)));
            if (composed.Length > longest)
            {
                problems.Add(new(CertificateProblems.FieldTooLong, Place.Of(field), FormattableString.Invariant($"{composed.Length}"), FormattableString.Invariant($"{longest}")));
            }

            var missing = fonts.FindMissing(composed);
            if (missing.Count > 0) problems.Add(new(CertificateProblems.CharacterMissing, Place.Of(field), string.Join(' ', missing)));
        }

        return problems.Count == before;
    }

    private static IEnumerable<(string Field, string Text, int Longest)> Fields(CertificatePage page)
    {
        yield return ("provider-name", page.ProviderName, CertificatePage.LongestTitle);
        yield return ("provider-address", page.ProviderAddress, CertificatePage.LongestAddress);
        yield return ("worker-name", page.WorkerName, CertificatePage.LongestName);
        yield return ("trainee-number", page.TraineeNumber, CertificatePage.LongestNumber);
        yield return ("scheme-title", page.SchemeTitle, CertificatePage.LongestTitle);
        yield return ("scheme-revision", page.SchemeRevision, CertificatePage.LongestNumber);
        yield return ("shown-text", page.ShownText, CertificatePage.LongestShown);
        if (page.Place is not null) yield return ("place", page.Place, CertificatePage.LongestTitle);
        if (page.Credits is not null) yield return ("credits", page.Credits, CertificatePage.LongestTitle);
        if (page.DecidedBy is not null) yield return ("decided-by", page.DecidedBy, CertificatePage.LongestName);
        yield return ("serial", page.Serial, CertificatePage.LongestNumber);
        yield return ("revision", page.Revision, CertificatePage.LongestNumber);
        yield return ("check-address", page.CheckAddress, CertificatePage.LongestCheckAddress);
    }
}
