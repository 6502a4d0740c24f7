using Training.Courses;
using Training.Web.Shelf;

namespace Training.Web.Features.Species;

/// <summary>What guidance in force says for a bite, as far as it differs by snake; the module on bites says the rest.</summary>
/// <param name="EmergencyServices">Called first.</param>
/// <param name="PoisonControl">Called then.</param>
/// <param name="Bandage">Pressure bandage for the snake's own group; null for a look-alike, which counts as not identified.</param>
/// <param name="BandageUnidentified">Pressure bandage for a snake that nobody has named.</param>
/// <param name="Module">Address of the module on first aid, or null where no course has one.</param>
public sealed record SheetBite(
    SheetFigures.GuidanceLine? EmergencyServices,
    SheetFigures.GuidanceLine? PoisonControl,
    SheetFigures.GuidanceLine? Bandage,
    SheetFigures.GuidanceLine? BandageUnidentified,
    string? Module)
{
    private const string BiteModule = "bite";

    /// <summary>For one sheet; sources go to <paramref name="notes"/> in the order of the page.</summary>
    public static SheetBite Of(SpeciesSheet sheet, IReadOnlyList<Course> courses, GuidanceNow guidance, SheetNotes notes)
    {
        SheetFigures.GuidanceLine? Line(string subject, string snakes) =>
            guidance.Find(subject, snakes) is { } entry ? new(guidance.Text(entry), notes.Cite(entry)) : null;

        var course = courses.FirstOrDefault(course => course.Modules.Any(module => module.Id == BiteModule));
        return new(
            Line("emergency-number", sheet.GuidanceGroup),
            Line("poison-control", sheet.GuidanceGroup),
            sheet.IsVenomous ? Line("pressure-bandage", sheet.GuidanceGroup) : null,
            Line("pressure-bandage", GuidanceSet.Unidentified),
            course is null ? null : CourseAddresses.OfModule(guidance.Language, course.Id, BiteModule, null));
    }
}
