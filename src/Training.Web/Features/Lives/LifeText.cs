namespace Training.Web.Features.Lives;

/// <summary>Names the texts of histories and of standing on a day in the past: LifeText.resx and LifeText.es.resx.</summary>
public sealed class LifeText;
