using Microsoft.AspNetCore.Mvc;

namespace Training.Web.Features.FirstDay;

/// <summary>Leads a new provider from an empty database to its first certificate.</summary>
public sealed class FirstDayController(FirstDayReading reading) : Controller
{
    /// <summary>What is done, and what comes next.</summary>
    [HttpGet("/{language:language}/programme/first-day")]
    public async Task<IActionResult> Show(CancellationToken cancellation) => View(await reading.ReadAsync(cancellation));
}
