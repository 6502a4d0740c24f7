using System.Text.Json;
using System.Text.Json.Serialization;

namespace Training.Web.Keys;

/// <summary>Every key there ever was, oldest first, as the register file lists them. Of each use at most one signs.</summary>
public sealed record KeyRegister(IReadOnlyList<RegisteredKey> Keys)
{
    private const int Version = 1;

    private static readonly JsonSerializerOptions Layout = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    };

    /// <summary>Before the first start.</summary>
    public static KeyRegister Empty { get; } = new([]);

    /// <summary>The key of a use that signs, or null.</summary>
    public RegisteredKey? FindActive(KeyUse use) => Keys.FirstOrDefault(key => key.Use == use && key.RetiredAt is null);

    /// <summary>The key of a name, or null.</summary>
    public RegisteredKey? Find(string kid) => Keys.FirstOrDefault(key => key.Kid == kid);

    /// <summary>With a key that signs from now on; the one that signed before is retired at that instant. One that was retired signs again.</summary>
    public KeyRegister Activate(RegisteredKey key) => new(
    [
        .. Keys.Where(other => other.Kid != key.Kid).Select(other => other.Use == key.Use && other.RetiredAt is null ? other with { RetiredAt = key.From } : other),
        (Find(key.Kid) ?? key) with { RetiredAt = null },
    ]);

    /// <summary>With a key not believed since an instant; of two instants the earlier counts.</summary>
    public KeyRegister Distrust(string kid, DateTimeOffset since) => new(
    [
        .. Keys.Select(key => key.Kid == kid ? key with { NotBelievedSince = key.NotBelievedSince < since ? key.NotBelievedSince : since } : key),
    ]);

    /// <summary>As the file holds it.</summary>
    public string Write() => JsonSerializer.Serialize(new File(Version, Keys), Layout);

    /// <summary>Reads the file; null where it is not of this layout, or a key in it cannot be read.</summary>
    public static KeyRegister? Read(string text)
    {
        try
        {
            if (JsonSerializer.Deserialize<File>(text, Layout) is not { Version: Version, Keys: { } keys }) return null;
            return keys.All(key => NameOf(key) == key.Kid) ? new(keys) : null;
        }
        catch (Exception refused) when (refused is JsonException or FormatException or ArgumentException or System.Security.Cryptography.CryptographicException)
        {
            return null;
        }
    }

    private static string NameOf(RegisteredKey key)
    {
        if (key.Use != KeyUse.Papers) return key.ReadJwk().Kid;
        using var certificate = key.ReadCertificate();
        return RegisteredKey.KidOf(certificate);
    }

    private sealed record File(int Version, IReadOnlyList<RegisteredKey> Keys);
}
