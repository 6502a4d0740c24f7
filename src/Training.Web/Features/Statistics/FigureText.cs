namespace Training.Web.Features.Statistics;

/// <summary>Names the texts of figures: FigureText.resx and FigureText.es.resx.</summary>
public sealed class FigureText;
