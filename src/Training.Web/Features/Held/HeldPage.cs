using Training.Certification;
using Training.Web.Features.Shared;

namespace Training.Web.Features.Held;

/// <summary>What is asked for; null is everything.</summary>
public sealed class HeldFilter
{
    /// <summary>Whose people.</summary>
    public Guid? Employer { get; set; }

    /// <summary>Under which scheme.</summary>
    public string? Scheme { get; set; }

    /// <summary>With which standing.</summary>
    public Standing? Standing { get; set; }
}

/// <summary>What is held and was held, over all employers.</summary>
/// <param name="Today">The lead's.</param>
/// <param name="Counts">By standing, before that filter.</param>
/// <param name="Count">Rows that fit the filter.</param>
/// <param name="Rows">One page: what ends first, first.</param>
/// <param name="Names">By person.</param>
/// <param name="Titles">By scheme.</param>
/// <param name="Employers">To choose from.</param>
/// <param name="Schemes">To choose from.</param>
/// <param name="Filter">As asked.</param>
/// <param name="Turning">Where in the list.</param>
public sealed record HeldPage(
    DateOnly Today,
    IReadOnlyDictionary<Standing, int> Counts,
    int Count,
    IReadOnlyList<HeldLine> Rows,
    IReadOnlyDictionary<Guid, string> Names,
    IReadOnlyDictionary<string, string> Titles,
    IReadOnlyList<(Guid Id, string Name)> Employers,
    IReadOnlyList<string> Schemes,
    HeldFilter Filter,
    Turning Turning);

/// <summary>One certification and how it stands.</summary>
public sealed record HeldLine(Guid PersonId, string SchemeId, Standing Standing, DateOnly ExpiresOn);
