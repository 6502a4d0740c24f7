using Training.Courses;

namespace Training.Scoring;

/// <summary>Why somebody should look at a question, with what to look at. A closed family.</summary>
public abstract record QuestionFlag
{
    private QuestionFlag()
    {
    }

    /// <summary>What difficulty and discrimination say.</summary>
    public sealed record OfFigures(ItemFlag Flag) : QuestionFlag;

    /// <summary>Surely most of the stronger half chose this wrong answer: the key may be wrong.</summary>
    /// <param name="OptionId">The answer; <c>option=match</c> for pairs.</param>
    /// <param name="Share">Of the stronger half, 0–1.</param>
    public sealed record StrongChoose(string OptionId, double Share) : QuestionFlag;

    /// <summary>Surely harder, or easier, in Spanish than in English for people who know as much: the translation may ask something else.</summary>
    /// <param name="OddsRatio">Odds of a right answer in English over those in Spanish: above 1, Spanish is harder.</param>
    public sealed record LanguagesDiffer(double OddsRatio) : QuestionFlag;

    /// <summary>Nobody chose this wrong answer in so many: it does not work as one.</summary>
    public sealed record NeverChosen(string OptionId) : QuestionFlag;
}

/// <summary>Looks at whether two languages ask the same.</summary>
/// <remarks>
/// Our own rule: with at least <see cref="FewestAnswers"/> answers in each language, and the whole 95 % interval beyond one delta, which
/// Holland and Thayer 1988 and those after them call a difference to look at. So chance alone flags hardly anything.
/// </remarks>
public static class LanguageFlags
{
    /// <summary>Fewer answers in one of the languages show nothing. Common practice, no source.</summary>
    public const int FewestAnswers = 100;

    private const double LeastDelta = 1;
    private const double StandardErrors = 1.96;

    /// <summary>The flag, or none.</summary>
    /// <param name="languages">Answers in each language.</param>
    /// <param name="odds">English against Spanish.</param>
    public static IEnumerable<QuestionFlag> Of(IReadOnlyList<LanguageShare> languages, Estimate<CommonOdds> odds)
    {
        if (languages.Count < 2 || languages.Any(language => language.All < FewestAnswers)) yield break;
        if (odds is Estimate<CommonOdds>.Known(var known) && Math.Abs(known.Delta) - (StandardErrors * known.DeltaStandardError) > LeastDelta)
            yield return new QuestionFlag.LanguagesDiffer(known.OddsRatio);
    }
}

/// <summary>Looks at who chose which answer.</summary>
/// <remarks>Our own rule, in the manner of <see cref="ItemFlags"/>: nothing is flagged that the sample cannot bear.</remarks>
public static class ChoiceFlags
{
    /// <summary>Fewer answers cannot show that an answer is never chosen. Common practice, no source.</summary>
    public const int FewestForNever = 100;

    private const double Confidence = 0.95;

    /// <summary>All flags of a question's answers, in the order of the options.</summary>
    /// <param name="question">The question as it was shown.</param>
    /// <param name="answers">How often it was asked.</param>
    /// <param name="choices">Who chose what.</param>
    public static IEnumerable<QuestionFlag> Of(Question question, long answers, IReadOnlyList<OptionChoice> choices)
    {
        if (answers < ItemFlags.FewestAnswers) yield break;
        var half = answers / 2;
        foreach (var choice in choices.Where(choice => !IsKey(question.Key, choice.OptionId)))
        {
            // The fraction of a tie at the border is left away: the flag must hold without it.
            if (choice.UpperHalf is Estimate<double>.Known(var strong)
                && ShareInterval.Wilson((long)Math.Min(half, strong), half, Confidence) is Estimate<Interval>.Known { Value.Lower: > 0.5 })
            {
                yield return new QuestionFlag.StrongChoose(choice.OptionId, strong / half);
            }

            if (choice.Chosen == 0 && answers >= FewestForNever && question.Key is not QuestionKey.Match)
                yield return new QuestionFlag.NeverChosen(choice.OptionId);
        }
    }

    /// <summary>What can be counted as chosen: options and regions, for pairs every <c>option=match</c>; nothing for an order and a number.</summary>
    public static IReadOnlyList<string> Countable(Question question) => question.Key switch
    {
        QuestionKey.One or QuestionKey.Several or QuestionKey.Spot => question.OptionIds,
        QuestionKey.Match match =>
            [.. from option in question.OptionIds from matched in match.MatchIds select new MatchPair(option, matched).ToString()],
        _ => [],
    };

    /// <summary>Whether choosing this belongs to the right answer.</summary>
    public static bool IsKey(QuestionKey key, string chosen) => key switch
    {
        QuestionKey.One one => one.OptionId == chosen,
        QuestionKey.Several several => several.OptionIds.Contains(chosen, StringComparer.Ordinal),
        QuestionKey.Spot spot => spot.RegionId == chosen,
        QuestionKey.Match match => match.Pairs.Any(pair => pair.ToString() == chosen),
        _ => false,
    };
}
