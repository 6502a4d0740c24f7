using Training.Courses;
using Training.Web.Shelf;

namespace Training.Web.Features.Species;

/// <summary>What the page of one sheet is given.</summary>
/// <param name="Sheet">As the files say it.</param>
/// <param name="Words">In the page's language.</param>
/// <param name="StandOff">The stand-off in force in words, or null.</param>
/// <param name="Confusions">What it is taken for, and what is taken for it.</param>
/// <param name="Figures">Lengths and distances.</param>
/// <param name="Bite">What guidance says for a bite.</param>
/// <param name="Notes">The sources, numbered from 1.</param>
public sealed record SheetPage(
    SpeciesSheet Sheet,
    SpeciesWords Words,
    string? StandOff,
    IReadOnlyList<SheetLink> Confusions,
    SheetFigures Figures,
    SheetBite Bite,
    IReadOnlyList<SourceNote> Notes)
{
    /// <summary>One sheet in one language.</summary>
    public static SheetPage Of(SpeciesSheet sheet, CourseShelf shelf, GuidanceNow guidance, Language language)
    {
        var words = sheet.Words[language];
        var notes = new SheetNotes(words.Notes);
        var figures = SheetFigures.Of(sheet, guidance, notes);
        var bite = SheetBite.Of(sheet, shelf.Courses, guidance, notes);
        return new(
            sheet,
            words,
            figures.StandOff?.Value,
            [.. shelf.Species.ConfusedWith(sheet).Select(other => SheetLink.To(other, language))],
            figures,
            bite,
            notes.Notes);
    }
}
