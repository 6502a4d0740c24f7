namespace Training.Web.Features.Home;

/// <summary>Names the texts of the front page: HomeText.resx and HomeText.es.resx.</summary>
public sealed class HomeText;
