using System.Security.Cryptography;
using Training.Certification;
using Training.Courses;
using Training.Documents.Credentials;

namespace Training.Documents.Tests.Credentials;

/// <summary>An invented provider with its keys, and one paper of an invented worker.</summary>
internal static class Cast
{
    public static readonly IssuerAddress Provider = new(new("https://training.quillback.example"));
    public static readonly IssuerAddress OtherProvider = new(new("https://snakes.other.example"));

    public static readonly SigningKey Gate = new(ECDsa.Create(ECCurve.NamedCurves.nistP256));
    public static readonly SigningKey OldGate = new(ECDsa.Create(ECCurve.NamedCurves.nistP256));
    public static readonly SigningKey LostGate = new(ECDsa.Create(ECCurve.NamedCurves.nistP256));
    public static readonly SigningKey Foreign = new(ECDsa.Create(ECCurve.NamedCurves.nistP256));
    public static readonly SigningKey Stranger = new(ECDsa.Create(ECCurve.NamedCurves.nistP256));
    public static readonly SigningKey Badge = new(RSA.Create(2048));

    public static readonly DateTimeOffset LostAt = new(2026, 6, 1, 12, 0, 0, TimeSpan.Zero);

    /// <summary>Within the days of <see cref="Paper"/>.</summary>
    public static readonly DateTimeOffset Now = new(2026, 11, 26, 18, 0, 0, TimeSpan.Zero);

    public static readonly IReadOnlyList<IssuerKey> Keys =
    [
        KeyOf(Provider, Gate),
        KeyOf(Provider, OldGate) with { RetiredAt = new(2026, 3, 1, 0, 0, 0, TimeSpan.Zero) },
        KeyOf(Provider, LostGate) with { RetiredAt = LostAt, NotBelievedSince = LostAt },
        KeyOf(Provider, Badge),
        KeyOf(OtherProvider, Foreign),
    ];

    public static IssuedCredential Paper { get; } = Of("4CDHJKMNPR7", "María José Peña-Núñez O’Brien");

    public static IssuerKey KeyOf(IssuerAddress issuer, SigningKey key) =>
        new() { Issuer = issuer, Jwk = key.Public, From = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero) };

    /// <summary>The serial that begins with these eleven characters.</summary>
    public static Serial SerialOf(string eleven) =>
        Serial.TryParse(eleven + Iso7064.CheckCharacter(eleven), out var serial) ? serial : throw new FormatException(eleven);

    private static IssuedCredential Of(string serial, string name) => new()
    {
        Serial = SerialOf(serial),
        HolderName = name,
        SchemeId = "handler",
        SchemeTitles = new Dictionary<Language, string> { [Language.English] = "Venomous snake handler", [Language.Spanish] = "Manejo de serpientes venenosas" },
        ShownTexts = new Dictionary<Language, string>
        {
            [Language.English] = "Moved a snake into a container with hook and tongs, unaided.",
            [Language.Spanish] = "Trasladó una serpiente a un recipiente con gancho y pinzas, sin ayuda.",
        },
        SchemeVersion = "3f5a9c0e" + new string('b', 56),
        Kind = SchemeKind.Certification,
        EffectiveOn = new(2026, 3, 2),
        ExpiresOn = new(2027, 3, 2),
        Zone = TimeZoneInfo.FindSystemTimeZoneById("America/Phoenix"),
        IssuedAt = new(2026, 3, 2, 17, 5, 0, TimeSpan.Zero),
        Issuer = Provider,
        ProviderName = "Quillback Field Safety",
        StatusIndex = 90_417,
        SubjectId = Guid.Parse("6f1c9a52-0d3e-4b7a-9f64-2c8e5b7d1a03"),
        CheckPage = new($"https://training.quillback.example/verify/{SerialOf(serial)}"),
        SchemePage = new("https://training.quillback.example/schemes/handler/3f5a9c0e"),
        IsDemonstration = false,
    };
}
