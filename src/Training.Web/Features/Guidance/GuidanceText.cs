namespace Training.Web.Features.Guidance;

/// <summary>Names the texts of the guidance page: GuidanceText.resx and GuidanceText.es.resx.</summary>
public sealed class GuidanceText;
