using System.Text.RegularExpressions;
using Training.Courses;

namespace Training.Web.Places;

/// <summary>Regions to choose from: the United States and its states. Guidance is looked up from the state to the country.</summary>
public static partial class Regions
{
    // ISO 3166-2:US; the names are the languages' own.
    private static readonly (string Code, string English, string Spanish)[] Names =
    [
        ("US", "United States, no state in particular", "Estados Unidos, ningún estado en particular"),
        ("US-AL", "Alabama", "Alabama"), ("US-AK", "Alaska", "Alaska"), ("US-AZ", "Arizona", "Arizona"), ("US-AR", "Arkansas", "Arkansas"),
        ("US-CA", "California", "California"), ("US-CO", "Colorado", "Colorado"), ("US-CT", "Connecticut", "Connecticut"),
        ("US-DE", "Delaware", "Delaware"), ("US-DC", "District of Columbia", "Distrito de Columbia"), ("US-FL", "Florida", "Florida"),
        ("US-GA", "Georgia", "Georgia"), ("US-HI", "Hawaii", "Hawái"), ("US-ID", "Idaho", "Idaho"), ("US-IL", "Illinois", "Illinois"),
        ("US-IN", "Indiana", "Indiana"), ("US-IA", "Iowa", "Iowa"), ("US-KS", "Kansas", "Kansas"), ("US-KY", "Kentucky", "Kentucky"),
        ("US-LA", "Louisiana", "Luisiana"), ("US-ME", "Maine", "Maine"), ("US-MD", "Maryland", "Maryland"),
        ("US-MA", "Massachusetts", "Massachusetts"), ("US-MI", "Michigan", "Míchigan"), ("US-MN", "Minnesota", "Minnesota"),
        ("US-MS", "Mississippi", "Misisipi"), ("US-MO", "Missouri", "Misuri"), ("US-MT", "Montana", "Montana"), ("US-NE", "Nebraska", "Nebraska"),
        ("US-NV", "Nevada", "Nevada"), ("US-NH", "New Hampshire", "Nuevo Hampshire"), ("US-NJ", "New Jersey", "Nueva Jersey"),
        ("US-NM", "New Mexico", "Nuevo México"), ("US-NY", "New York", "Nueva York"), ("US-NC", "North Carolina", "Carolina del Norte"),
        ("US-ND", "North Dakota", "Dakota del Norte"), ("US-OH", "Ohio", "Ohio"), ("US-OK", "Oklahoma", "Oklahoma"), ("US-OR", "Oregon", "Oregón"),
        ("US-PA", "Pennsylvania", "Pensilvania"), ("US-RI", "Rhode Island", "Rhode Island"), ("US-SC", "South Carolina", "Carolina del Sur"),
        ("US-SD", "South Dakota", "Dakota del Sur"), ("US-TN", "Tennessee", "Tennessee"), ("US-TX", "Texas", "Texas"), ("US-UT", "Utah", "Utah"),
        ("US-VT", "Vermont", "Vermont"), ("US-VA", "Virginia", "Virginia"), ("US-WA", "Washington", "Washington"),
        ("US-WV", "West Virginia", "Virginia Occidental"), ("US-WI", "Wisconsin", "Wisconsin"), ("US-WY", "Wyoming", "Wyoming"),
    ];

    /// <summary>The region as ISO 3166 writes it (<c>US</c>, <c>US-AZ</c>, and of other countries <c>AU-WA</c>), or null; case and outer spaces aside.</summary>
    public static string? Find(string? typed)
    {
        var code = (typed ?? "").Trim().ToUpperInvariant();
        return Code().IsMatch(code) ? code : null;
    }

    /// <summary>What to choose from, by name; a region that is not among them comes first, as it is.</summary>
    /// <param name="language">Of the names.</param>
    /// <param name="chosen">What is chosen now, or null.</param>
    public static IReadOnlyList<(string Code, string Name)> Choices(Language language, string? chosen)
    {
        var known = Names.Select(name => (name.Code, Name: NameOf(name.Code, language)));
        return chosen is null || Array.Exists(Names, name => name.Code == chosen) ? [.. known] : [(chosen, chosen), .. known];
    }

    /// <summary>Its name, or the code where there is none.</summary>
    public static string NameOf(string code, Language language) => Array.Find(Names, name => name.Code == code) switch
    {
        { Code: not null } name => language switch
        {
            Language.English => name.English,
            Language.Spanish => name.Spanish,
        },
        _ => code,
    };

    [GeneratedRegex("^[A-Z]{2}(-[A-Z0-9]{1,3})?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Code();
}
