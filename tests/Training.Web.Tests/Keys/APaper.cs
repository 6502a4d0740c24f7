using System.Security.Cryptography;
using Training.Certification;
using Training.Courses;
using Training.Documents.Credentials;

namespace Training.Web.Tests.Keys;

/// <summary>An invented paper for keys to sign.</summary>
internal static class APaper
{
    public static readonly IssuerAddress Issuer = new(new("https://training.example.org"));

    public static IssuedCredential Of()
    {
        var serial = Serial.Draw(RandomNumberGenerator.GetInt32);
        return new()
        {
            Serial = serial,
            HolderName = "Ileana Prado-Whitt",
            SchemeId = "handler",
            SchemeTitles = LanguageTags.All.ToDictionary(language => language, _ => "Handler"),
            ShownTexts = LanguageTags.All.ToDictionary(language => language, _ => "Moved a snake."),
            SchemeVersion = new('a', IssuedCredential.VersionLength),
            Kind = SchemeKind.Certification,
            EffectiveOn = new(2026, 11, 25),
            ExpiresOn = new(2027, 11, 25),
            Zone = TimeZoneInfo.FindSystemTimeZoneById("America/Denver"),
            IssuedAt = KeyPlace.First,
            Issuer = Issuer,
            ProviderName = KeyPlace.Provider,
            StatusIndex = 7,
            SubjectId = Guid.NewGuid(),
            CheckPage = new(Issuer.Address, $"verify/{serial}"),
            SchemePage = new(Issuer.Address, "schemes/handler/a"),
            IsDemonstration = false,
        };
    }
}
