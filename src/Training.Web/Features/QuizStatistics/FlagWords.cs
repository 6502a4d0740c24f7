using System.Diagnostics;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Scoring;
using Training.Web.Features.Statistics;

namespace Training.Web.Features.QuizStatistics;

/// <summary>Says in a sentence why to look at a question, and at what.</summary>
public sealed class FlagWords(IStringLocalizer<QuizStatisticsText> text)
{
    private const int OnlyTells = 5;

    /// <summary>The sentence of one flag.</summary>
    /// <param name="flag">Why.</param>
    /// <param name="question">As it was asked; null where that text is not known.</param>
    public string Of(QuestionFlag flag, Question? question) => flag switch
    {
        QuestionFlag.OfFigures figures => figures.Flag switch
        {
            ItemFlag.TooFew => text["FlagTooFew", ItemFlags.FewestAnswers],
            ItemFlag.TooHard => text["FlagTooHard"],
            ItemFlag.TooEasy => text["FlagTooEasy"],
            ItemFlag.Negative => text["FlagNegative"],
            ItemFlag.Weak => text["FlagWeak"],
        },
        QuestionFlag.StrongChoose strong => text["FlagStrong", FigureWords.Percent(strong.Share), Letter(strong.OptionId, question)],
        QuestionFlag.LanguagesDiffer { OddsRatio: > 1 } => text["FlagSpanishHarder"],
        QuestionFlag.LanguagesDiffer => text["FlagEnglishHarder"],
        QuestionFlag.NeverChosen never => text["FlagNever", Letter(never.OptionId, question)],
        _ => throw new UnreachableException(),
    };

    /// <summary>What to call an option: A for the author's first; a pair by both its ids.</summary>
    public static string Letter(string optionId, Question? question)
    {
        var place = question?.OptionIds.ToList().IndexOf(optionId) ?? -1;
        return place is >= 0 and < 26 ? ((char)('A' + place)).ToString() : optionId;
    }

    /// <summary>Flags that ask somebody to look; too few answers and a wrong answer that nobody chooses only tell.</summary>
    public static bool IsToLookAt(QuestionFlag flag) => UrgencyOf(flag) < OnlyTells;

    /// <summary>How soon to look: a small number first.</summary>
    public static int UrgencyOf(QuestionFlag flag) => flag switch
    {
        QuestionFlag.StrongChoose => 1,
        QuestionFlag.LanguagesDiffer => 2,
        QuestionFlag.OfFigures figures => figures.Flag switch
        {
            ItemFlag.Negative => 2,
            ItemFlag.TooHard => 3,
            ItemFlag.Weak => 4,
            ItemFlag.TooFew or ItemFlag.TooEasy => OnlyTells,
        },
        QuestionFlag.NeverChosen => OnlyTells,
        _ => throw new UnreachableException(),
    };
}
