using System.Text.RegularExpressions;

namespace Training.Courses.Tests.Library;

/// <summary>What the shipped pools and checklists are held to beyond the findings of the checker, which every course is held to.</summary>
public sealed partial class WritingRulesTests
{
    private static readonly IReadOnlyList<Course> Courses = ShippedCourses.Reading.Courses;

    /// <summary>A tube may be named as what a worker leaves alone, so answers that are wrong are not looked at.</summary>
    [Fact]
    public void No_question_makes_tube_restraint_a_skill() => Assert.Empty(
        from course in Courses
        from question in course.Questions
        from words in question.Words.Values
        from text in RightOptions(question).Select(option => words.OptionHtml[option]).Append(words.StemHtml)
        where Tube().IsMatch(text)
        select $"{course.Id} {question.Id}: {text}");

    [Fact]
    public void No_step_makes_tube_restraint_a_skill() => Assert.Empty(
        from checklist in Courses.SelectMany(course => course.Checklists)
        from words in checklist.Words.Values
        from text in words.StepHtml.Values.Append(words.InstructionsHtml)
        where Tube().IsMatch(text)
        select $"{checklist.Id}: {text}");

    [Fact]
    public void No_question_and_no_step_rests_on_a_fact_about_tubes()
    {
        var aboutTubes = ShippedCourses.Reading.Facts.Where(fact => Tube().IsMatch(fact.Statement)).Select(fact => fact.Id).ToList();

        Assert.NotEmpty(aboutTubes);
        Assert.DoesNotContain(Courses.SelectMany(course => course.Questions), question => aboutTubes.Contains(question.FactId));
        Assert.DoesNotContain(Courses.SelectMany(course => course.Checklists).SelectMany(checklist => checklist.Steps), step => aboutTubes.Contains(step.FactId));
    }

    /// <summary>Whoever hurries near a snake is bitten; the candidate hears so before the start.</summary>
    [Fact]
    public void No_step_of_handling_is_timed()
    {
        foreach (var (language, words) in Courses.SelectMany(course => course.Checklists).SelectMany(checklist => checklist.Words))
        {
            Assert.Matches(language == Language.English ? "no step (is timed|of handling)" : "ningún paso (lleva tiempo límite|del manejo)", words.InstructionsHtml.ReplaceLineEndings(" "));
            Assert.All(words.StepHtml.Values.Concat(words.ReasonHtml.Values), text => Assert.DoesNotMatch(Timed(), text));
        }
    }

    /// <summary>A step on paper says what the screen said, values of guidance included.</summary>
    [Fact]
    public void Each_step_reads_the_same_without_its_markup()
    {
        var steps = Courses.SelectMany(course => course.Checklists).SelectMany(checklist => checklist.Words.Values).SelectMany(words => words.StepHtml.Select(
            step => (Shown: System.Net.WebUtility.HtmlDecode(Tag().Replace(step.Value, "")).ReplaceLineEndings(" "), Printed: words.StepText[step.Key]))).ToList();

        Assert.Contains(steps, step => step.Printed.Contains("911", StringComparison.Ordinal));
        Assert.All(steps, step => Assert.Equal(step.Shown, step.Printed));
    }

    private static IEnumerable<string> RightOptions(Question question) => question.Key switch
    {
        QuestionKey.One one => [one.OptionId],
        QuestionKey.Several several => several.OptionIds,
        QuestionKey.Spot spot => [spot.RegionId],
        QuestionKey.Order or QuestionKey.Match => question.OptionIds,
        _ => [],
    };

    [GeneratedRegex("<[^>]*>", RegexOptions.None, 1000)]
    private static partial Regex Tag();

    // In Spanish a tube is also a pipe that lies about; only what is put into one counts.
    [GeneratedRegex(@"\b(restrain|tubes?\b|inmoviliz|(en|dentro de|hacia) (el|un|los|otro) tubos?\b)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Tube();

    // "A second bite" is no time; "seconds" are.
    [GeneratedRegex(@"\b(seconds|minutes?|timed|timer|time limit|stopwatch|against the clock|segundos|minutos?|cronómetr\w+|contra reloj|tiempo límite)\b", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Timed();
}
