using Training.Courses;
using Training.Records;

namespace Training.Web.Features.CourseReports;

/// <summary>What a lead sees of one course as its files are now: what teaches, what asks, how hard it reads, and what it rests on.</summary>
/// <param name="CourseId">For addresses.</param>
/// <param name="Title">What the paper calls it.</param>
/// <param name="Findings">In its folder.</param>
/// <param name="Modules">In reading order.</param>
/// <param name="Topics">In the order of the course.</param>
/// <param name="Objectives">In the order of the course.</param>
/// <param name="UntaughtSteps">Steps of checklists whose objective no module teaches.</param>
/// <param name="Checklists">Its checklists: id and title.</param>
/// <param name="MachineMade">Questions with words that a machine made, in file order.</param>
/// <param name="Sources">Facts and guidance that its modules cite, by id.</param>
public sealed record CourseReportPage(
    string CourseId,
    string Title,
    IReadOnlyList<Problem> Findings,
    IReadOnlyList<ModuleReport> Modules,
    IReadOnlyList<TopicReport> Topics,
    IReadOnlyList<ObjectiveReport> Objectives,
    IReadOnlyList<(string Checklist, string StepId)> UntaughtSteps,
    IReadOnlyList<(string Id, string Title)> Checklists,
    IReadOnlyList<string> MachineMade,
    IReadOnlyList<SourceNote> Sources)
{
    /// <summary>The report in one language.</summary>
    /// <param name="course">As its files are now.</param>
    /// <param name="reading">The reading that it comes from.</param>
    /// <param name="reviews">Of its questions as they read now.</param>
    /// <param name="language">Of the page.</param>
    public static CourseReportPage Of(Course course, CourseReading reading, IReadOnlyDictionary<string, QuestionReview> reviews, Language language)
    {
        var coverage = reading.Coverage.Where(row => row.CourseId == course.Id).ToDictionary(row => row.ObjectiveId, StringComparer.Ordinal);
        return new(
            course.Id,
            course.Scheme.Words.TryGetValue(language, out var words) ? words.Title : course.Id,
            [.. reading.Problems.Where(problem => problem.Place.File?.StartsWith(course.Id + "/", StringComparison.Ordinal) == true)],
            [.. course.Modules.Select(module => ModuleReport.Of(module, language))],
            [.. course.Topics.Select(topic => TopicReport.Of(course, topic, reviews, language))],
            [.. course.Objectives.Select(objective => ObjectiveReport.Of(course, objective, coverage[objective], language))],
            [
                .. from checklist in course.Checklists
                   from step in checklist.Steps
                   where coverage.GetValueOrDefault(step.Objective) is not { Modules.Count: > 0 }
                   select (checklist.Words.TryGetValue(language, out var list) ? list.Title : checklist.Id, step.Id),
            ],
            [.. course.Checklists.Select(checklist => (checklist.Id, checklist.Words.TryGetValue(language, out var own) ? own.Title : checklist.Id))],
            [.. course.Questions.Where(question => question.MachineMade.Count > 0).Select(question => question.Id)],
            [
                .. course.Modules.SelectMany(module => module.Pages.TryGetValue(language, out var page) ? page.Notes : [])
                    .DistinctBy(note => note.Id).OrderBy(note => note.Id, StringComparer.Ordinal),
            ]);
    }
}

/// <summary>One module: what its author says and what can be counted.</summary>
/// <param name="Id">For addresses.</param>
/// <param name="Title">In the page's language.</param>
/// <param name="Minutes">As the author says.</param>
/// <param name="Languages">Of each language: words, and how hard it reads.</param>
public sealed record ModuleReport(string Id, string Title, int Minutes, IReadOnlyList<LanguageReport> Languages)
{
    /// <summary>Words a minute of adults who read slowly or in a second language; common practice, no source.</summary>
    private const int WordsPerMinute = 130;

    /// <summary>The words of the longer language at a slow reader's pace; drawings and tables take more.</summary>
    public int ReadingMinutes => (Languages.Select(one => one.Words).DefaultIfEmpty().Max() + WordsPerMinute - 1) / WordsPerMinute;

    /// <summary>The title; the id where the file cannot be read in this language.</summary>
    public static string TitleOf(Module module, Language language) => module.Pages.TryGetValue(language, out var page) ? page.Title : module.Id;

    /// <summary>The report of one module.</summary>
    public static ModuleReport Of(Module module, Language language) => new(
        module.Id,
        TitleOf(module, language),
        module.Minutes,
        [.. module.Pages.OrderBy(one => one.Key).Select(one => LanguageReport.Of(one.Key, one.Value))]);
}

/// <summary>A module in one language.</summary>
/// <param name="Language">Which.</param>
/// <param name="Words">How many.</param>
/// <param name="Level">US school grade for English, INFLESZ ease for Spanish; null where there is no word.</param>
/// <param name="IsHard">Above the eighth grade, or below 55 of ease.</param>
public sealed record LanguageReport(Language Language, int Words, double? Level, bool IsHard)
{
    private const double HardestGrade = 8;
    private const double LeastEase = 55;

    /// <summary>Counts a page.</summary>
    public static LanguageReport Of(Language language, ModulePage page)
    {
        var count = TextCount.Of(page.Prose, language);
        var level = language switch
        {
            Language.English => ReadingLevel.Grade(count),
            Language.Spanish => ReadingLevel.Ease(count),
        };
        var isHard = language switch
        {
            Language.English => level > HardestGrade,
            Language.Spanish => level < LeastEase,
        };
        return new(language, count.Words, level, isHard);
    }
}

/// <summary>The questions of one topic. Each has words in every language: the checker sees to that.</summary>
/// <param name="Title">In the page's language.</param>
/// <param name="Questions">In the pool.</param>
/// <param name="Critical">Of these, critical ones.</param>
/// <param name="Accepted">Of these, such as a lead accepted as they read now.</param>
/// <param name="Placed">Of these, such as are asked only where certain snakes live.</param>
/// <param name="Drawn">How many a quiz draws.</param>
public sealed record TopicReport(string Title, int Questions, int Critical, int Accepted, int Placed, int Drawn)
{
    /// <summary>Counts a topic.</summary>
    public static TopicReport Of(Course course, string topic, IReadOnlyDictionary<string, QuestionReview> reviews, Language language)
    {
        var pool = course.Questions.Where(question => question.Topic == topic).ToList();
        return new(
            course.Words.TryGetValue(language, out var words) ? words.Topics.GetValueOrDefault(topic) ?? topic : topic,
            pool.Count,
            pool.Count(question => question.IsCritical),
            pool.Count(question => reviews.GetValueOrDefault(question.Id)?.Outcome == ReviewOutcome.Accepted),
            pool.Count(question => question.Snakes.Count > 0),
            course.Quiz.Blueprint.Where(row => row.Topic == topic).Sum(row => row.Questions));
    }
}

/// <summary>What teaches an objective and what asks for it.</summary>
/// <param name="Words">The objective in the page's language.</param>
/// <param name="Modules">Titles of the modules that teach it.</param>
/// <param name="Questions">How many ask for it.</param>
/// <param name="Steps">How many steps of checklists ask for it.</param>
public sealed record ObjectiveReport(string Words, IReadOnlyList<string> Modules, int Questions, int Steps)
{
    /// <summary>The report of one objective.</summary>
    public static ObjectiveReport Of(Course course, string objective, ObjectiveCoverage coverage, Language language) => new(
        course.Words.TryGetValue(language, out var words) ? words.Objectives.GetValueOrDefault(objective) ?? objective : objective,
        [.. course.Modules.Where(module => coverage.Modules.Contains(module.Id, StringComparer.Ordinal)).Select(module => ModuleReport.TitleOf(module, language))],
        coverage.Questions,
        coverage.Steps);
}
