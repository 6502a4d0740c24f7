using System.Diagnostics;
using Training.Courses;

namespace Training.Scoring;

/// <summary>Finds what makes one answer impossible for its question, when it is given as when it is graded.</summary>
/// <remarks>Rule: docs/rules.md, "Grading a sitting". A wrong answer is no problem, it is wrong.</remarks>
public static class AnswerCheck
{
    /// <summary>Adds <see cref="SittingProblems.AnswerShape"/>, <see cref="SittingProblems.OptionUnknown"/> and <see cref="SittingProblems.OptionRepeated"/>.</summary>
    /// <param name="question">The question that was shown.</param>
    /// <param name="answer">An answer to that question.</param>
    /// <param name="problems">Receives all of them.</param>
    public static void Run(Question question, Answer answer, ICollection<Problem> problems)
    {
        if (!FitsType(question.Key, answer)) Report(SittingProblems.AnswerShape);
        if (question.Key is QuestionKey.Number) return;
        foreach (var unknown in answer.OptionIds.Except(Offered(question), StringComparer.Ordinal)) Report(SittingProblems.OptionUnknown, unknown);
        foreach (var repeated in Repeated(Named(question.Key, answer))) Report(SittingProblems.OptionRepeated, repeated);

        void Report(string code, params string[] more) => problems.Add(new(code, Place.Of($"question {question.Id}"), [question.Id, .. more]));
    }

    private static IEnumerable<string> Offered(Question question) => question.Key is QuestionKey.Match match
        ? question.OptionIds.SelectMany(option => match.MatchIds, (option, match) => new MatchPair(option, match).ToString())
        : question.OptionIds;

    // Options and matches have different ids, so that both sides of the pairs can be looked at together.
    private static IEnumerable<string> Named(QuestionKey key, Answer answer) => key is QuestionKey.Match
        ? answer.OptionIds.Select(MatchPair.Find).OfType<MatchPair>().SelectMany(pair => new[] { pair.OptionId, pair.MatchId })
        : answer.OptionIds;

    internal static IEnumerable<string> Repeated(IEnumerable<string> ids) =>
        ids.GroupBy(id => id, StringComparer.Ordinal).Where(same => same.Skip(1).Any()).Select(same => same.Key);

    private static bool FitsType(QuestionKey key, Answer answer) => key switch
    {
        QuestionKey.One => answer.Number is null && answer.OptionIds.Count == 1,
        QuestionKey.Several => answer.Number is null,
        QuestionKey.Order order => answer.Number is null && answer.OptionIds.Count == order.OptionIds.Count,
        QuestionKey.Number => answer.Number is not null && answer.OptionIds.Count == 0,
        QuestionKey.Match match => answer.Number is null && answer.OptionIds.Count == match.Pairs.Count,
        QuestionKey.Spot => answer.Number is null && answer.OptionIds.Count == 1,
        _ => throw new UnreachableException(),
    };
}
