namespace Training.Web.Features.SiteSpecies;

/// <summary>Names the texts of a site's species: SiteSpeciesText.resx and SiteSpeciesText.es.resx.</summary>
public sealed class SiteSpeciesText;
