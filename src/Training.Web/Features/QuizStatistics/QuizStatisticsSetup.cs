using Training.Web.Features.Statistics;

namespace Training.Web.Features.QuizStatistics;

/// <summary>What the pages of statistics are made of.</summary>
public static class QuizStatisticsSetup
{
    /// <summary>Adds the words of figures and flags, and the reading of sittings.</summary>
    public static IServiceCollection AddQuizStatistics(this IServiceCollection services) =>
        services.AddSingleton<FigureWords>().AddSingleton<FlagWords>().AddScoped<QuizReading>();
}
