using Training.Courses.Tests.Library;

namespace Training.Courses.Tests.Readability;

/// <summary>Every module is read by people who may have left school early, or who learned its language late.</summary>
public sealed class ShippedReadingLevelTests
{
    /// <summary>US school grade.</summary>
    private const double HardestEnglish = 8;

    /// <summary>From here on a text is "normal" on the INFLESZ scale (Barrio-Cantalejo and others 2008).</summary>
    private const double HardestSpanish = 55;

    /// <summary>
    /// Measured on 29 modules: at most 0.06 of a grade apart, and 98 of 100 different words alike. Spelling misses some words of any new page;
    /// two syllables in a hundred words are 0.24 of a grade, which decides nothing.
    /// </summary>
    private const double Tolerance = 0.25;

    private static readonly Dictionary<string, Module> All = ShippedCourses.Reading.Drafts
        .SelectMany(course => course.Modules.Select(module => (Name: $"{course.Id}/{module.Id}", Module: module)))
        .ToDictionary(module => module.Name, module => module.Module, StringComparer.Ordinal);

    private static readonly Lazy<ReferenceGrades> Reference =
        new(() => ReferenceGrades.Of(All.ToDictionary(module => module.Key, module => module.Value.Pages[Language.English].Prose)));

    public static TheoryData<string> Modules => [.. All.Keys];

    [Theory, MemberData(nameof(Modules))]
    public void English_asks_for_grade_eight_at_most(string module) => Assert.InRange(GradeOf(module), double.MinValue, HardestEnglish);

    [Theory, MemberData(nameof(Modules))]
    public void Spanish_is_at_least_as_easy_as_a_newspaper(string module)
    {
        var ease = ReadingLevel.Ease(TextCount.Of(All[module].Pages[Language.Spanish].Prose, Language.Spanish));

        Assert.NotNull(ease);
        Assert.InRange(ease.Value, HardestSpanish, double.MaxValue);
    }

    [Theory, MemberData(nameof(Modules))]
    public void A_dictionary_comes_to_the_same_grade(string module) =>
        Assert.InRange(GradeOf(module) - Reference.Value.Grades[module], -Tolerance, Tolerance);

    [Fact]
    public void A_dictionary_hears_as_many_syllables_in_97_of_100_words()
    {
        var other = Reference.Value.Syllables.Where(word => TextCount.SyllablesOf(word.Key, Language.English) != word.Value).Select(word => word.Key).ToList();

        Assert.True(other.Count * 100 <= Reference.Value.Syllables.Count * 3, string.Join(' ', other));
    }

    private static double GradeOf(string module)
    {
        var grade = ReadingLevel.Grade(TextCount.Of(All[module].Pages[Language.English].Prose, Language.English));

        Assert.NotNull(grade);
        return grade.Value;
    }
}
