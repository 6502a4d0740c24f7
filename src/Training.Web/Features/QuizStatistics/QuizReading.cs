using Training.Courses;
using Training.Records;
using Training.Scoring;
using Training.Web.Shelf;

namespace Training.Web.Features.QuizStatistics;

/// <summary>Reads the sittings of a quiz and works out its statistics.</summary>
public sealed class QuizReading(RecordsContext records, CoursesByHash courses)
{
    /// <summary>The statistics of a course's quiz, of the sittings chosen.</summary>
    /// <param name="course">As it serves.</param>
    /// <param name="choice">Which sittings.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public async Task<QuizFigures> ReadAsync(Course course, StatisticsChoice choice, CancellationToken cancellation)
    {
        var texts = await ComparableTextsAsync(course, cancellation);
        var chosen = texts.Where(one => string.IsNullOrEmpty(choice.Text) || one.Text.CourseHash.StartsWith(choice.Text, StringComparison.Ordinal)).ToList();
        var asked = await records.AskedAsync(course, cancellation);
        var tally = new QuizTally(course.Quiz, [.. course.Questions, .. chosen.SelectMany(one => one.Course.Questions)]);
        await foreach (var sitting in records.AnsweredSittingsAsync(course.Quiz.Id, [.. chosen.Select(one => one.Text.CourseHash)], cancellation))
        {
            if (choice.Language is null || sitting.Language == choice.Language) tally.Add(sitting);
        }

        return new(
            course,
            choice,
            [.. texts.Select(one => one.Text)],
            [.. chosen.Select(one => one.Course)],
            tally.Analyse(),
            FormChances.PassByGuessing(course.Quiz, asked.Questions),
            FormChances.Overlap(course.Quiz, asked.Questions));
    }

    /// <summary>
    /// The texts that sittings were drawn from and that can be looked at together: the same blueprint and the same cut as the text that serves.
    /// </summary>
    public async Task<IReadOnlyList<(DrawnText Text, Course Course)>> ComparableTextsAsync(Course course, CancellationToken cancellation)
    {
        var comparable = new List<(DrawnText, Course)>();
        foreach (var text in await records.DrawnTextsAsync(course.Quiz.Id, cancellation))
        {
            if (await courses.FindAsync(records, course.Id, text.CourseHash, cancellation) is { } drawn && IsAlike(course.Quiz, drawn.Quiz))
                comparable.Add((text, drawn));
        }

        return comparable;
    }

    private static bool IsAlike(Quiz one, Quiz other) => one.PassPercent == other.PassPercent && one.Blueprint.SequenceEqual(other.Blueprint);
}

/// <summary>What a quiz's pages are made from.</summary>
/// <param name="Course">As it serves.</param>
/// <param name="Choice">Which sittings were chosen.</param>
/// <param name="Texts">Texts to choose from, the newest first.</param>
/// <param name="Chosen">The courses of the texts that were looked at.</param>
/// <param name="Analysis">What the sittings say.</param>
/// <param name="ByGuessing">Greatest chance to pass without knowing anything.</param>
/// <param name="Overlap">Average share of questions that two draws share.</param>
public sealed record QuizFigures(
    Course Course,
    StatisticsChoice Choice,
    IReadOnlyList<DrawnText> Texts,
    IReadOnlyList<Course> Chosen,
    QuizAnalysis Analysis,
    Estimate<double> ByGuessing,
    Estimate<double> Overlap)
{
    /// <summary>The question of a text that was asked, as it was asked; null where that text is not among those chosen.</summary>
    public Question? Find(QuestionAnalysis analysed) =>
        Chosen.Prepend(Course).SelectMany(course => course.Questions)
            .FirstOrDefault(question => question.Id == analysed.QuestionId && question.Version == analysed.Version);
}
