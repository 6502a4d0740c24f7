namespace Training.Web.Features.Distances;

/// <summary>Names the texts of the distance calculator: DistanceText.resx and DistanceText.es.resx.</summary>
public sealed class DistanceText;
