namespace Training.Courses;

/// <summary>Codes of what can be wrong with species sheets and regional sets beside the codes that all course files share.</summary>
public static class SpeciesProblems
{
    /// <summary>No state of the United States has this code. Arguments: code.</summary>
    public const string StateUnknown = "species.state-unknown";

    /// <summary>A place has neither a state nor an area in words.</summary>
    public const string PlaceEmpty = "species.place-empty";

    /// <summary>A length has no end, or its ends are the wrong way round.</summary>
    public const string LengthForm = "species.length-form";

    /// <summary>A length says another standing than its fact: what is only from memory must say so. Arguments: standing said, fact, standing of the fact.</summary>
    public const string StandingDiffers = "species.standing-differs";

    /// <summary>No such sheet to be confused with. Arguments: id.</summary>
    public const string ConfusionUnknown = "species.confusion-unknown";

    /// <summary>A sheet is confused with itself. Arguments: id.</summary>
    public const string ConfusionItself = "species.confusion-itself";

    /// <summary>A paragraph states something and cites no fact. Arguments: field.</summary>
    public const string SourceMissing = "species.source-missing";

    /// <summary>No regional set lists this venomous species. Arguments: id.</summary>
    public const string InNoSet = "species.in-no-set";

    /// <summary>A state is named, and no set with that state lists the species. Arguments: state, id.</summary>
    public const string StateWithoutSet = "species.state-without-set";

    /// <summary>A regional set names a sheet that does not exist. Arguments: id.</summary>
    public const string RegionSpeciesUnknown = "region.species-unknown";

    /// <summary>A regional set names a look-alike: sets are of venomous species. Arguments: id.</summary>
    public const string RegionLookAlike = "region.look-alike";

    /// <summary>A regional set names a species that its source places in other states only, or nowhere. Arguments: id.</summary>
    public const string RegionSpeciesElsewhere = "region.species-elsewhere";
}
