using Microsoft.AspNetCore.Mvc;
using Training.Certification;
using Training.Courses;
using Training.Documents.PocketCards;
using Training.Web.Doors;
using Training.Web.Features.Shared;
using Training.Web.Languages;

namespace Training.Web.Features.PocketCards;

/// <summary>A certificate as a card for the pocket. Sheets of many cards belong to the runs of papers.</summary>
public sealed class PocketCardsController(PocketCardReading reading, PrintedPapers papers) : Controller
{
    /// <summary>The card of one of my certificates, in the language of the page; there is one as long as the certificate is current.</summary>
    [HttpGet("/{language:language}/my/certificates/{serial}/card.pdf")]
    public async Task<IActionResult> Own(string serial, CancellationToken cancellation)
    {
        if (!Serial.TryParse(serial, out var read)) return NotFound();
        var language = HttpContext.PageLanguageOf();
        return await reading.ReadAsync([read.Value], HttpContext.Visitor().PersonId, language, cancellation) is [var card]
            ? papers.Answer(this, card, PocketCardChecks.CanPrint, PocketCardWriter.Write, $"{read}-{language.Tag()}-card.pdf")
            : NotFound();
    }
}
