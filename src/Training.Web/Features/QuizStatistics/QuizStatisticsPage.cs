using System.Globalization;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Scoring;
using Training.Web.Features.Statistics;

namespace Training.Web.Features.QuizStatistics;

/// <summary>What the page of a quiz's statistics is given.</summary>
/// <param name="Title">What the paper calls the course.</param>
/// <param name="Figures">All figures.</param>
/// <param name="Lines">The questions in the order of the pool, with their topic's title.</param>
/// <param name="Scores">The picture of the scores; null without sittings.</param>
/// <param name="Questions">The picture of the questions; null where no question has both values.</param>
public sealed record QuizStatisticsPage(
    string Title, QuizFigures Figures, IReadOnlyList<QuestionLine> Lines, ScoreChart? Scores, DotChart? Questions)
{
    /// <summary>Questions to look at, the most urgent first; their place here is their number in the picture.</summary>
    public IReadOnlyList<QuestionLine> ToLookAt => Urgent(Lines);

    /// <summary>The page in one language.</summary>
    public static QuizStatisticsPage Of(QuizFigures figures, Language language, IStringLocalizer<QuizStatisticsText> text)
    {
        var (course, analysis) = (figures.Course, figures.Analysis);
        var places = course.Questions.Select((question, place) => (question.Id, place)).ToDictionary(one => one.Id, one => one.place, StringComparer.Ordinal);
        IReadOnlyList<QuestionLine> lines =
        [
            .. analysis.Questions.OrderBy(question => places.GetValueOrDefault(question.QuestionId, int.MaxValue)).ThenByDescending(question => question.Asked)
                .Select(question => QuestionLine.Of(question, figures, language)),
        ];
        return new(
            course.Scheme.Words[language].Title,
            figures,
            lines,
            analysis.Scores.People == 0
                ? null
                : ScoreChart.Of(
                    analysis.Scores, analysis.PassMark, analysis.Precision.StandardError,
                    text["ScoresLabel", analysis.Scores.People, analysis.PassMark, analysis.Scores.Items], text["CutAt", analysis.PassMark]),
            PictureOf(lines, text));
    }

    private static IReadOnlyList<QuestionLine> Urgent(IEnumerable<QuestionLine> lines) =>
        [.. lines.Where(line => line.IsToLookAt).OrderBy(line => line.Analysis.Flags.Min(FlagWords.UrgencyOf))];

    private static DotChart? PictureOf(IReadOnlyList<QuestionLine> lines, IStringLocalizer<QuizStatisticsText> text)
    {
        var numbers = Urgent(lines).Select((line, place) => (line, place)).ToDictionary(one => one.line, one => one.place + 1);
        var points = new List<(double Share, double Correlation, string? Name)>();
        foreach (var line in lines)
        {
            if (line.Analysis is { Difficulty: Estimate<double>.Known(var share), Discrimination: Estimate<double>.Known(var correlation) }
                && line.Analysis.Asked >= ItemFlags.FewestAnswers)
            {
                points.Add((share, correlation, numbers.TryGetValue(line, out var number) ? number.ToString(CultureInfo.CurrentCulture) : null));
            }
        }

        return points.Count == 0
            ? null
            : DotChart.Of(points, text["QuestionsLabel", points.Count, points.Count(point => point.Name is not null)], text["AxisShare"], text["AxisTell"]);
    }
}

/// <summary>One text of a question among a quiz's statistics.</summary>
/// <param name="Analysis">Its figures.</param>
/// <param name="Question">As it was asked; null where that text is not known.</param>
/// <param name="Topic">Title of its topic, or empty.</param>
/// <param name="IsOld">The pool reads otherwise by now.</param>
public sealed record QuestionLine(QuestionAnalysis Analysis, Question? Question, string Topic, bool IsOld)
{
    /// <summary>Whether a flag asks somebody to look.</summary>
    public bool IsToLookAt => Analysis.Flags.Any(FlagWords.IsToLookAt);

    /// <summary>The line of one text.</summary>
    public static QuestionLine Of(QuestionAnalysis analysed, QuizFigures figures, Language language)
    {
        var question = figures.Find(analysed);
        return new(
            analysed,
            question,
            question is null ? "" : figures.Course.Words[language].Topics.GetValueOrDefault(question.Topic, question.Topic),
            figures.Course.Questions.All(present => present.Id != analysed.QuestionId || present.Version != analysed.Version));
    }
}

/// <summary>What the page of one question's statistics is given.</summary>
/// <param name="CourseId">For addresses.</param>
/// <param name="CourseTitle">What the paper calls the course.</param>
/// <param name="QuestionId">Which question.</param>
/// <param name="Lines">One for each of its texts, the present one first.</param>
public sealed record QuestionStatisticsPage(string CourseId, string CourseTitle, string QuestionId, IReadOnlyList<QuestionLine> Lines);
