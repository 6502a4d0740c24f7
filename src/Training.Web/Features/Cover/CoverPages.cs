using Training.Records;

namespace Training.Web.Features.Cover;

/// <summary>The page of an employer's cover.</summary>
/// <param name="EmployerId">Whose.</param>
/// <param name="EmployerName">Its name.</param>
/// <param name="Cover">Of all places.</param>
/// <param name="SetBy">Names of those who set needs, by id; who was erased is missing.</param>
/// <param name="Choices">Sites and their crews to choose from.</param>
/// <param name="Schemes">Schemes to choose from, by id.</param>
/// <param name="Form">As typed, or empty.</param>
public sealed record CoverPage(
    Guid EmployerId, string EmployerName, EmployerCover Cover, IReadOnlyDictionary<Guid, string> SetBy, IReadOnlyList<PlaceChoice> Choices,
    IReadOnlyList<(string Id, string Title)> Schemes, NeedForm Form)
{
    /// <summary>Most runs of one table.</summary>
    public const int MostRuns = 100;
}

/// <summary>A site or a crew to choose.</summary>
/// <param name="Value">What the form sends: the id of the site, and after a stroke that of the crew.</param>
/// <param name="Site">Its name.</param>
/// <param name="Crew">The crew's name; null for the whole site.</param>
public sealed record PlaceChoice(string Value, string Site, string? Crew);

/// <summary>The form of what a place needs.</summary>
public sealed class NeedForm
{
    /// <summary>Made when the form was: the same twice is one row.</summary>
    public Guid Id { get; set; }

    /// <summary>A <see cref="PlaceChoice.Value"/>.</summary>
    public string? Place { get; set; }

    /// <summary>Under which scheme.</summary>
    public string? SchemeId { get; set; }

    /// <summary>How many, as typed: 0 to <see cref="CoverNeed.Most"/>.</summary>
    public string? Handlers { get; set; }

    /// <summary>First day, as typed.</summary>
    public string? StartsOn { get; set; }
}
