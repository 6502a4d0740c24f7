using Training.Courses;
using Training.Documents.Typesetting;

namespace Training.Documents.SignInSheets;

/// <summary>Everything that goes onto the paper of a class: the sheet that people sign, and the roster behind it.</summary>
/// <remarks>Lengths count characters after composing (NFC).</remarks>
public sealed record SignInSheetPage
{
    /// <summary>Greatest length of every name and title.</summary>
    public const int LongestName = 200;

    /// <summary>Greatest length of a badge number.</summary>
    public const int LongestNumber = 60;

    /// <summary>Greatest length of <see cref="MeetingPlace"/>.</summary>
    public const int LongestPlace = 300;

    /// <summary>Greatest length of <see cref="Kit"/> and of <see cref="Weather"/>.</summary>
    public const int LongestText = 2000;

    /// <summary>Greatest length of <see cref="EnterAddress"/>.</summary>
    public const int LongestAddress = 500;

    /// <summary>Most people who have a seat, and most who wait.</summary>
    public const int MostPeople = 200;

    /// <summary>Most who teach, and most who score.</summary>
    public const int MostInstructors = 12;

    /// <summary>Most of <see cref="BlankRows"/>.</summary>
    public const int MostBlankRows = 40;

    /// <summary>The language of every word on the page that is not a name.</summary>
    public required Language Language { get; init; }

    /// <summary>The paper; upright.</summary>
    public required PaperSize Paper { get; init; }

    /// <summary>Who gives the class.</summary>
    public required string ProviderName { get; init; }

    /// <summary>Title of its course.</summary>
    public required string ClassTitle { get; init; }

    /// <summary>Tells this class from every other.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>The day, on the calendar of the site.</summary>
    public required DateOnly HeldOn { get; init; }

    /// <summary>When it begins, by the clock of the site.</summary>
    public required TimeOnly StartsAt { get; init; }

    /// <summary>When it ends.</summary>
    public required TimeOnly EndsAt { get; init; }

    /// <summary>Where.</summary>
    public required string SiteName { get; init; }

    /// <summary>Whose site.</summary>
    public required string EmployerName { get; init; }

    /// <summary>Where people meet; empty where nothing is said.</summary>
    public required string MeetingPlace { get; init; }

    /// <summary>Kit that is needed; empty where nothing is said.</summary>
    public required string Kit { get; init; }

    /// <summary>About the weather; empty where nothing is said.</summary>
    public required string Weather { get; init; }

    /// <summary>By name.</summary>
    public required IReadOnlyList<string> Teachers { get; init; }

    /// <summary>By name.</summary>
    public required IReadOnlyList<string> Scorers { get; init; }

    /// <summary>Who has a seat, in the order of the paper.</summary>
    public required IReadOnlyList<SignInLine> Seated { get; init; }

    /// <summary>Who waits, the first in line first.</summary>
    public required IReadOnlyList<SignInLine> Waiting { get; init; }

    /// <summary>How many seats there are.</summary>
    public required int Seats { get; init; }

    /// <summary>Rows without a name, for whoever comes without a seat: 0 to <see cref="MostBlankRows"/>.</summary>
    public required int BlankRows { get; init; }

    /// <summary>Where it is entered afterwards.</summary>
    public required string EnterAddress { get; init; }

    /// <summary>Made by the demonstration: the paper is stamped so that it cannot be used.</summary>
    public required bool IsDemonstration { get; init; }
}

/// <summary>Somebody on the paper.</summary>
/// <param name="Name">Null where it was erased.</param>
/// <param name="BadgeNumber">On the day; null where there is none.</param>
/// <param name="EmployerName">On the day; null where nobody employs them.</param>
/// <param name="Language">The language that they are instructed in.</param>
public sealed record SignInLine(string? Name, string? BadgeNumber, string? EmployerName, Language Language);
