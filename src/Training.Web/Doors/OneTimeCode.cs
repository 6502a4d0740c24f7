using System.Security.Cryptography;
using System.Text;

namespace Training.Web.Doors;

/// <summary>Codes that are shown once, typed once, and kept only as a hash.</summary>
/// <remarks>Rule: docs/security.md, "One-time codes".</remarks>
public static class OneTimeCode
{
    /// <summary>How long a code works.</summary>
    public static readonly TimeSpan Lasts = TimeSpan.FromDays(7);

    // No vowels, so that no word appears, and nothing that is misread: 28 signs, 16 of them make 76 random bits.
    private const string Signs = "23456789BCDFGHJKMNPQRSTVWXYZ";

    private const int Length = 16;

    /// <summary>A new code in groups of four: <c>7QKD-…</c>.</summary>
    public static string Draw() => string.Join('-', RandomNumberGenerator.GetString(Signs, Length).Chunk(4).Select(group => new string(group)));

    /// <summary>What is kept of it: SHA-256, lower-case hex. Case, spaces and hyphens do not matter.</summary>
    public static string HashOf(string typed)
    {
        var signs = string.Concat(typed.Where(char.IsAsciiLetterOrDigit)).ToUpperInvariant();
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(signs)));
    }
}
