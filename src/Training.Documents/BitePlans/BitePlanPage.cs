using Training.Courses;
using Training.Documents.Typesetting;

namespace Training.Documents.BitePlans;

/// <summary>
/// Everything that the bite plan of a site says: one page for an emergency. Nothing on it is advice of ours; every line of it was entered and
/// checked by somebody, and the page says by whom and when. Lengths count characters after composing (NFC).
/// </summary>
public sealed record BitePlanPage
{
    /// <summary>Greatest length of every name.</summary>
    public const int LongestName = 200;

    /// <summary>Greatest length of <see cref="EmergencyServices"/> and <see cref="PoisonControl"/>.</summary>
    public const int LongestNumber = 60;

    /// <summary>Greatest length of <see cref="WithoutSignal"/> and <see cref="AccessWords"/>.</summary>
    public const int LongestPath = 500;

    /// <summary>Greatest length of one line of first aid, of what was said of antivenom, of an address and of a source.</summary>
    public const int LongestLine = 200;

    /// <summary>Greatest drive time, minutes.</summary>
    public const int MostDriveMinutes = 600;

    /// <summary>Most hospitals.</summary>
    public const int MostHospitals = 6;

    /// <summary>Most words about antivenom.</summary>
    public const int MostAntivenom = 6;

    /// <summary>Most lines of what to do, and most of what not to do.</summary>
    public const int MostSteps = 16;

    /// <summary>The language of every word on the page that was not entered.</summary>
    public required Language Language { get; init; }

    /// <summary>The paper; upright.</summary>
    public required PaperSize Paper { get; init; }

    /// <summary>Whose programme it is.</summary>
    public required string ProviderName { get; init; }

    /// <summary>Whose site.</summary>
    public required string EmployerName { get; init; }

    /// <summary>Which site.</summary>
    public required string SiteName { get; init; }

    /// <summary>What to dial for emergency services, such as <c>911</c>.</summary>
    public required string EmergencyServices { get; init; }

    /// <summary>The radio or satellite path where the telephone has no signal.</summary>
    public required string WithoutSignal { get; init; }

    /// <summary>Degrees north on WGS 84, −90 to 90; printed to five decimals, about a metre.</summary>
    public required decimal Latitude { get; init; }

    /// <summary>Degrees east on WGS 84, −180 to 180.</summary>
    public required decimal Longitude { get; init; }

    /// <summary>What the ambulance is told: road, gate, key, who meets it.</summary>
    public required string AccessWords { get; init; }

    /// <summary>Who on site must know at once, with telephone or radio channel.</summary>
    public required string OnSite { get; init; }

    /// <summary>Poison control.</summary>
    public required string PoisonControl { get; init; }

    /// <summary>Printed by drive time, the shortest first; of equal ones in the order given.</summary>
    public required IReadOnlyList<BitePlanHospital> Hospitals { get; init; }

    /// <summary>What was said of antivenom, in the order of the paper.</summary>
    public required IReadOnlyList<AntivenomHearsay> Antivenom { get; init; }

    /// <summary>First aid as guidance in force says it; null where none is in force there, and the plan then says to do what emergency services say.</summary>
    public required FirstAidGuidance? FirstAid { get; init; }

    /// <summary>Day of the last check, on the calendar of the site.</summary>
    public required DateOnly CheckedOn { get; init; }

    /// <summary>Who checked; null where the name was erased.</summary>
    public required string? CheckedBy { get; init; }

    /// <summary>Through which day the check holds. Printed on a later day, the plan says first that it is overdue.</summary>
    public required DateOnly ReviewOn { get; init; }

    /// <summary>Day of the print, on the calendar of the site.</summary>
    public required DateOnly PrintedOn { get; init; }

    /// <summary>Made by the demonstration: the paper is stamped so that it cannot be used.</summary>
    public required bool IsDemonstration { get; init; }

    /// <summary>The day of the print lies after the day by which the plan was to be reviewed.</summary>
    public bool IsOverdue => PrintedOn > ReviewOn;
}

/// <summary>A hospital.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Contact">Address and telephone, one line.</param>
/// <param name="DriveMinutes">As somebody entered it, 1 to <see cref="BitePlanPage.MostDriveMinutes"/>; nobody worked it out.</param>
public sealed record BitePlanHospital(string Name, string Contact, int DriveMinutes);

/// <summary>What somebody said of a stock of antivenom. Stocks change by the day: it is hearsay, and says so.</summary>
/// <param name="HospitalName">Where.</param>
/// <param name="Said">What was said.</param>
/// <param name="ToldBy">Who said it.</param>
/// <param name="ToldOn">When.</param>
public sealed record AntivenomHearsay(string HospitalName, string Said, string ToldBy, DateOnly ToldOn);

/// <summary>First aid from the guidance in force where the site is. The page prints it as it comes.</summary>
/// <param name="Do">What to do, in order, in the paper's language.</param>
/// <param name="DoNot">What not to do.</param>
/// <param name="Source">Who says so.</param>
/// <param name="EffectiveFrom">First day in force.</param>
public sealed record FirstAidGuidance(IReadOnlyList<string> Do, IReadOnlyList<string> DoNot, string Source, DateOnly EffectiveFrom);
