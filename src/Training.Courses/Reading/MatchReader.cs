using System.Globalization;

namespace Training.Courses;

/// <summary>Reads what a question of pairs can be matched to, and its key.</summary>
internal static class MatchReader
{
    public static QuestionKey.Match Read(Fields fields, List<string> options)
    {
        var matches = fields.IdList("matches", fields.Required("matches"));
        // The two lists are shown and kept side by side: an id says by itself which list it is of.
        foreach (var both in matches.Intersect(options, StringComparer.Ordinal)) fields.Report(CourseProblems.IdTwice, fields.LineOf("matches"), both);
        if (fields.Has("matches") && matches.Count < options.Count) fields.Report(CourseProblems.MatchCount, fields.LineOf("matches"), Plain(matches.Count), Plain(options.Count));
        if (fields.Required("right", CourseProblems.KeyMissing) is null || fields.Map("right") is not { } right) return new(matches, []);
        var pairs = options.ConvertAll(option => new MatchPair(option, right.Text(option)));
        right.Finish();
        foreach (var pair in pairs) QuestionsReader.CheckOption(fields, pair.MatchId, matches, right.LineOf(pair.OptionId));
        foreach (var twice in pairs.Where(pair => pair.MatchId.Length > 0).GroupBy(pair => pair.MatchId, StringComparer.Ordinal).Where(same => same.Skip(1).Any()))
        {
            fields.Report(CourseProblems.MatchTwice, right.LineOf(twice.Last().OptionId), twice.Key);
        }

        return new(matches, pairs);
    }

    private static string Plain(int count) => count.ToString(CultureInfo.InvariantCulture);
}
