using System.Text.RegularExpressions;

namespace Training.Courses.Tests.Library;

/// <summary>What the shipped pools are held to beyond the findings of the checker, which every course is held to.</summary>
public sealed partial class WritingRulesTests
{
    [Fact]
    public void No_question_makes_tube_restraint_a_skill() => Assert.Empty(
        from course in ShippedCourses.Reading.Courses
        from question in course.Questions
        from words in question.Words.Values
        where Tube().IsMatch(words.StemHtml)
        select $"{course.Id} {question.Id}: {words.StemHtml}");

    [GeneratedRegex(@"\b(restrain|tube it|into the tube|en el tubo|inmoviliz)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Tube();
}
