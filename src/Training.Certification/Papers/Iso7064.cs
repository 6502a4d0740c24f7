namespace Training.Certification;

/// <summary>Check characters of ISO 7064 MOD 37,36: the hybrid system for digits and letters whose check is one of them.</summary>
/// <remarks>
/// Every single wrong character is found. Two swapped neighbours are found but for some pairs whose values differ by one
/// (docs/rules.md, "Serials"); <see cref="Serial.Draw"/> never gives such a pair out.
/// </remarks>
public static class Iso7064
{
    private const int Modulus = 36;

    /// <summary>The digits and letters, each at the place of its value.</summary>
    public const string Characters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    /// <summary>The check character of a text without one.</summary>
    /// <param name="text">Digits and upper-case letters only.</param>
    /// <exception cref="ArgumentException">Another character.</exception>
    public static char CheckCharacter(ReadOnlySpan<char> text) => Characters[(Modulus + 1 - Carry(text)) % Modulus];

    /// <summary>Whether a text ends with the check character of what stands before it.</summary>
    /// <param name="text">Digits and upper-case letters only; at least one.</param>
    /// <exception cref="ArgumentException">Another character, or none.</exception>
    public static bool IsChecked(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty) throw new ArgumentException("There is no check character.", nameof(text));
        return CheckCharacter(text[..^1]) == text[^1];
    }

    private static int Carry(ReadOnlySpan<char> text)
    {
        var carry = Modulus;
        foreach (var character in text)
        {
            var value = Characters.IndexOf(character, StringComparison.Ordinal);
            if (value < 0) throw new ArgumentException("Digits and upper-case letters only.", nameof(text));
            var sum = (carry + value) % Modulus;
            carry = (sum == 0 ? Modulus : sum) * 2 % (Modulus + 1);
        }

        return carry;
    }
}
