using Training.Courses;

namespace Training.Web.Languages;

/// <summary>The address that the visitor asked for, and the same page in another language.</summary>
/// <param name="Path">Path below the language, such as <c>/courses/awareness</c>; empty for the front page.</param>
/// <param name="Query">What was chosen or searched for, with its question mark; empty where nothing was.</param>
public sealed record PageAddress(string Path, QueryString Query = default)
{
    /// <summary>The front page.</summary>
    public bool IsHome => Path.Length == 0;

    /// <summary>The check of certificates.</summary>
    public bool IsVerify => Path == "/verify" || Path.StartsWith("/verify/", StringComparison.Ordinal);

    /// <summary>The same page in <paramref name="language"/>, percent-encoded.</summary>
    public string In(Language language) => $"/{language.Tag()}{new PathString(Path).ToUriComponent()}{Query.ToUriComponent()}";
}
