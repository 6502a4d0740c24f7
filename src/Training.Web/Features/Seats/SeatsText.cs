namespace Training.Web.Features.Seats;

/// <summary>Names the texts of the pages of seats: SeatsText.resx and SeatsText.es.resx.</summary>
public sealed class SeatsText;
