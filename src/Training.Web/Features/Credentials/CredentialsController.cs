using Microsoft.AspNetCore.Mvc;
using Training.Certification;
using Training.Courses;
using Training.Documents.Credentials;
using Training.Web.Doors;
using Training.Web.Keys;
using Training.Web.Languages;

namespace Training.Web.Features.Credentials;

/// <summary>
/// Certificates as files for programs: the holder takes along their own, a lead anybody's. They are signed when they are fetched, by the key that signs
/// today, so that a key that is no longer believed signs nothing that somebody fetches anew.
/// </summary>
public sealed class CredentialsController(CredentialReading reading, IssuerKeys keys) : Controller
{
    /// <summary>My certificate as an Open Badge, in the language of the page.</summary>
    [HttpGet("/{language:language}/my/certificates/{serial}/badge.jwt")]
    public Task<IActionResult> OwnBadge(string serial, CancellationToken cancellation) => BadgeAsync(serial, HttpContext.Visitor().PersonId, cancellation);

    /// <summary>My certificate as a Verifiable Credential, in every language.</summary>
    [HttpGet("/{language:language}/my/certificates/{serial}/credential.jwt")]
    public Task<IActionResult> OwnCredential(string serial, CancellationToken cancellation) =>
        CredentialAsync(serial, HttpContext.Visitor().PersonId, cancellation);

    /// <summary>Anybody's certificate as an Open Badge.</summary>
    [HttpGet("/{language:language}/programme/certificates/{serial}/badge.jwt")]
    public Task<IActionResult> Badge(string serial, CancellationToken cancellation) => BadgeAsync(serial, personId: null, cancellation);

    /// <summary>Anybody's certificate as a Verifiable Credential.</summary>
    [HttpGet("/{language:language}/programme/certificates/{serial}/credential.jwt")]
    public Task<IActionResult> Credential(string serial, CancellationToken cancellation) => CredentialAsync(serial, personId: null, cancellation);

    private async Task<IActionResult> BadgeAsync(string serial, Guid? personId, CancellationToken cancellation)
    {
        var language = HttpContext.PageLanguageOf();
        return await FindAsync(serial, personId, cancellation) is { } paper
            ? Saved(OpenBadge.Write(paper, language, keys.Badges), "application/jwt", $"{paper.Serial}-{language.Tag()}-badge{OpenBadge.FileEnding}")
            : NotFound();
    }

    private async Task<IActionResult> CredentialAsync(string serial, Guid? personId, CancellationToken cancellation) =>
        await FindAsync(serial, personId, cancellation) is { } paper
            ? Saved(VerifiableCredential.Write(paper, keys.Credentials), VerifiableCredential.MediaType, $"{paper.Serial}-credential.jwt")
            : NotFound();

    private async Task<IssuedCredential?> FindAsync(string serial, Guid? personId, CancellationToken cancellation) =>
        Serial.TryParse(serial, out var read) ? await reading.FindAsync(read, personId, cancellation) : null;

    private FileContentResult Saved(string token, string mediaType, string name) => File(System.Text.Encoding.ASCII.GetBytes(token), mediaType, name);
}
