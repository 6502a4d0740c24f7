namespace Training.Web.Features.Scoring;

/// <summary>Names the texts of the scoring pages: ScoringText.resx and ScoringText.es.resx.</summary>
public sealed class ScoringText;
