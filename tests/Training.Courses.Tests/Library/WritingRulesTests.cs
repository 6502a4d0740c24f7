using System.Text.RegularExpressions;

namespace Training.Courses.Tests.Library;

/// <summary>The rules of docs/writing-questions.md that a program can hold the shipped pools to.</summary>
public sealed partial class WritingRulesTests
{
    public static TheoryData<string> CourseIds => [.. ShippedCourses.Reading.Courses.Select(course => course.Id)];

    private static Course Of(string courseId) => ShippedCourses.Reading.Courses.Single(course => course.Id == courseId);

    private static IEnumerable<(Question Question, Language Language, QuestionWords Words)> Words(Course course) =>
        from question in course.Questions
        from words in question.Words
        select (question, words.Key, words.Value);

    [Theory, MemberData(nameof(CourseIds))]
    public void No_option_stands_for_all_or_none_of_the_others(string courseId) => Assert.Empty(
        Words(Of(courseId)).SelectMany(one => one.Words.OptionHtml.Values.Where(option => Above().IsMatch(option)).Select(option => $"{one.Question.Id}: {option}")));

    [Theory, MemberData(nameof(CourseIds))]
    public void Nobody_is_asked_for_the_one_answer_that_is_not_so(string courseId) => Assert.Empty(
        Words(Of(courseId)).Where(one => one.Question.Key is QuestionKey.One && Negative().IsMatch(one.Words.StemHtml)).Select(one => $"{one.Question.Id}: {one.Words.StemHtml}"));

    [Theory, MemberData(nameof(CourseIds))]
    public void No_question_makes_tube_restraint_a_skill(string courseId) => Assert.Empty(
        Words(Of(courseId)).Where(one => Tube().IsMatch(one.Words.StemHtml)).Select(one => $"{one.Question.Id}: {one.Words.StemHtml}"));

    /// <summary>Of four options the longest would be right in one question of four by chance; a habit shows above a half.</summary>
    [Theory, MemberData(nameof(CourseIds))]
    public void The_right_answer_is_not_the_longest_as_a_habit(string courseId)
    {
        foreach (var language in LanguageTags.All)
        {
            var ones = Words(Of(courseId)).Where(one => one.Language == language && one.Question.Key is QuestionKey.One).ToList();
            var longest = ones.Count(one => one.Words.OptionHtml.MaxBy(option => option.Value.Length).Key == ((QuestionKey.One)one.Question.Key).OptionId);

            Assert.True(longest * 2 <= ones.Count, $"{courseId}, {language}: the longest is right in {longest} of {ones.Count}");
        }
    }

    [Theory, MemberData(nameof(CourseIds))]
    public void No_two_questions_ask_the_same(string courseId) =>
        Assert.All(LanguageTags.All, language => Assert.Empty(
            Words(Of(courseId)).Where(one => one.Language == language).GroupBy(one => one.Words.StemHtml + string.Concat(one.Words.OptionHtml.Values.Order(StringComparer.Ordinal)))
                .Where(group => group.Count() > 1).Select(group => string.Join(", ", group.Select(one => one.Question.Id)))));

    [GeneratedRegex(@"\b(all|none|both|neither) of (the|these|them)\b.*\babove\b|\bnone of these\b|\ball of these\b|todas las anteriores|ninguna de (las anteriores|estas)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Above();

    [GeneratedRegex(@"\bwhich (one )?(of (these|them) )?(is|does) not\b|\bexcept\b|\bexcepto\b|\bcuál (de (estas|ellas)[^?]*)?no (es|debe|se)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Negative();

    [GeneratedRegex(@"\b(restrain|tube it|into the tube|en el tubo|inmoviliz)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Tube();
}
