namespace Training.Web.Places;

/// <summary>Names the texts of the fields for time zone and region: PlaceText.resx and PlaceText.es.resx.</summary>
public sealed class PlaceText;
