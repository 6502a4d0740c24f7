namespace Training.Web.Features.Decisions;

/// <summary>Names the texts of decisions: DecisionText.resx and DecisionText.es.resx.</summary>
public sealed class DecisionText;
