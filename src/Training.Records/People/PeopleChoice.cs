using Training.Certification;

namespace Training.Records;

/// <summary>Which of an employer's people are asked for, and in which order.</summary>
public sealed record PeopleChoice
{
    /// <summary>Whose people; whether the visitor may see them is for the caller to ask.</summary>
    public required Guid EmployerId { get; init; }

    /// <summary>The day on which they work there and stand so.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>At one of its sites; null for all, also those at none.</summary>
    public Guid? SiteId { get; init; }

    /// <summary>In one of the crews of its sites; null for all, also those in none.</summary>
    public Guid? CrewId { get; init; }

    /// <summary>Part of a name or badge number, accents and case aside; null for all.</summary>
    public string? Text { get; init; }

    /// <summary>The schemes that <see cref="Standing"/> and <see cref="Order"/> look at.</summary>
    public IReadOnlyList<string> SchemeIds { get; init; } = [];

    /// <summary>Who stands so under at least one of <see cref="SchemeIds"/>; null for all.</summary>
    public StandingChoice? Standing { get; init; }

    /// <summary>The order; ties by name.</summary>
    public PeopleOrder Order { get; init; }
}

/// <summary>An order of people.</summary>
public enum PeopleOrder
{
    /// <summary>By name; those whose name was erased last.</summary>
    Name,

    /// <summary>By badge number, letter by letter; those without last.</summary>
    Badge,

    /// <summary>By the name of their site; those at none last.</summary>
    Site,

    /// <summary>Who lapses next first: by the earliest last day, from the day on, of what is not withdrawn; those with none last.</summary>
    LastDay,

    /// <summary>Worst first: suspended, lapsed, withdrawn, to be renewed, current, never held; the worst of several schemes.</summary>
    Standing,
}

/// <summary>A standing to choose people by; also "never held", which is none.</summary>
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

    /// <summary>The choice of a standing.</summary>
    public static StandingChoice ToChoice(this Standing standing) => standing switch
    {
        Standing.Current => StandingChoice.Current,
        Standing.RenewalDue => StandingChoice.RenewalDue,
        Standing.Lapsed => StandingChoice.Lapsed,
        Standing.Suspended => StandingChoice.Suspended,
        Standing.Withdrawn => StandingChoice.Withdrawn,
    };
}
