using System.Diagnostics.CodeAnalysis;

namespace Training.Certification;

/// <summary>The number of a paper: 11 random characters and a check character, printed <c>XXXX-XXXX-XXXX</c>.</summary>
/// <remarks>Rule: docs/rules.md, "Serials".</remarks>
public sealed record Serial
{
    /// <summary>Characters of a serial, check included, hyphens not counted.</summary>
    public const int Length = 12;

    /// <summary>
    /// The characters that a serial is made of. Left out: what is mistaken for another in poor print, glare or handwriting
    /// (0 O Q, 1 I L, 2 Z, 5 S, 6 G, 8 B, U V), and A and E, so that no serial spells a word.
    /// </summary>
    public const string ClearCharacters = "3479CDFHJKMNPRTWXY";

    // About half of all draws are refused for their check character: so many refusals in a row are no accident.
    private const int MostDraws = 1000;

    private Serial(string value) => Value = value;

    /// <summary>The twelve characters without hyphens, upper case: the form to store, compare and put into an address.</summary>
    public string Value { get; }

    /// <summary>Draws a serial; draws again until no character of it can be misread and no swap of neighbours goes unnoticed.</summary>
    /// <param name="next">Gives a number from 0 to below its argument, each as likely, that nobody can guess: <c>RandomNumberGenerator.GetInt32</c>.</param>
    /// <exception cref="InvalidOperationException">The source is not random.</exception>
    public static Serial Draw(Func<int, int> next)
    {
        Span<char> text = stackalloc char[Length];
        for (var draw = 0; draw < MostDraws; draw++)
        {
            for (var i = 0; i < Length - 1; i++) text[i] = ClearCharacters[next(ClearCharacters.Length)];
            text[^1] = Iso7064.CheckCharacter(text[..^1]);
            if (ClearCharacters.Contains(text[^1], StringComparison.Ordinal) && NoticesEverySwap(text)) return new(text.ToString());
        }

        throw new InvalidOperationException($"{MostDraws} draws gave no serial: the source is not random.");
    }

    /// <summary>Reads what somebody typed or scanned: lower case, spaces and hyphens are forgiven, nothing else.</summary>
    /// <returns>False, and <paramref name="serial"/> null, where it is not twelve digits and letters that end with their check character.</returns>
    public static bool TryParse(string? typed, [NotNullWhen(true)] out Serial? serial)
    {
        serial = null;
        if (typed is null) return false;
        Span<char> text = stackalloc char[Length];
        var length = 0;
        foreach (var character in typed)
        {
            if (character is ' ' or '-') continue;
            if (length == Length || !char.IsAsciiLetterOrDigit(character)) return false;
            text[length++] = char.ToUpperInvariant(character);
        }

        if (length < Length || !Iso7064.IsChecked(text)) return false;
        serial = new(text.ToString());
        return true;
    }

    /// <summary>As it is printed: three groups of four with hyphens.</summary>
    public override string ToString() => $"{Value[..4]}-{Value[4..8]}-{Value[8..]}";

    private static bool NoticesEverySwap(Span<char> text)
    {
        for (var i = 0; i < Length - 1; i++)
        {
            (text[i], text[i + 1]) = (text[i + 1], text[i]);
            var isUnnoticed = text[i] != text[i + 1] && Iso7064.IsChecked(text);
            (text[i], text[i + 1]) = (text[i + 1], text[i]);
            if (isUnnoticed) return false;
        }

        return true;
    }
}
