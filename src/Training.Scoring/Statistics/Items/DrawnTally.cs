using System.Runtime.InteropServices;

namespace Training.Scoring;

/// <summary>One question that a sitting asked, and whether it was answered right; blank and late count as not right.</summary>
public readonly record struct DrawnScore(string QuestionId, bool IsRight);

/// <summary>What sittings with different questions say about one question.</summary>
/// <param name="QuestionId">Which question.</param>
/// <param name="Asked">In how many sittings it was asked.</param>
/// <param name="Right">In how many of them it was answered right.</param>
/// <param name="Difficulty">Share right, 0–1.</param>
/// <param name="Discrimination">Correlation of right or wrong with the share right of the other questions in the same sitting.</param>
/// <param name="Exposure">Share of all sittings in which it was asked, 0–1.</param>
public sealed record DrawnResult(
    string QuestionId, long Asked, long Right, Estimate<double> Difficulty, Estimate<double> Discrimination, Estimate<double> Exposure);

/// <summary>Takes sittings in which people saw different questions, one at a time; memory grows with the pool, never with the sittings.</summary>
/// <remarks>
/// <para>The discrimination is the item-rest correlation (Henrysson, Psychometrika 28, 1963) against the share, not the number, right of the
/// other questions, because a question that was not asked is neither right nor wrong. The drawn forms are taken as equally hard, which a
/// random draw by one blueprint makes true on average; what they differ by is noise and brings the correlation nearer to zero.</para>
/// <para>A sitting with a single question counts for difficulty and exposure only.</para>
/// </remarks>
public sealed class DrawnTally
{
    private readonly Dictionary<string, Sums> _questions = new(StringComparer.Ordinal);

    /// <summary>Sittings added so far.</summary>
    public long Sittings { get; private set; }

    /// <summary>Adds one sitting.</summary>
    /// <param name="asked">Every question that was asked, each once.</param>
    public void Add(ReadOnlySpan<DrawnScore> asked)
    {
        Sittings++;
        var right = 0;
        foreach (var question in asked)
        {
            right += question.IsRight ? 1 : 0;
        }

        foreach (var (id, isRight) in asked)
        {
            ref var question = ref CollectionsMarshal.GetValueRefOrAddDefault(_questions, id, out _);
            var score = isRight ? 1 : 0;
            question.Asked++;
            question.Right += score;
            if (asked.Length > 1) question.Scores.Add(score, (right - score) / (asked.Length - 1.0));
        }
    }

    /// <summary>One result for each question asked so far, by question id.</summary>
    public IReadOnlyList<DrawnResult> Results() => [.. _questions.Keys.Order(StringComparer.Ordinal).Select(Result)];

    /// <summary>The result of one question; one that was never asked has an exposure of 0 and no other statistic.</summary>
    public DrawnResult Result(string questionId)
    {
        var question = _questions.GetValueOrDefault(questionId);
        return new(
            questionId,
            question.Asked,
            question.Right,
            question.Asked == 0 ? Obstacle.NoAnswers : (double)question.Right / question.Asked,
            question is { Asked: > 0, Scores.Item.Count: 0 } ? Obstacle.TooFewItems : question.Scores.WithRest,
            Sittings == 0 ? Obstacle.NoAnswers : (double)question.Asked / Sittings);
    }

    private struct Sums
    {
        public long Asked;
        public long Right;
        public PairedMoments Scores;
    }
}
