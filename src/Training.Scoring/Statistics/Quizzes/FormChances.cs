using Training.Courses;

namespace Training.Scoring;

/// <summary>What chance alone does to a drawn form: who knows nothing and passes, and what two draws have in common.</summary>
/// <remarks>docs/scoring.md, "Chance". Formulas: <see cref="Guessing"/> and <see cref="DrawChances"/>.</remarks>
public static class FormChances
{
    /// <summary>
    /// Greatest chance of passing for somebody who ticks at random: of all draws, the one whose questions are easiest to hit. Points alone and
    /// every critical question; minima of topics could only lower it.
    /// </summary>
    /// <param name="quiz">Blueprint and cut.</param>
    /// <param name="pool">What can be drawn.</param>
    public static Estimate<double> PassByGuessing(Quiz quiz, IReadOnlyList<Question> pool)
    {
        var (critical, other) = (new List<int>(), new List<int>());
        foreach (var row in quiz.Blueprint)
        {
            critical.AddRange(EasiestToHit(pool, row.Topic, isCritical: true, row.Critical));
            other.AddRange(EasiestToHit(pool, row.Topic, isCritical: false, row.Questions - row.Critical));
        }

        var items = quiz.Blueprint.Sum(row => row.Questions);
        if (critical.Count + other.Count < items || items == 0) return Obstacle.PoolTooSmall;
        var mark = PassMarks.OfPercent(quiz.PassPercent, items);
        var guessed = other.GroupBy(ways => ways).Select(group => new GuessedItems(group.Key, group.Count())).ToList();
        return critical.Aggregate(1.0, (chance, ways) => chance / ways) * Guessing.ChanceToPass(guessed, critical.Count, mark);
    }

    /// <summary>Average share of questions that two independent draws have in common, 0–1.</summary>
    /// <param name="quiz">Its blueprint.</param>
    /// <param name="pool">What can be drawn.</param>
    public static Estimate<double> Overlap(Quiz quiz, IReadOnlyList<Question> pool)
    {
        var items = quiz.Blueprint.Sum(row => row.Questions);
        if (items == 0) return Obstacle.TooFewItems;
        Estimate<double> common = 0.0;
        foreach (var row in quiz.Blueprint)
        {
            common = Plus(common, Shared(pool, row.Topic, isCritical: true, row.Critical));
            common = Plus(common, Shared(pool, row.Topic, isCritical: false, row.Questions - row.Critical));
        }

        return common.Then<double>(shared => shared / items);
    }

    /// <summary>How many answers somebody who knows nothing can choose from; one of them is right. A number is never hit: no ways to count.</summary>
    internal static int? Ways(Question question) => question.Key switch
    {
        QuestionKey.One or QuestionKey.Spot => question.OptionIds.Count,
        // Every set but the empty one, which is no answer.
        QuestionKey.Several => (1 << question.OptionIds.Count) - 1,
        QuestionKey.Order => Enumerable.Range(1, question.OptionIds.Count).Aggregate(1, (ways, step) => ways * step),
        QuestionKey.Match match => Enumerable.Range(0, question.OptionIds.Count).Aggregate(1, (ways, taken) => ways * (match.MatchIds.Count - taken)),
        _ => null,
    };

    // Somebody who guesses a number types one of very many; a million stands for them and keeps the arithmetic whole.
    private static IEnumerable<int> EasiestToHit(IReadOnlyList<Question> pool, string topic, bool isCritical, int count) => pool
        .Where(question => question.Topic == topic && question.IsCritical == isCritical)
        .Select(question => Ways(question) ?? 1_000_000).Order().Take(count);

    private static Estimate<double> Shared(IReadOnlyList<Question> pool, string topic, bool isCritical, int count) => count == 0
        ? 0.0
        : DrawChances.ExpectedOverlap(pool.Count(question => question.Topic == topic && question.IsCritical == isCritical), count, count);

    private static Estimate<double> Plus(Estimate<double> one, Estimate<double> other) =>
        one.Then(first => other.Then<double>(second => first + second));
}
