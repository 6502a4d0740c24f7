namespace Training.Web.Features.Reviews;

/// <summary>Names the texts of reviews and holds: ReviewText.resx and ReviewText.es.resx.</summary>
public sealed class ReviewText;
