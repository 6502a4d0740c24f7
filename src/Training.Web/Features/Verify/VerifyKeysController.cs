using Microsoft.AspNetCore.Mvc;
using Training.Documents.Credentials;
using Training.Web.Keys;

namespace Training.Web.Features.Verify;

/// <summary>The keys that our own check of codes goes by, those among them that are not believed any more.</summary>
public sealed class VerifyKeysController(IssuerKeys keys) : Controller
{
    /// <summary>All of them. Others take <c>/.well-known/jwks.json</c>, since common libraries do not know what <c>revoked</c> means.</summary>
    [HttpGet(CodeCheck.KeysAddress)]
    public IActionResult Show()
    {
        Response.Headers.CacheControl = "public, max-age=300";
        return Content(JsonWebKeySet.WriteAll(keys.All), "application/json");
    }
}
