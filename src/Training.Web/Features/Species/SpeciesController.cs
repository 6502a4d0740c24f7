using Microsoft.AspNetCore.Mvc;
using Training.Certification;
using Training.Web.Languages;
using Training.Web.Provider;
using Training.Web.Shelf;

namespace Training.Web.Features.Species;

/// <summary>Which venomous snakes live where, open to everybody.</summary>
public sealed class SpeciesController(CourseShelf shelf, OurProvider provider, TimeProvider clock) : Controller
{
    /// <summary>All sheets by regional set; with a state, what its sets list and what the sources say about that state.</summary>
    [HttpGet("/{language:language}/species")]
    public IActionResult List(string? state) => View(SheetListPage.Of(shelf.Species, state, GuidanceNow(), HttpContext.PageLanguageOf()));

    /// <summary>One sheet.</summary>
    [HttpGet("/{language:language}/species/{speciesId}")]
    public IActionResult Show(string speciesId) =>
        shelf.Species.Find(speciesId) is { } sheet
            ? View(SheetPage.Of(sheet, shelf, GuidanceNow(), HttpContext.PageLanguageOf()))
            : NotFound();

    /// <summary>Public pages show what is in force in the provider's region on its own calendar.</summary>
    private GuidanceNow GuidanceNow() => new(
        shelf.Guidance, provider.Region, DecisionDay.On(clock.GetUtcNow(), TimeZoneInfo.FindSystemTimeZoneById(provider.Zone)), HttpContext.PageLanguageOf());
}
