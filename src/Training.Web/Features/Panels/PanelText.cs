namespace Training.Web.Features.Panels;

/// <summary>Names the texts of panels: PanelText.resx and PanelText.es.resx.</summary>
public sealed class PanelText;
