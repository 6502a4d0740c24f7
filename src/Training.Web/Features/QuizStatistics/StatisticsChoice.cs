using Training.Courses;

namespace Training.Web.Features.QuizStatistics;

/// <summary>Which sittings to look at, as the address says it.</summary>
public sealed class StatisticsChoice
{
    /// <summary>Drawn from this text of the course alone: the first characters of its hash; empty for every text with the present blueprint and cut.</summary>
    public string? Text { get; set; }

    /// <summary>Answered in this language alone: its tag; empty for all.</summary>
    public string? In { get; set; }

    /// <summary>The language, or null for all.</summary>
    public Language? Language => LanguageTags.All.Cast<Language?>().FirstOrDefault(language => language!.Value.Tag() == In);
}
