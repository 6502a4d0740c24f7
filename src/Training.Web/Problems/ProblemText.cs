using System.Globalization;
using System.Resources;
using Training.Courses;

namespace Training.Web.Problems;

/// <summary>Puts a <see cref="Problem"/> in words: a sentence that says what is wrong, and the mend.</summary>
/// <remarks>Texts: ProblemText.resx and ProblemText.es.resx, two a code. A test walks every code constant there is.</remarks>
public sealed class ProblemText
{
    private static readonly ResourceManager Texts = new(typeof(ProblemText));

    private ProblemText()
    {
    }

    /// <summary>What is wrong, in <paramref name="culture"/>.</summary>
    public static string Sentence(Problem problem, CultureInfo culture) => Fill(problem.Code, problem, culture);

    /// <summary>What to do about it, in <paramref name="culture"/>.</summary>
    public static string Mend(Problem problem, CultureInfo culture) => Fill($"{problem.Code}.mend", problem, culture);

    /// <summary>One line as a compiler writes it: <c>awareness/course.yaml:12: sentence mend</c>.</summary>
    public static string Line(Problem problem, CultureInfo culture)
    {
        var place = problem.Place.File is null ? problem.Place.Part
            : problem.Place.Line is { } line ? string.Create(CultureInfo.InvariantCulture, $"{problem.Place.File}:{line}")
            : problem.Place.File;
        var part = problem.Place.File is not null && problem.Place.Part is not null ? $"{problem.Place.Part}: " : "";
        return $"{place}: {part}{Sentence(problem, culture)} {Mend(problem, culture)}";
    }

    private static string Fill(string key, Problem problem, CultureInfo culture)
    {
        var text = Texts.GetString(key, culture) ?? throw new InvalidOperationException($"ProblemText has no {key}.");
        return string.Format(culture, text, [.. problem.Arguments]);
    }
}
