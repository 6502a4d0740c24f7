namespace Training.Web.Features.SiteSpecies;

/// <summary>The form of which snakes live at a site.</summary>
public sealed class SiteSpeciesForm
{
    /// <summary>Made when the form was: the same twice is one list.</summary>
    public Guid Id { get; set; }

    /// <summary>Ids of the sheets that were ticked; none: nobody says anything, and everything is taught and asked.</summary>
    public List<string> SpeciesIds { get; set; } = [];
}
