using System.Security.Cryptography;
using Training.Documents.Credentials;

namespace Training.Web.Features.Certificates;

/// <summary>What is drawn for a paper's machine-readable forms and kept with it.</summary>
/// <param name="StatusIndex">Its place in the status lists.</param>
/// <param name="SubjectId">Names the holder in this credential alone.</param>
public sealed record CredentialDraw(int StatusIndex, Guid SubjectId)
{
    /// <summary>Draws anew, so that neither tells when or for whom a paper was issued. A place that is taken already is for the records to refuse.</summary>
    /// <param name="placesGiven">How many papers have a place.</param>
    public static CredentialDraw Next(int placesGiven) => new(RandomNumberGenerator.GetInt32(StatusList.SizeFor(placesGiven)), Guid.NewGuid());
}
