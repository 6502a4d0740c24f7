using Training.Certification;
using Training.Records;

namespace Training.Web.Features.Encounters;

/// <summary>The form of an encounter.</summary>
/// <param name="Sites">Those that the visitor may report from, by name.</param>
/// <param name="Place">The chosen one; null until one is chosen.</param>
/// <param name="Form">As typed; its kind is null until one is chosen.</param>
public sealed record EncounterFormPage(IReadOnlyList<(Guid Id, string Name)> Sites, EncounterPlace? Place, EncounterForm Form);

/// <summary>The visitor's own reports.</summary>
/// <param name="Lines">Newest first.</param>
/// <param name="Words">Puts them in words.</param>
public sealed record OwnEncountersPage(IReadOnlyList<EncounterLine> Lines, EncounterWords Words);

/// <summary>One report, as whoever sent it sees it.</summary>
/// <param name="Case">All of it.</param>
/// <param name="Form">To add something.</param>
/// <param name="Words">Puts it in words.</param>
public sealed record OwnEncounterPage(EncounterCase Case, EncounterWordsForm Form, EncounterWords Words);

/// <summary>Encounters over a span: for an employer those of its sites, for a lead all.</summary>
/// <param name="Home">Address below which the page and its file lie.</param>
/// <param name="EmployerName">Whose sites; null for all employers.</param>
/// <param name="Today">The visitor's.</param>
/// <param name="Sites">To choose from, by name.</param>
/// <param name="Filter">What was chosen.</param>
/// <param name="Months">Oldest first; every month of the span, with and without encounters.</param>
/// <param name="BySite">By name of the site.</param>
/// <param name="Lines">Newest first.</param>
/// <param name="Words">Puts them in words.</param>
public sealed record EncountersPage(
    string Home,
    string? EmployerName,
    DateOnly Today,
    IReadOnlyList<(Guid Id, string Name)> Sites,
    EncounterFilter Filter,
    IReadOnlyList<EncounterTally<DateOnly>> Months,
    IReadOnlyList<EncounterTally<string>> BySite,
    IReadOnlyList<EncounterLine> Lines,
    EncounterWords Words)
{
    /// <summary>How many lines one page shows; the file has more.</summary>
    public const int MostLines = 100;

    /// <summary>What asks for a lead's look; empty for an employer.</summary>
    public IReadOnlyList<EncounterLine> ToLookAt { get; init; } = [];

    /// <summary>All of the span.</summary>
    public EncounterTally<string> Sum => new("", [.. Months.SelectMany(month => month.Counts).GroupBy(one => one.Kind).Select(kind => (kind.Key, kind.Sum(one => one.Count)))]);
}

/// <summary>How many encounters of each kind a month or a site had.</summary>
/// <param name="Of">First day of the month, or name of the site.</param>
/// <param name="Counts">Kinds that occurred.</param>
public sealed record EncounterTally<T>(T Of, IReadOnlyList<(EncounterKind Kind, int Count)> Counts)
{
    /// <summary>All kinds.</summary>
    public int All => Counts.Sum(one => one.Count);

    /// <summary>Of one kind.</summary>
    public int Count(EncounterKind kind) => Counts.Where(one => one.Kind == kind).Sum(one => one.Count);
}

/// <summary>One encounter as a lead sees it.</summary>
/// <param name="Case">All of it.</param>
/// <param name="Standings">What whoever handled it held under certifications on that day; empty where nobody is named.</param>
/// <param name="IsOnList">The species is on the site's list, or there is nothing to compare.</param>
/// <param name="Names">By person; erased ones are not there.</param>
/// <param name="Form">To say what was found.</param>
/// <param name="Words">Puts it in words.</param>
public sealed record EncounterCasePage(
    EncounterCase Case, IReadOnlyList<(string SchemeTitle, Standing? Standing)> Standings, bool IsOnList, IReadOnlyDictionary<Guid, string> Names,
    EncounterWordsForm Form, EncounterWords Words);
