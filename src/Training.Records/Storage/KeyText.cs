using System.Globalization;
using System.Text;

namespace Training.Records;

/// <summary>What a name or number is compared by. Engines disagree about case and accents, so the key is made here and stored beside it.</summary>
public static class KeyText
{
    /// <summary>Trimmed, composed (NFC), upper-case by the invariant culture: <c>" ab-7 "</c> and <c>"AB-7"</c> have one key.</summary>
    public static string Of(string text) => text.Trim().Normalize(NormalizationForm.FormC).ToUpperInvariant();

    /// <summary>
    /// The same without accents, for sorting and searching alike on every engine: <c>"Íñigo"</c> and <c>"inigo"</c> are one. Never longer
    /// than the key; letters of other scripts stay what they are.
    /// </summary>
    public static string Plain(string text)
    {
        var letters = text.Trim().Normalize(NormalizationForm.FormD).Where(letter => CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark);
        return Of(string.Concat(letters));
    }
}
