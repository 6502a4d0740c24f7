using System.Globalization;
using System.Reflection;
using System.Resources;
using Training.Courses;
using Training.Web.Problems;

namespace Training.Web.Tests.Problems;

public sealed class ProblemTextTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-US");
    private static readonly CultureInfo Spanish = CultureInfo.GetCultureInfo("es-US");

    /// <summary>Every code constant of every class named …Problems in every library of ours.</summary>
    public static TheoryData<string> Codes => [.. Libraries()
        .SelectMany(library => library.GetExportedTypes())
        .Where(type => type.Name.EndsWith("Problems", StringComparison.Ordinal) && type is { IsAbstract: true, IsSealed: true })
        .SelectMany(type => type.GetFields(BindingFlags.Public | BindingFlags.Static))
        .Where(constant => constant.IsLiteral)
        .Select(constant => (string)constant.GetRawConstantValue()!)];

    [Theory, MemberData(nameof(Codes))]
    public void Every_code_has_a_sentence_and_a_mend_in_both_languages(string code)
    {
        // More arguments than any code has: a text that names one too many would throw.
        var problem = new Problem(code, new Place("awareness/course.yaml", 3), "a", "b", "c", "d");

        foreach (var text in new[] { ProblemText.Sentence(problem, English), ProblemText.Mend(problem, English) })
            Assert.EndsWith(".", text, StringComparison.Ordinal);
        Assert.False(ProblemText.Sentence(problem, English) == ProblemText.Sentence(problem, Spanish), "The sentence is the same in Spanish.");
        Assert.False(ProblemText.Mend(problem, English) == ProblemText.Mend(problem, Spanish), "The mend is the same in Spanish.");
    }

    [Fact]
    public void No_text_is_left_of_a_code_that_is_gone()
    {
        var texts = new ResourceManager(typeof(ProblemText)).GetResourceSet(CultureInfo.InvariantCulture, createIfNotExists: true, tryParents: false)!
            .Cast<System.Collections.DictionaryEntry>()
            .Select(text => ((string)text.Key).Replace(".mend", "", StringComparison.Ordinal))
            .Distinct(StringComparer.Ordinal);

        Assert.Empty(texts.Except(Codes.Select(row => row.Data), StringComparer.Ordinal));
    }

    [Fact]
    public void A_finding_reads_like_a_compilers()
    {
        var problem = new Problem(CourseProblems.TopicUnknown, new Place("awareness/questions.yaml", 12, "question silent-snake"), "bites");

        Assert.StartsWith(
            "awareness/questions.yaml:12: question silent-snake: The course has no topic “bites”. ",
            ProblemText.Line(problem, English),
            StringComparison.Ordinal);
    }

    private static IEnumerable<Assembly> Libraries() => Directory.EnumerateFiles(AppContext.BaseDirectory, "Training.*.dll")
        .Where(path => !path.EndsWith("Tests.dll", StringComparison.Ordinal))
        .Select(path => Assembly.Load(Path.GetFileNameWithoutExtension(path)));
}
