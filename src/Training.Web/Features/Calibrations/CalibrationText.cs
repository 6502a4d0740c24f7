namespace Training.Web.Features.Calibrations;

/// <summary>Names the texts of calibrations: CalibrationText.resx and CalibrationText.es.resx.</summary>
public sealed class CalibrationText;
