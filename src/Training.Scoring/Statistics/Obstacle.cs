namespace Training.Scoring;

/// <summary>Why a statistic cannot be computed. Pages hold the sentence "cannot be computed because …" for each.</summary>
public enum Obstacle
{
    /// <summary>A value is no number, infinite, or of a size (beyond 10^50) that no rating or score has.</summary>
    NotANumber,

    /// <summary>A value lies outside the scale, or a lower bound above its upper bound.</summary>
    OutOfRange,

    /// <summary>No subject was rated by two raters, so there is nothing to compare.</summary>
    NothingCompared,

    /// <summary>Only one subject was rated by two raters; chance cannot be told from agreement by one.</summary>
    OneSubject,

    /// <summary>The scale has one category only: nobody could have disagreed.</summary>
    OneCategory,

    /// <summary>All values are the same. Agreement beyond chance, a slope or a correlation then has no meaning.</summary>
    NoVariation,

    /// <summary>The category was never chosen.</summary>
    CategoryUnused,

    /// <summary>Subjects have different numbers of ratings; the published error holds for equal numbers.</summary>
    UnequalRatings,

    /// <summary>Own weights are not square, not 0 on the diagonal, negative, or 0 throughout.</summary>
    WeightsDoNotFit,

    /// <summary>A ratio scale starts at 0; a rating is negative.</summary>
    NegativeOnRatioScale,

    /// <summary>
    /// The value lies at the end of its range, where the published error is 0 however few subjects there are. That would read as certainty.
    /// </summary>
    ErrorVanishes,

    /// <summary>The approximation behind the published limits does not hold for a value so far below 0.</summary>
    ApproximationFails,

    /// <summary>Subjects differ no more than raters do by chance, so that the mean of raters separates nobody.</summary>
    SubjectsAlike,

    /// <summary>No judge gave everything that was asked, within the scale.</summary>
    NoUsableJudge,

    /// <summary>One judge alone has no spread.</summary>
    OneJudge,

    /// <summary>Judges agree in everything, so that their spreads cannot be weighed against each other.</summary>
    JudgesAlike,

    /// <summary>Nobody has a score.</summary>
    NobodyScored,

    /// <summary>A group of people that the method needs is empty.</summary>
    GroupEmpty,

    /// <summary>Too few people for a spread or a line.</summary>
    TooFewPeople,

    /// <summary>Those judged better score no better, so that no score separates them from the others.</summary>
    ScoresDoNotFollowJudgement,

    /// <summary>The two normal curves do not cross between the means of the groups.</summary>
    CurvesDoNotCross,

    /// <summary>The fit did not settle.</summary>
    FitDidNotSettle,

    /// <summary>Nobody answered.</summary>
    NoAnswers,

    /// <summary>Fewer questions than the formula needs; most need two.</summary>
    TooFewItems,

    /// <summary>Everybody has the same score on the question: it cannot go along with anything.</summary>
    NoItemVariance,

    /// <summary>Everybody has the same total, or the same score on all other questions: nobody is above anybody.</summary>
    NoTotalVariance,

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

    /// <summary>Nowhere did both groups, and both right and wrong, stand among people who know as much: nothing is compared.</summary>
    NoSharedStratum,

    /// <summary>Among people who know as much, one group was never right, or never wrong, beside the other: the ratio would be nought or endless.</summary>
    OneSidedStrata,
}
