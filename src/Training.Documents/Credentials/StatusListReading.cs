using System.Globalization;
using System.Text.Json;

namespace Training.Documents.Credentials;

/// <summary>Reads status list credentials as strictly as tokens.</summary>
public static class StatusListReading
{
    // The longest list that does not compress takes 700,000 characters, and 935,000 once more as base64url.
    private const int LongestText = 970_000;

    /// <summary>The newest list of a purpose among the tokens at hand that has a place; null where none verifies, or none reaches so far.</summary>
    /// <remarks>How old it is is not judged: what an old list says of a withdrawal stays true, and whoever shows the rest shows its instant.</remarks>
    public static (StatusList List, DateTimeOffset AsOf)? FindNewest(IssuerTrust trust, StatusPurpose purpose, int index) =>
        trust.StatusLists.Select(token => Find(token, purpose, trust)).OfType<(StatusList List, DateTimeOffset AsOf)>().Where(dated => dated.List.Has(index))
            .OrderByDescending(dated => dated.AsOf).Select(dated => ((StatusList, DateTimeOffset)?)dated).FirstOrDefault();

    private static (StatusList List, DateTimeOffset AsOf)? Find(string token, StatusPurpose purpose, IssuerTrust trust)
    {
        var fault = SignedTextReading.Open(token, LongestText, VerifiableCredential.Type, key => key.Issuer.KeyName(key.Jwk.Kid), trust, out var opened);
        // Lists are in no log: one of a key that others may have says nothing.
        if (fault is not null || opened.Key.NotBelievedSince is not null) return null;
        var document = opened.Payload;
        if (document.FindText("issuer") != trust.Issuer.Did || document.FindText("id") != trust.Issuer.StatusListPage(purpose).AbsoluteUri) return null;
        if (!document.TryGetProperty("credentialSubject", out var subject)) return null;
        if (subject.FindText("type") != "BitstringStatusList" || subject.FindText("statusPurpose") != purpose.Name()) return null;
        if (subject.FindText("encodedList") is not { } encoded || StatusList.Find(encoded) is not { } list) return null;
        return FindStamp(document) is { } asOf ? (list, asOf) : null;
    }

    private static DateTimeOffset? FindStamp(JsonElement document) =>
        DateTimeOffset.TryParseExact(
            document.FindText("validFrom"), CredentialDocument.StampFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out var stamp)
            ? stamp
            : null;
}
