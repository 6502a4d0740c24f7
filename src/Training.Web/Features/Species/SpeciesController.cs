using Microsoft.AspNetCore.Mvc;
using Training.Web.Languages;
using Training.Web.Provider;
using Training.Web.Shelf;

namespace Training.Web.Features.Species;

/// <summary>Which venomous snakes live where, open to everybody.</summary>
public sealed class SpeciesController(CourseShelf shelf, OurProvider provider, TimeProvider clock) : Controller
{
    /// <summary>All sheets by regional set; with a state, what its sets list and what the sources say about that state.</summary>
    [HttpGet("/{language:language}/species")]
    public IActionResult List(string? state) => View(SheetListPage.Of(shelf.Species, state, Guidance(), HttpContext.PageLanguageOf()));

    /// <summary>One sheet.</summary>
    [HttpGet("/{language:language}/species/{speciesId}")]
    public IActionResult Show(string speciesId) =>
        shelf.Species.Find(speciesId) is { } sheet
            ? View(SheetPage.Of(sheet, shelf, Guidance(), HttpContext.PageLanguageOf()))
            : NotFound();

    private GuidanceNow Guidance() => GuidanceNow.Of(shelf, provider, clock, HttpContext.PageLanguageOf());
}
