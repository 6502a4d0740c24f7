namespace Training.Web.Features.Corrections;

/// <summary>Names the texts of corrections: CorrectionText.resx and CorrectionText.es.resx.</summary>
public sealed class CorrectionText;
