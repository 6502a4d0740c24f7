using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Training.Documents.Credentials;
using Training.Web.Keys;

namespace Training.Web.Features.Issuer;

/// <summary>What machines of strangers fetch to check our credentials: keys and status lists. None of it says who holds anything.</summary>
public sealed class IssuerController(IssuerKeys keys, StatusListPages lists, TimeProvider clock) : Controller
{
    /// <summary>The key set (RFC 7517), of keys that are believed.</summary>
    [HttpGet("/.well-known/jwks.json")]
    public IActionResult KeySet() => ForEverybody(JsonWebKeySet.WriteBelieved(keys.All), "application/jwk-set+json", StatusListPages.RefreshAfter);

    /// <summary>The DID document (did:web), of all keys. Where the public address has a folder, it is looked for in that folder itself.</summary>
    [HttpGet("/.well-known/did.json")]
    [HttpGet("/did.json")]
    public IActionResult Did() => ForEverybody(DidDocument.Write(keys.Issuer, keys.All), "application/did+ld+json", StatusListPages.RefreshAfter);

    /// <summary>One key, as the header of a badge names it. 404 where it is none of ours, 410 where it is not believed any more.</summary>
    [HttpGet("/keys/{kid}")]
    public IActionResult Key(string kid) => keys.All.FirstOrDefault(key => key.Jwk.Kid == kid) switch
    {
        null => NotFound(),
        { NotBelievedSince: not null } => StatusCode(StatusCodes.Status410Gone),
        { } key => ForEverybody(key.Jwk.ToJson().ToJsonString(), "application/jwk+json", StatusListPages.RefreshAfter),
    };

    /// <summary>The status list of one purpose.</summary>
    [HttpGet("/status/{purpose}")]
    public async Task<IActionResult> Status(string purpose, CancellationToken cancellation)
    {
        if (StatusPurposes.Find(purpose) is not { } found) return NotFound();
        var page = await lists.ReadAsync(found, cancellation);
        return ForEverybody(page.Token, VerifiableCredential.MediaType, StatusListPages.RefreshAfter - (clock.GetUtcNow() - page.AsOf));
    }

    private ContentResult ForEverybody(string text, string mediaType, TimeSpan keptFor)
    {
        // Any page may read it, any cache may keep it, and it speaks no language.
        Response.Headers.AccessControlAllowOrigin = "*";
        Response.Headers.CacheControl = string.Create(CultureInfo.InvariantCulture, $"public, max-age={(int)keptFor.TotalSeconds}");
        Response.Headers.Remove("Vary");
        return Content(text, mediaType);
    }
}
