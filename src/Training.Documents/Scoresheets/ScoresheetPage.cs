using Training.Courses;
using Training.Documents.Typesetting;
using Training.Scoring;

namespace Training.Documents.Scoresheets;

/// <summary>Everything that a printed scoresheet says: what was signed, what it came to, what the candidate said.</summary>
/// <remarks>Lengths count characters after composing (NFC). Instants are given by the clock of the site: their offset from UTC is printed.</remarks>
public sealed record ScoresheetPage
{
    /// <summary>Greatest length of every name and title, and of a typed signature.</summary>
    public const int LongestName = 200;

    /// <summary>Greatest length of badge and permit numbers.</summary>
    public const int LongestNumber = 60;

    /// <summary>Greatest length of versions and hashes.</summary>
    public const int LongestHash = 64;

    /// <summary>Greatest length of <see cref="Surroundings"/>, of <see cref="Kit"/> and of what one step says.</summary>
    public const int LongestConditions = 500;

    /// <summary>Greatest length of remarks and reasons.</summary>
    public const int LongestRemarks = 2000;

    /// <summary>Most steps.</summary>
    public const int MostSteps = 200;

    /// <summary>The language of every word on the page that is not a name or somebody's own words.</summary>
    public required Language Language { get; init; }

    /// <summary>The paper; upright.</summary>
    public required PaperSize Paper { get; init; }

    /// <summary>Whose programme it is.</summary>
    public required string ProviderName { get; init; }

    /// <summary>Who was assessed; null where the name was erased.</summary>
    public required string? CandidateName { get; init; }

    /// <summary>Their badge number on the day; null where there is none.</summary>
    public required string? BadgeNumber { get; init; }

    /// <summary>Who scored; null where the name was erased.</summary>
    public required string? InstructorName { get; init; }

    /// <summary>Where, with whose site it is.</summary>
    public required string SiteName { get; init; }

    /// <summary>Title of the checklist in <see cref="Language"/>.</summary>
    public required string ChecklistTitle { get; init; }

    /// <summary>The version that was scored against.</summary>
    public required string ChecklistVersion { get; init; }

    /// <summary>On the model or a live snake.</summary>
    public required Subject Subject { get; init; }

    /// <summary>1 for the first try.</summary>
    public required int Try { get; init; }

    /// <summary>The day, on the calendar of the site.</summary>
    public required DateOnly ScoredOn { get; init; }

    /// <summary>The instructor looked at the candidate's identification.</summary>
    public required bool IdentityConfirmed { get; init; }

    /// <summary>The language in which the standard instructions were read.</summary>
    public required Language InstructionsLanguage { get; init; }

    /// <summary>When they were read; null on sheets from before it was asked.</summary>
    public required DateTimeOffset? InstructionsReadAt { get; init; }

    /// <summary>Ground, light and weather.</summary>
    public required string Surroundings { get; init; }

    /// <summary>In whole °C; null where nobody measured it.</summary>
    public required int? AirTemperature { get; init; }

    /// <summary>The pieces that were used.</summary>
    public required string Kit { get; init; }

    /// <summary>What stood before a live snake was used; null on a model.</summary>
    public required ScoresheetLive? Live { get; init; }

    /// <summary>In the order of the checklist, 1 to <see cref="MostSteps"/>.</summary>
    public required IReadOnlyList<ScoresheetStep> Steps { get; init; }

    /// <summary>What it came to: the newest result. Its reasons name steps of <see cref="Steps"/>.</summary>
    public required ScoresheetResult Result { get; init; }

    /// <summary>Of the performance as a whole; null where it was not said.</summary>
    public required Impression? Impression { get; init; }

    /// <summary>How long a timed drill took; null where nothing is timed.</summary>
    public required int? Seconds { get; init; }

    /// <summary>The instructor's free text; empty where there is none.</summary>
    public required string Remarks { get; init; }

    /// <summary>Why the scorer had taught the candidate too; null where they had not.</summary>
    public required string? SeparationReason { get; init; }

    /// <summary>The name that the instructor typed to sign.</summary>
    public required string SignedName { get; init; }

    /// <summary>When.</summary>
    public required DateTimeOffset SignedAt { get; init; }

    /// <summary>What the candidate said to it; null where nothing was kept.</summary>
    public required ScoresheetWord? CandidateWord { get; init; }

    /// <summary>Id of the record.</summary>
    public required Guid RecordId { get; init; }

    /// <summary>Hash of the record, lower-case hex.</summary>
    public required string RecordHash { get; init; }

    /// <summary>Made by the demonstration: the paper is stamped so that it cannot be used.</summary>
    public required bool IsDemonstration { get; init; }
}

/// <summary>One step and what was seen.</summary>
/// <param name="Id">As reasons name it.</param>
/// <param name="Text">What was to be seen, plain text in the paper's language.</param>
/// <param name="IsCritical">Failing it stops the practical.</param>
/// <param name="Observation">The mark.</param>
public sealed record ScoresheetStep(string Id, string Text, bool IsCritical, Observation Observation);

/// <summary>What stood before a live snake was used.</summary>
/// <param name="PermitNumber">The permit under which the animal is held or caught.</param>
/// <param name="BitePlanCheckedOn">When the site's bite plan was last checked.</param>
/// <param name="CommunicationsTestedAt">When the call for help was tried.</param>
/// <param name="WatcherName">Who watched; null where the name was erased.</param>
public sealed record ScoresheetLive(string PermitNumber, DateOnly BitePlanCheckedOn, DateTimeOffset CommunicationsTestedAt, string? WatcherName);

/// <summary>What a candidate said to a signed sheet. A closed family.</summary>
/// <param name="KeptAt">When it was kept.</param>
public abstract record ScoresheetWord(DateTimeOffset KeptAt)
{
    /// <summary>They agree with what was written, and typed their name.</summary>
    public sealed record Agreed(string SignedName, DateTimeOffset KeptAt) : ScoresheetWord(KeptAt);

    /// <summary>They object, say why, and typed their name. An objection is an appeal.</summary>
    public sealed record Objected(string SignedName, string Reason, DateTimeOffset KeptAt) : ScoresheetWord(KeptAt);

    /// <summary>They did not sign; the instructor wrote why.</summary>
    public sealed record DidNotSign(string Reason, DateTimeOffset KeptAt) : ScoresheetWord(KeptAt);
}
