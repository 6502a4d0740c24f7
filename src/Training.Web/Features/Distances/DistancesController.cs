using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Web.Doors;
using Training.Web.Languages;
using Training.Web.Provider;
using Training.Web.Shelf;

namespace Training.Web.Features.Distances;

/// <summary>The distance calculator: length of a snake and of a tool in; reach, minimum working length and stand-off out. Nothing is stored.</summary>
public sealed class DistancesController(CourseShelf shelf, OurProvider provider, TimeProvider clock, IStringLocalizer<DistanceText> localizer) : Controller
{
    /// <summary>Centimetres: beyond it somebody mistook the unit. The longest snake on record here is 244 cm (F-SP-05); the longest tools sold are 152 cm (F-DST-31).</summary>
    private const decimal Longest = 300;

    private readonly IStringLocalizer<DistanceText> Text = localizer;

    /// <summary>The form and, where something was asked, the answer.</summary>
    [HttpGet("/{language:language}/distances")]
    public IActionResult Show(DistanceForm form)
    {
        ModelState.Clear();
        var guidance = DistanceGuidance.Find(GuidanceNow.Of(shelf, provider, clock, HttpContext.PageLanguageOf()));
        var isAsked = Request.Query.ContainsKey(nameof(form.Snake)) || Request.Query.ContainsKey(nameof(form.Species));
        if (!isAsked || guidance is null) return View(new DistancePage(form, guidance, null));

        var snake = ReadSnake(form);
        var tool = string.IsNullOrWhiteSpace(form.Tool) ? null : ReadCm(form, form.Tool, nameof(form.Tool), Text["ToolMissing"]);
        return ModelState.IsValid && snake is { } length
            ? View(new DistancePage(form, guidance, DistanceAnswer.Of(length, tool, form.IsBraced, guidance)))
            : this.Mend("Show", new DistancePage(form, guidance, null));
    }

    /// <summary>What was typed binds; a species stands in where nothing was.</summary>
    private decimal? ReadSnake(DistanceForm form)
    {
        if (!string.IsNullOrWhiteSpace(form.Snake) || string.IsNullOrEmpty(form.Species)) return ReadCm(form, form.Snake, nameof(form.Snake), Text["SnakeMissing"]);
        if (shelf.Species.Find(form.Species)?.Longest is { } longest) return longest.LongestCm;
        ModelState.AddModelError(nameof(form.Species), Text["SpeciesWithoutLength"]);
        return null;
    }

    private decimal? ReadCm(DistanceForm form, string? typed, string field, LocalizedString missing)
    {
        switch (form.ReadCm(typed))
        {
            case null:
                ModelState.AddModelError(field, missing);
                return null;
            case <= 0:
                ModelState.AddModelError(field, Text["NotAboveZero"]);
                return null;
            case > Longest:
                ModelState.AddModelError(field, Text["TooLong"]);
                return null;
            case var length:
                return length;
        }
    }
}
