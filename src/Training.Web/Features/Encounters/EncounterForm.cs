using Training.Certification;

namespace Training.Web.Features.Encounters;

/// <summary>What somebody posts who met a snake: as typed, so that nothing is lost where something is to be mended.</summary>
public sealed class EncounterForm
{
    /// <summary>Made with the form: the same twice is one report.</summary>
    public Guid Id { get; set; }

    /// <summary>At which site.</summary>
    public Guid? SiteId { get; set; }

    /// <summary>What it came to.</summary>
    public EncounterKind? Kind { get; set; }

    /// <summary>Day there, as date fields write it.</summary>
    public string? MetOn { get; set; }

    /// <summary>Time of day there, as time fields write it; may be empty.</summary>
    public string? MetAt { get; set; }

    /// <summary>The place on the site; 1 to 500 characters.</summary>
    public string? Place { get; set; }

    /// <summary>Degrees north and east with a comma between; may be empty.</summary>
    public string? Coordinates { get; set; }

    /// <summary>A species sheet; empty: not known.</summary>
    public string? SpeciesId { get; set; }

    /// <summary>What was done; up to 2,000 characters.</summary>
    public string? Done { get; set; }

    /// <summary>Who handled the snake: a person's id, <see cref="SomebodyElse"/>, or empty for nobody.</summary>
    public string? Handler { get; set; }

    /// <summary>What is still to be done; up to 2,000 characters.</summary>
    public string? FollowUp { get; set; }

    /// <summary>A course that should be looked at; empty for none.</summary>
    public string? CourseId { get; set; }

    /// <summary>How far it was moved, metres; may be empty.</summary>
    public string? DistanceMetres { get; set; }

    /// <summary>Tools; up to 500 characters.</summary>
    public string? Tools { get; set; }

    /// <summary>The container; up to 60 characters.</summary>
    public string? Container { get; set; }

    /// <summary>Minutes in it; may be empty.</summary>
    public string? MinutesHeld { get; set; }

    /// <summary>Degrees Celsius; may be empty.</summary>
    public string? AirTemperature { get; set; }

    /// <summary>Cover at the place of release; up to 500 characters.</summary>
    public string? ReleaseCover { get; set; }

    /// <summary>Number of the permit; up to 60 characters.</summary>
    public string? PermitNumber { get; set; }

    /// <summary>As <see cref="Handler"/>: somebody who is not on the list.</summary>
    public const string SomebodyElse = "other";
}

/// <summary>What somebody posts who has something to add to a report, or a lead who looked at it.</summary>
public sealed class EncounterWordsForm
{
    /// <summary>Made with the form: the same twice is one row.</summary>
    public Guid Id { get; set; }

    /// <summary>As typed; 1 to 2,000 characters.</summary>
    public string? Words { get; set; }
}
