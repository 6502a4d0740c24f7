namespace Training.Web.Features.Sittings;

/// <summary>Names the texts of the quiz pages: SittingText.resx and SittingText.es.resx.</summary>
public sealed class SittingText;
