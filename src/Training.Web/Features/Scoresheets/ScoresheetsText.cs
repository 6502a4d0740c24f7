namespace Training.Web.Features.Scoresheets;

/// <summary>Names the texts of the scoresheet pages: ScoresheetsText.resx and ScoresheetsText.es.resx.</summary>
public sealed class ScoresheetsText;
