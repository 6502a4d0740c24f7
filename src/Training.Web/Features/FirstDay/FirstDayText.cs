namespace Training.Web.Features.FirstDay;

/// <summary>Names the texts of a provider's first day: FirstDayText.resx and FirstDayText.es.resx.</summary>
public sealed class FirstDayText;
