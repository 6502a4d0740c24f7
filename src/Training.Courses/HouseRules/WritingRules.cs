using System.Globalization;
using System.Text.RegularExpressions;

namespace Training.Courses;

/// <summary>The rules of docs/writing-questions.md that a program can see broken.</summary>
internal static partial class WritingRules
{
    /// <summary>Of four options the longest is right in one question of four by chance; in fewer questions than this, a habit cannot be told from chance.</summary>
    private const int FewestForHabit = 12;

    /// <summary>How many times as long as the longest wrong answer the right one may be. Short answers vary by a word, so they are let off.</summary>
    private const int MostTimesAsLong = 2;

    private const int ShortAnswer = 40;

    public static void Check(Course course, ReadFolder folder, ICollection<Problem> problems)
    {
        var lines = folder.Questions.ToDictionary(question => question.Id, question => question.Line, StringComparer.Ordinal);
        foreach (var language in LanguageTags.All)
        {
            var seen = new Dictionary<string, string>(StringComparer.Ordinal);
            foreach (var question in course.Questions)
            {
                CheckOne(question, question.Words[language], language, Report);
                var asked = question.Words[language];
                var same = asked.StemHtml + string.Concat(asked.OptionHtml.Values.Order(StringComparer.Ordinal));
                if (!seen.TryAdd(same, question.Id)) Report(question, CourseProblems.QuestionSame, seen[same], language.Tag());
            }

            CheckHabit(course, language, problems);
        }

        void Report(Question question, string code, params IReadOnlyList<string> arguments) =>
            problems.Add(new(code, new($"{course.Id}/questions.yaml", lines[question.Id], $"question {question.Id}"), arguments));
    }

    private delegate void Reporting(Question question, string code, params IReadOnlyList<string> arguments);

    private static void CheckOne(Question question, QuestionWords words, Language language, Reporting report)
    {
        foreach (var (option, html) in words.OptionHtml)
        {
            if (CatchAll().IsMatch(html)) report(question, CourseProblems.OptionCatchAll, option, language.Tag());
        }

        if (question.Key is not QuestionKey.One key) return;
        if (Negative().IsMatch(words.StemHtml)) report(question, CourseProblems.StemNegative, language.Tag());
        var right = LengthOf(words.OptionHtml[key.OptionId]);
        var longestWrong = words.OptionHtml.Where(option => option.Key != key.OptionId).Max(option => LengthOf(option.Value));
        if (right > ShortAnswer && right > MostTimesAsLong * longestWrong) report(question, CourseProblems.OptionLength, key.OptionId, language.Tag());
    }

    private static void CheckHabit(Course course, Language language, ICollection<Problem> problems)
    {
        var ones = course.Questions.Where(question => question.Key is QuestionKey.One).ToList();
        var longest = ones.Count(question =>
            question.Words[language].OptionHtml.MaxBy(option => LengthOf(option.Value)).Key == ((QuestionKey.One)question.Key).OptionId);
        if (ones.Count < FewestForHabit || longest * 2 <= ones.Count) return;
        problems.Add(new(
            CourseProblems.LongestRight,
            new($"{course.Id}/questions.yaml"),
            longest.ToString(CultureInfo.InvariantCulture),
            ones.Count.ToString(CultureInfo.InvariantCulture),
            language.Tag()));
    }

    private static int LengthOf(string html) => Tag().Replace(html, "").Length;

    [GeneratedRegex("<[^>]*>", RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex Tag();

    [GeneratedRegex(@"\b(all|none|both|neither) of (the|these|them)\b.*\babove\b|\bnone of these\b|\ball of these\b|todas las anteriores|ninguna de (las anteriores|estas)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex CatchAll();

    [GeneratedRegex(@"\bwhich (one )?(of (these|them) )?(is|does) not\b|\bexcept\b|\bexcepto\b|\bcuál (de (estas|ellas)[^?]*)?no (es|debe|se)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1_000)]
    private static partial Regex Negative();
}
