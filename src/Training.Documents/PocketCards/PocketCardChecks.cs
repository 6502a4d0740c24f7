using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.PocketCards;

/// <summary>Finds what would keep a card from being printed as written.</summary>
public static class PocketCardChecks
{
    /// <summary>Adds every problem of the card, each with its field as the place.</summary>
    /// <param name="page">The card.</param>
    /// <param name="fonts">The faces that it would be printed in.</param>
    /// <param name="problems">Receives the problems (<see cref="PaperProblems"/>).</param>
    /// <returns>True where nothing was added.</returns>
    public static bool CanPrint(PocketCardPage page, FontFaces fonts, ICollection<Problem> problems)
    {
        using var ruler = new Ruler(fonts);
        return Compose(page, fonts, ruler, problems) is not null;
    }

    /// <summary>The card as it would be drawn, or null where a problem was added.</summary>
    internal static PocketCardLayout? Compose(PocketCardPage page, FontFaces fonts, Ruler ruler, ICollection<Problem> problems)
    {
        var before = problems.Count;
        var fields = new FieldChecks(fonts, problems);
        fields.Required("provider-name", page.ProviderName, PocketCardPage.LongestTitle);
        fields.Required("worker-name", page.WorkerName, PocketCardPage.LongestName);
        fields.Required("scheme-title", page.SchemeTitle, PocketCardPage.LongestTitle);
        fields.Required("serial", page.Serial, PocketCardPage.LongestNumber);
        fields.Required("revision", page.Revision, PocketCardPage.LongestNumber);
        fields.Required("check-address", page.CheckAddress, PocketCardPage.LongestCheckAddress);
        if (problems.Count > before) return null;
        var layout = new PocketCardLayout(page, new(ruler, problems));
        return problems.Count == before ? layout : null;
    }
}
