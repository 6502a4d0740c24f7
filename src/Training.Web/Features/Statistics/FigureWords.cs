using System.Diagnostics;
using System.Globalization;
using Microsoft.Extensions.Localization;
using Training.Scoring;

namespace Training.Web.Features.Statistics;

/// <summary>Puts statistics in words: a value, or why there is none; never a nought that means "not known".</summary>
public sealed class FigureWords(IStringLocalizer<FigureText> text)
{
    /// <summary>A share as a whole percentage, such as <c>71 %</c>; the sign stays on the line.</summary>
    public static string Percent(double share) => share.ToString("0\u00a0%", CultureInfo.CurrentCulture);

    /// <summary>A coefficient with two digits.</summary>
    public static string Number(double value) => (Math.Round(value, 2) + 0.0).ToString("0.00", CultureInfo.CurrentCulture);

    /// <summary>A share as a whole percentage, or why there is none.</summary>
    public string Share(Estimate<double> share) => Say(share, Percent);

    /// <summary>A coefficient with two digits, or why there is none.</summary>
    public string Value(Estimate<double> value) => Say(value, Number);

    /// <summary>Where a share likely lies, or why that is not known.</summary>
    public string ShareRange(Estimate<Interval> likely) => Say(likely, one => text["Range", Percent(one.Lower), Percent(one.Upper)]);

    /// <summary>Where a coefficient likely lies, or why that is not known.</summary>
    public string ValueRange(Estimate<Interval> likely) => Say(likely, one => text["Range", Number(one.Lower), Number(one.Upper)]);

    /// <summary>A value in words of its own, or why there is none.</summary>
    public string Say<T>(Estimate<T> estimate, Func<T, string> words) => estimate switch
    {
        Estimate<T>.Known(var value) => words(value),
        Estimate<T>.Unknown(var because) => text["Cannot", Because(because)],
        _ => throw new UnreachableException(),
    };

    private LocalizedString Because(Obstacle obstacle) => obstacle switch
    {
        Obstacle.NotANumber => text["NotANumber"],
        Obstacle.OutOfRange => text["OutOfRange"],
        Obstacle.NothingCompared => text["NothingCompared"],
        Obstacle.OneSubject => text["OneSubject"],
        Obstacle.OneCategory => text["OneCategory"],
        Obstacle.NoVariation => text["NoVariation"],
        Obstacle.CategoryUnused => text["CategoryUnused"],
        Obstacle.UnequalRatings => text["UnequalRatings"],
        Obstacle.WeightsDoNotFit => text["WeightsDoNotFit"],
        Obstacle.NegativeOnRatioScale => text["NegativeOnRatioScale"],
        Obstacle.ErrorVanishes => text["ErrorVanishes"],
        Obstacle.ApproximationFails => text["ApproximationFails"],
        Obstacle.SubjectsAlike => text["SubjectsAlike"],
        Obstacle.NoUsableJudge => text["NoUsableJudge"],
        Obstacle.OneJudge => text["OneJudge"],
        Obstacle.JudgesAlike => text["JudgesAlike"],
        Obstacle.NobodyScored => text["NobodyScored"],
        Obstacle.GroupEmpty => text["GroupEmpty"],
        Obstacle.TooFewPeople => text["TooFewPeople"],
        Obstacle.ScoresDoNotFollowJudgement => text["ScoresDoNotFollowJudgement"],
        Obstacle.CurvesDoNotCross => text["CurvesDoNotCross"],
        Obstacle.FitDidNotSettle => text["FitDidNotSettle"],
        Obstacle.NoAnswers => text["NoAnswers"],
        Obstacle.TooFewItems => text["TooFewItems"],
        Obstacle.NoItemVariance => text["NoItemVariance"],
        Obstacle.NoTotalVariance => text["NoTotalVariance"],
        Obstacle.NotRightOrWrong => text["NotRightOrWrong"],
        Obstacle.ReliabilityOutOfRange => text["ReliabilityOutOfRange"],
        Obstacle.OneDecisionOnly => text["OneDecisionOnly"],
        Obstacle.NoTrueScoreFit => text["NoTrueScoreFit"],
        Obstacle.NoSharedStratum => text["NoSharedStratum"],
        Obstacle.OneSidedStrata => text["OneSidedStrata"],
        Obstacle.PoolTooSmall => text["PoolTooSmall"],
    };
}
