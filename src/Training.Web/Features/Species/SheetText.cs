namespace Training.Web.Features.Species;

/// <summary>Names the texts of the species pages: SheetText.resx and SheetText.es.resx.</summary>
public sealed class SheetText;
