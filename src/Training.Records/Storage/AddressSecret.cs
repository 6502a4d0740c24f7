using System.Security.Cryptography;
using System.Text;

namespace Training.Records;

/// <summary>The secret part of an address that answers without a sign-in.</summary>
public static class AddressSecret
{
    /// <summary>160 bits from the system's generator: a random id has only 122, and who guesses one sees an employer's lapses or a site's way in.</summary>
    private const int Bytes = 20;

    /// <summary>Letters and digits of a new one.</summary>
    public const int Length = 2 * Bytes;

    /// <summary>A new one, in lower-case hex.</summary>
    public static string New() => RandomNumberGenerator.GetHexString(Length, lowercase: true);

    /// <summary>What is kept of it. Nobody can run through 160 bits, so a plain hash is enough.</summary>
    public static string HashOf(string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));
}
