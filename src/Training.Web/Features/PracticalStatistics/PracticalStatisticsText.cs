namespace Training.Web.Features.PracticalStatistics;

/// <summary>Names the texts of the statistics of practicals: PracticalStatisticsText.resx and PracticalStatisticsText.es.resx.</summary>
public sealed class PracticalStatisticsText;
