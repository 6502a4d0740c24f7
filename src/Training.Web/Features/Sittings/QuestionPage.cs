using System.Globalization;
using Training.Courses;
using Training.Records;
using Training.Scoring;

namespace Training.Web.Features.Sittings;

/// <summary>What the page of one question is given.</summary>
/// <param name="SittingId">For addresses.</param>
/// <param name="CourseTitle">What the paper calls the course.</param>
/// <param name="Number">Place in the order shown, from 1.</param>
/// <param name="Count">Of how many.</param>
/// <param name="Asked">The question.</param>
/// <param name="Kept">The answer that is kept for it, or null.</param>
/// <param name="KeptBefore">The answer that was just kept for another question, or null.</param>
/// <param name="EndsAt">When answers stop counting, in the zone of the sitting; null where nothing is timed.</param>
public sealed record QuestionPage(
    Guid SittingId, string CourseTitle, int Number, int Count, ShownQuestion Asked, KeptLine? Kept, KeptLine? KeptBefore, DateTimeOffset? EndsAt)
{
    /// <summary>What the page posts back as <see cref="AnswerForm.Seen"/>.</summary>
    public string Seen => Kept?.SavedAt.ToUnixTimeMilliseconds().ToString(CultureInfo.InvariantCulture) ?? "";

    /// <summary>The page of a question.</summary>
    /// <param name="course">The snapshot of the draw.</param>
    /// <param name="sitting">The sitting.</param>
    /// <param name="number">Which question, from 1; not more than were drawn.</param>
    /// <param name="language">In which language.</param>
    /// <param name="posted">What was posted and could not be kept, with why; null to show what is kept.</param>
    /// <param name="keptBefore">Number of the question that was just answered, or null.</param>
    public static QuestionPage Of(
        Course course, KeptSitting sitting, int number, Language language, (AnswerForm Form, AnswerFault Fault)? posted, int? keptBefore)
    {
        var drawn = sitting.Draw.Questions[number - 1];
        var question = course.Questions.Single(one => one.Id == drawn.QuestionId);
        var last = sitting.FindLast(question.Id);
        var endsAt = TimeLimit.EndsAt(course.Quiz, sitting.StartedAt);
        return new(
            sitting.Id,
            course.Scheme.Words[language].Title,
            number,
            sitting.Draw.Questions.Count,
            posted is { } refused
                ? ShownQuestion.Of(question, drawn, language, refused.Form, refused.Fault)
                : ShownQuestion.Of(question, drawn, language, AnswerForm.Of(question, last?.Answer)),
            KeptLine.Find(sitting, number),
            keptBefore is { } before && before != number ? KeptLine.Find(sitting, before) : null,
            endsAt is { } end ? TimeZoneInfo.ConvertTimeBySystemTimeZoneId(end, sitting.Zone) : null);
    }
}

/// <summary>What is kept for one question of a sitting.</summary>
/// <param name="Number">Place of the question, from 1.</param>
/// <param name="SavedAt">In the zone of the sitting.</param>
/// <param name="IsLate">Whether it came after the time limit.</param>
/// <param name="HasOneInTime">Whether another answer came in time, which counts then.</param>
public sealed record KeptLine(int Number, DateTimeOffset SavedAt, bool IsLate, bool HasOneInTime)
{
    /// <summary>The last answer to the question of that number; null where none is kept or there is no such question.</summary>
    public static KeptLine? Find(KeptSitting sitting, int number)
    {
        if (number < 1 || number > sitting.Draw.Questions.Count) return null;
        var questionId = sitting.Draw.Questions[number - 1].QuestionId;
        return sitting.FindLast(questionId) is { } last
            ? new(number, TimeZoneInfo.ConvertTimeBySystemTimeZoneId(last.Answer.SavedAt, sitting.Zone), last.IsLate,
                sitting.FindCounting(questionId) is { IsLate: false })
            : null;
    }
}
