namespace Training.Scoring;

/// <summary>Why a statistic cannot be computed.</summary>
public enum Uncomputable
{
    /// <summary>Nobody answered.</summary>
    NoAnswers,

    /// <summary>Fewer people than the formula needs.</summary>
    TooFewPeople,

    /// <summary>Fewer questions than the formula needs; most need two.</summary>
    TooFewItems,

    /// <summary>Everybody has the same score on the question: it cannot go along with anything.</summary>
    NoItemVariance,

    /// <summary>Everybody has the same total, or the same score on all other questions: nobody is above anybody.</summary>
    NoTotalVariance,

    /// <summary>A score or figure is NaN, infinite or too large to be one, as from a damaged upload.</summary>
    NotANumber,

    /// <summary>The formula is for right or wrong (1 or 0), and there are other scores.</summary>
    NotRightOrWrong,

    /// <summary>The reliability lies outside the range for which the formula means something.</summary>
    ReliabilityOutOfRange,

    /// <summary>Chance alone would always give the same decision, so that nothing can be better than chance.</summary>
    OneDecisionOnly,

    /// <summary>No beta distribution of true scores has the moments of these scores.</summary>
    NoTrueScoreFit,

    /// <summary>More questions would be drawn than the pool has.</summary>
    PoolTooSmall,
}
