using System.Diagnostics;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Training.Courses;

/// <summary>Tells whether two texts of a scheme have the same rules.</summary>
/// <remarks>Rule: docs/rules.md, "When the rules of a scheme change".</remarks>
public static class SchemeRules
{
    /// <summary>How many hexadecimal digits a mark has.</summary>
    public const int MarkLength = 12;

    /// <summary>
    /// Twelve hexadecimal digits made from the rules: kind, separation, terms, what grant and renewal ask, and the pass marks of the course's quiz, its
    /// topics and its checklists. Words, questions, steps and dates are not rules. Two courses with the same mark have the same rules.
    /// </summary>
    public static string MarkOf(Course course)
    {
        var scheme = course.Scheme;
        string[] rules =
        [
            $"{scheme.Kind} {scheme.Separation} {scheme.Terms.Validity} {scheme.Terms.Window} {scheme.Terms.Grace}",
            .. scheme.Grant.Select(asked => "grant " + Text(asked)),
            .. scheme.Renewal.Select(asked => "renewal " + Text(asked)),
            $"quiz {course.Quiz.Id} {Number(course.Quiz.PassPercent)}",
            .. course.Quiz.Blueprint.Select(row => $"topic {row.Topic} {Number(row.PassPercent)}"),
            .. course.Checklists.Select(list => $"checklist {list.Id} {Number(list.PassPercent)}"),
        ];
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', rules))))[..MarkLength];
    }

    private static string Text(Requirement requirement) => requirement switch
    {
        Requirement.PassedQuiz quiz => $"quiz {quiz.QuizId} {quiz.GreatestAge}",
        Requirement.PassedPractical practical => $"checklist {practical.ChecklistId} {practical.Subject} {practical.GreatestAge}",
        Requirement.Practised practised => $"practised {practised.ChecklistId} {Number(practised.Times)} {practised.Within}",
        Requirement.Holds holds => $"holds {holds.SchemeId}",
        _ => throw new UnreachableException(),
    };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
