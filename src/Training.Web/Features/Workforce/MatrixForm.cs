using Training.Records;

namespace Training.Web.Features.Workforce;

/// <summary>What the form above the training matrix sends.</summary>
public sealed class MatrixForm
{
    private const int LongestText = 100;

    /// <summary>Id of a site; empty for all.</summary>
    public string? Site { get; init; }

    /// <summary>Id of a scheme; empty for all.</summary>
    public string? Scheme { get; init; }

    /// <summary>Name of a <see cref="StandingChoice"/>; empty for all.</summary>
    public string? Standing { get; init; }

    /// <summary>Part of a name or badge number; empty for all.</summary>
    public string? Who { get; init; }

    /// <summary>Name of a <see cref="PeopleOrder"/>; empty for that by name.</summary>
    public string? Order { get; init; }

    /// <summary>Reads the form; null where it names a site, standing or order that there is not.</summary>
    public MatrixFilter? Read(SeenEmployer employer)
    {
        if (!employer.TryFindSite(Site, out var siteId) || !TryRead<StandingChoice>(Standing, out var standing) || !TryRead<PeopleOrder>(Order, out var order))
            return null;
        var text = Who?.Trim() is { Length: > 0 } who ? who[..Math.Min(who.Length, LongestText)] : null;
        return new(siteId, string.IsNullOrEmpty(Scheme) ? null : Scheme, standing, text, order ?? PeopleOrder.Name);
    }

    private static bool TryRead<T>(string? typed, out T? value)
        where T : struct, Enum
    {
        value = null;
        if (string.IsNullOrEmpty(typed)) return true;
        // A number would parse too, also one that names nothing.
        value = Enum.GetValues<T>().Cast<T?>().FirstOrDefault(choice => choice.ToString() == typed);
        return value is not null;
    }
}
