namespace Training.Web.Features.Sites;

/// <summary>Names the texts of a site: SiteText.resx and SiteText.es.resx.</summary>
public sealed class SiteText;
