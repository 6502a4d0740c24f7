namespace Training.Web.Features.QuizStatistics;

/// <summary>Names the texts of the statistics of quizzes: QuizStatisticsText.resx and QuizStatisticsText.es.resx.</summary>
public sealed class QuizStatisticsText;
