using System.Globalization;
using System.Text.Json.Nodes;
using Training.Courses;

namespace Training.Documents.Credentials;

/// <summary>
/// What both big serialisations say: a credential of W3C Verifiable Credentials Data Model 2.0 whose subject is described in the terms of Open
/// Badges 3.0.
/// </summary>
internal static class CredentialDocument
{
    public const string CredentialsContext = "https://www.w3.org/ns/credentials/v2";

    public const string StampFormat = "yyyy-MM-dd'T'HH:mm:sszzz";

    // 3.0.2 and later only: in earlier ones terms clash with the protected ones of the first context.
    private const string BadgesContext = "https://purl.imsglobal.org/spec/ob/v3p0/context-3.0.3.json";

    private const string DemonstrationTag = "DEMO";

    /// <summary>The document with its words in one language as plain text, which is all that Open Badges knows.</summary>
    public static JsonObject Write(IssuedCredential credential, string[] types, Language language) =>
        Write(credential, types, texts => JsonValue.Create(texts[language]), language.Tag());

    /// <summary>The document with its words in every language (Data Model 2.0, "Language and Base Direction").</summary>
    public static JsonObject Write(IssuedCredential credential, string[] types) =>
        Write(credential, types, texts => new JsonArray([.. texts.OrderBy(text => text.Key).Select(text => InLanguage(text.Key, text.Value))]), language: null);

    /// <summary>An instant with the offset it is told in (RFC 3339, whole seconds).</summary>
    public static string Stamp(DateTimeOffset instant) => instant.ToString(StampFormat, CultureInfo.InvariantCulture);

    private static JsonObject Write(IssuedCredential credential, string[] types, Func<IReadOnlyDictionary<Language, string>, JsonNode> words, string? language) => new()
    {
        ["@context"] = new JsonArray(CredentialsContext, BadgesContext),
        ["id"] = credential.CheckPage.AbsoluteUri,
        ["type"] = new JsonArray(["VerifiableCredential", .. types]),
        ["issuer"] = new JsonObject
        {
            ["id"] = credential.Issuer.Did,
            ["type"] = new JsonArray("Profile"),
            ["name"] = credential.ProviderName,
            ["url"] = credential.Issuer.Address.AbsoluteUri,
        },
        ["name"] = words(Titles(credential)),
        ["awardedDate"] = Stamp(credential.IssuedAt),
        ["validFrom"] = Stamp(credential.ValidFrom),
        ["validUntil"] = Stamp(credential.ValidUntil),
        ["credentialSubject"] = Subject(credential, words, language),
        ["credentialStatus"] = new JsonArray([.. StatusPurposes.All.Select(purpose => StatusEntry(credential, purpose))]),
    };

    private static JsonObject Subject(IssuedCredential credential, Func<IReadOnlyDictionary<Language, string>, JsonNode> words, string? language) => new()
    {
        ["id"] = $"urn:uuid:{credential.SubjectId:D}",
        ["type"] = new JsonArray("AchievementSubject"),
        ["name"] = credential.HolderName,
        ["identifier"] = new JsonArray(new JsonObject
        {
            ["type"] = "IdentityObject",
            ["hashed"] = false,
            ["identityHash"] = credential.HolderName,
            ["identityType"] = "name",
        }),
        ["licenseNumber"] = credential.Serial.Value,
        ["achievement"] = Achievement(credential, words, language),
    };

    private static JsonObject Achievement(IssuedCredential credential, Func<IReadOnlyDictionary<Language, string>, JsonNode> words, string? language)
    {
        var achievement = new JsonObject
        {
            ["id"] = credential.SchemePage.AbsoluteUri,
            ["type"] = new JsonArray("Achievement"),
            ["achievementType"] = credential.Kind switch
            {
                SchemeKind.CertificateOfTraining => "Certificate",
                SchemeKind.Certification => "Certification",
            },
            ["name"] = words(Titles(credential)),
            ["description"] = words(credential.ShownTexts),
            ["criteria"] = new JsonObject { ["id"] = credential.SchemePage.AbsoluteUri, ["narrative"] = credential.SchemePage.AbsoluteUri },
            ["humanCode"] = credential.SchemeId,
            ["version"] = credential.SchemeVersion,
        };
        if (language is not null) achievement["inLanguage"] = language;
        // Neither standard has a term for "not real": the title says it to people, the keyword to machines.
        if (credential.IsDemonstration) achievement["tag"] = new JsonArray(DemonstrationTag);
        return achievement;
    }

    private static IReadOnlyDictionary<Language, string> Titles(IssuedCredential credential) => credential.IsDemonstration
        ? credential.SchemeTitles.ToDictionary(title => title.Key, title => $"{DemonstrationTag}: {title.Value}")
        : credential.SchemeTitles;

    private static JsonObject InLanguage(Language language, string text) => new() { ["@value"] = text, ["@language"] = language.Tag() };

    private static JsonObject StatusEntry(IssuedCredential credential, StatusPurpose purpose)
    {
        var list = credential.Issuer.StatusListPage(purpose).AbsoluteUri;
        var index = credential.StatusIndex.ToString(CultureInfo.InvariantCulture);
        return new()
        {
            ["id"] = $"{list}#{index}",
            ["type"] = "BitstringStatusListEntry",
            ["statusPurpose"] = purpose.Name(),
            ["statusListIndex"] = index,
            ["statusListCredential"] = list,
        };
    }
}
