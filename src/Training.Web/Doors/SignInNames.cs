using Microsoft.AspNetCore.Identity;
using Training.Records;

namespace Training.Web.Doors;

/// <summary>Compares sign-in names as the records compare every other name.</summary>
public sealed class SignInNames : ILookupNormalizer
{
    /// <inheritdoc/>
    public string? NormalizeName(string? name) => name is null ? null : KeyText.Of(name);

    /// <inheritdoc/>
    public string? NormalizeEmail(string? email) => NormalizeName(email);
}
