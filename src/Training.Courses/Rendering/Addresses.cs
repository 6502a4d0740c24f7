namespace Training.Courses;

/// <summary>Which addresses a course may link to: its own site, http(s) as a plain link, mail and telephone.</summary>
internal static class Addresses
{
    public static bool IsForeign(string address) => StartsWithAny(address, "http://", "https://");

    public static bool IsAllowed(string address) => IsForeign(address) || StartsWithAny(address, "mailto:", "tel:") || IsOwnSite(address);

    /// <summary>No scheme, and neither <c>//host</c> nor one of its backslash spellings.</summary>
    public static bool IsOwnSite(string address)
    {
        if (address.Any(char.IsControl) || address.Contains('\\', StringComparison.Ordinal)) return false;
        if (address.StartsWith("//", StringComparison.Ordinal)) return false;
        var end = address.IndexOfAny(['/', '?', '#']);
        return !(end < 0 ? address : address[..end]).Contains(':', StringComparison.Ordinal);
    }

    private static bool StartsWithAny(string address, params ReadOnlySpan<string> schemes)
    {
        foreach (var scheme in schemes)
        {
            if (address.StartsWith(scheme, StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }
}
