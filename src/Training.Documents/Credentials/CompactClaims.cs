using System.Text.Json;
using System.Text.Json.Nodes;
using Training.Certification;
using Training.Courses;

namespace Training.Documents.Credentials;

/// <summary>What the token in a QR code says: as little as a gate needs without a network.</summary>
/// <param name="Issuer">DID of the issuer; claim <c>iss</c>.</param>
/// <param name="Serial">Claim <c>jti</c>.</param>
/// <param name="HolderName">As printed; claim <c>name</c>.</param>
/// <param name="SchemeId">Claim <c>sch</c>.</param>
/// <param name="SchemeVersion">First characters of the hash of the scheme's text; claim <c>ver</c>.</param>
/// <param name="Kind">Claim <c>kind</c>: T for a certificate of training, C for a certification.</param>
/// <param name="StatusIndex">Its place in the status lists; claim <c>idx</c>.</param>
/// <param name="ValidFrom">Whole seconds; claim <c>nbf</c>.</param>
/// <param name="ValidUntil">Whole seconds: it does not hold from then on; claim <c>exp</c>.</param>
/// <param name="IsDemonstration">Claim <c>demo</c>; left out where false.</param>
public sealed record CompactClaims(
    string Issuer,
    Serial Serial,
    string HolderName,
    string SchemeId,
    string SchemeVersion,
    SchemeKind Kind,
    int StatusIndex,
    DateTimeOffset ValidFrom,
    DateTimeOffset ValidUntil,
    bool IsDemonstration)
{
    /// <summary>Characters of the scheme's hash in the token, as on paper.</summary>
    public const int VersionLength = 8;

    /// <summary>The claims of a credential.</summary>
    public static CompactClaims Of(IssuedCredential credential) => new(
        credential.Issuer.Did, credential.Serial, credential.HolderName, credential.SchemeId, credential.SchemeVersion[..VersionLength], credential.Kind,
        credential.StatusIndex, credential.ValidFrom.ToUniversalTime(), credential.ValidUntil.ToUniversalTime(), credential.IsDemonstration);

    internal JsonObject ToJson()
    {
        var json = new JsonObject
        {
            ["iss"] = Issuer,
            ["jti"] = Serial.Value,
            ["name"] = HolderName,
            ["sch"] = SchemeId,
            ["ver"] = SchemeVersion,
            ["kind"] = Kind switch
            {
                SchemeKind.CertificateOfTraining => "T",
                SchemeKind.Certification => "C",
            },
            ["idx"] = StatusIndex,
            ["nbf"] = ValidFrom.ToUnixTimeSeconds(),
            ["exp"] = ValidUntil.ToUnixTimeSeconds(),
        };
        if (IsDemonstration) json["demo"] = true;
        return json;
    }

    /// <summary>Null where a claim is missing, of another type or out of its range. Claims that it does not know are passed over.</summary>
    internal static CompactClaims? Find(JsonElement json)
    {
        var kind = json.FindText("kind") switch
        {
            "T" => SchemeKind.CertificateOfTraining,
            "C" => SchemeKind.Certification,
            _ => (SchemeKind?)null,
        };
        if (kind is null || json.FindText("jti") is not { } jti || !Serial.TryParse(jti, out var serial) || serial.Value != jti) return null;
        if (json.FindText("iss") is not { } issuer || json.FindText("name") is not { } name) return null;
        if (json.FindText("sch") is not { } scheme || json.FindText("ver") is not { } version) return null;
        if (json.FindWhole("idx", StatusList.MostEntries - 1) is not { } index) return null;
        if (json.FindInstant("nbf") is not { } from || json.FindInstant("exp") is not { } until) return null;
        var isDemonstration = json.TryGetProperty("demo", out var demo);
        if (isDemonstration && demo.ValueKind != JsonValueKind.True) return null;
        return new(issuer, serial, name, scheme, version, kind.Value, (int)index, from, until, isDemonstration);
    }
}
