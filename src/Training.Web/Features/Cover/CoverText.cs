namespace Training.Web.Features.Cover;

/// <summary>Names the texts of cover: CoverText.resx and CoverText.es.resx.</summary>
public sealed class CoverText;
