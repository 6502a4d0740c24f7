using Training.Certification;

namespace Training.Web.Features.Workforce;

/// <summary>Which part of the training matrix is shown.</summary>
/// <param name="SiteId">One site, or null for all.</param>
/// <param name="SchemeId">One scheme, or null for all.</param>
/// <param name="Standing">People who stand so under a scheme shown; null for all.</param>
public sealed record MatrixFilter(Guid? SiteId, string? SchemeId, StandingChoice? Standing)
{
    /// <summary>The address of the matrix with this filter, below the employer's.</summary>
    /// <param name="file"><c>matrix</c> for the page, <c>matrix.csv</c> for the file.</param>
    /// <param name="page">1 for the first.</param>
    public string Address(string file, int page = 1) => file + QueryString.Create(
    [
        .. SiteId is { } site ? [new("site", site.ToString())] : Array.Empty<KeyValuePair<string, string?>>(),
        .. SchemeId is { } scheme ? [new("scheme", scheme)] : Array.Empty<KeyValuePair<string, string?>>(),
        .. Standing is { } standing ? [new("standing", standing.ToString())] : Array.Empty<KeyValuePair<string, string?>>(),
        .. page > 1 ? [new("page", page.ToString(System.Globalization.CultureInfo.InvariantCulture))] : Array.Empty<KeyValuePair<string, string?>>(),
    ]);

    /// <summary>Whether somebody stands as chosen.</summary>
    public bool Admits(Standing? standing) => Standing is null || standing == Standing.Value.ToStanding();
}

/// <summary>A standing to filter by; also "never held", which is none.</summary>
public enum StandingChoice
{
    /// <summary>Valid, and the renewal window is not open.</summary>
    Current,

    /// <summary>Valid, and inside the renewal window.</summary>
    RenewalDue,

    /// <summary>Past its expiry date.</summary>
    Lapsed,

    /// <summary>Suspended by a lead.</summary>
    Suspended,

    /// <summary>Withdrawn by two leads.</summary>
    Withdrawn,

    /// <summary>Never held.</summary>
    NotHeld,
}

/// <summary>Standings as choices.</summary>
public static class StandingChoices
{
    /// <summary>The standing that is chosen; null for never held.</summary>
    public static Standing? ToStanding(this StandingChoice choice) => choice switch
    {
        StandingChoice.Current => Standing.Current,
        StandingChoice.RenewalDue => Standing.RenewalDue,
        StandingChoice.Lapsed => Standing.Lapsed,
        StandingChoice.Suspended => Standing.Suspended,
        StandingChoice.Withdrawn => Standing.Withdrawn,
        StandingChoice.NotHeld => null,
    };
}
