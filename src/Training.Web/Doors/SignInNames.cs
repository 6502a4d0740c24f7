using System.Text;
using Microsoft.AspNetCore.Identity;
using Training.Records;

namespace Training.Web.Doors;

/// <summary>Compares sign-in names as the records compare every other name.</summary>
public sealed class SignInNames : ILookupNormalizer
{
    /// <inheritdoc/>
    public string? NormalizeName(string? name) => name is null ? null : KeyText.Of(name);

    /// <summary>A sign-in name to offer for a person: first and last word of their name, in small letters without accents, such as <c>inigo.ruiz</c>.</summary>
    public static string Suggest(string name)
    {
        var words = name.Normalize(NormalizationForm.FormD).ToLowerInvariant().Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries)
            .Select(word => string.Concat(word.Where(char.IsAsciiLetterOrDigit))).Where(word => word.Length > 0).ToList();
        return words.Count > 1 ? $"{words[0]}.{words[^1]}" : words.FirstOrDefault() ?? "";
    }

    /// <inheritdoc/>
    public string? NormalizeEmail(string? email) => NormalizeName(email);
}
