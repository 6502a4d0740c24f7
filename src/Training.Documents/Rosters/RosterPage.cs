using Training.Certification;
using Training.Courses;
using Training.Documents.Typesetting;

namespace Training.Documents.Rosters;

/// <summary>Everything that the roster of a crew says, for the wall of a site office. Lengths count characters after composing (NFC).</summary>
/// <remarks>There is no field for a hold: a hold changes no standing and stands on no paper (docs/rules.md, "Who is told of a hold").</remarks>
public sealed record RosterPage
{
    /// <summary>Greatest length of every name and title.</summary>
    public const int LongestName = 200;

    /// <summary>Greatest length of a badge number.</summary>
    public const int LongestNumber = 60;

    /// <summary>Most people.</summary>
    public const int MostPeople = 500;

    /// <summary>Most certifications of one person.</summary>
    public const int MostHoldings = 20;

    /// <summary>The language of every word on the page that is not a name.</summary>
    public required Language Language { get; init; }

    /// <summary>The paper; upright.</summary>
    public required PaperSize Paper { get; init; }

    /// <summary>Who certifies.</summary>
    public required string ProviderName { get; init; }

    /// <summary>Whose people.</summary>
    public required string EmployerName { get; init; }

    /// <summary>Where they work.</summary>
    public required string SiteName { get; init; }

    /// <summary>Which crew; null for everybody at the site.</summary>
    public required string? CrewName { get; init; }

    /// <summary>As of when, by the clock of the site: its offset from UTC is printed.</summary>
    public required DateTimeOffset AsOf { get; init; }

    /// <summary>At most <see cref="MostPeople"/>, in the order of the paper.</summary>
    public required IReadOnlyList<RosterPerson> People { get; init; }

    /// <summary>Made by the demonstration: the paper is stamped so that it cannot be used.</summary>
    public required bool IsDemonstration { get; init; }
}

/// <summary>Somebody on a roster.</summary>
/// <param name="Name">Null where it was erased.</param>
/// <param name="BadgeNumber">On the day; null where there is none.</param>
/// <param name="Holdings">What they hold or held, at most <see cref="RosterPage.MostHoldings"/>; empty: nothing yet.</param>
public sealed record RosterPerson(string? Name, string? BadgeNumber, IReadOnlyList<RosterHolding> Holdings);

/// <summary>One certification of somebody.</summary>
/// <param name="SchemeTitle">In the paper's language.</param>
/// <param name="Standing">On the day.</param>
/// <param name="ExpiresOn">Last day of the period that the day belongs to.</param>
public sealed record RosterHolding(string SchemeTitle, Standing Standing, DateOnly ExpiresOn);
