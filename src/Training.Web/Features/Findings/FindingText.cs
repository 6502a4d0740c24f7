namespace Training.Web.Features.Findings;

/// <summary>Names the texts of course findings: FindingText.resx and FindingText.es.resx.</summary>
public sealed class FindingText;
