using Training.Courses;

namespace Training.Scoring;

/// <summary>What sittings say about one text of a question.</summary>
/// <param name="QuestionId">Which question.</param>
/// <param name="Version">Its text.</param>
/// <param name="Asked">In how many sittings.</param>
/// <param name="Right">How often right.</param>
/// <param name="Unanswered">How often left blank or answered too late.</param>
/// <param name="Difficulty">Share right, 0–1: a high number is an easy question.</param>
/// <param name="Likely">Its Wilson interval, 95 %.</param>
/// <param name="Discrimination">Correlation of right with the share right of the other questions.</param>
/// <param name="UpperLower">Share right of the best 27 % less that of the weakest 27 %, by the other questions; −1 to 1.</param>
/// <param name="Exposure">Share of all sittings in which it was asked, 0–1.</param>
/// <param name="MedianSeconds">From the answer before, or the start, to this one; whoever changed an answer makes it longer.</param>
/// <param name="Choices">Who chose what; empty for an order and a number.</param>
/// <param name="Languages">By the language in which it was answered.</param>
/// <param name="LanguageOdds">English against Spanish among people who know as much.</param>
/// <param name="Flags">Why to look at it.</param>
public sealed record QuestionAnalysis(
    string QuestionId,
    string Version,
    long Asked,
    long Right,
    long Unanswered,
    Estimate<double> Difficulty,
    Estimate<Interval> Likely,
    Estimate<double> Discrimination,
    Estimate<double> UpperLower,
    Estimate<double> Exposure,
    Estimate<int> MedianSeconds,
    IReadOnlyList<OptionChoice> Choices,
    IReadOnlyList<LanguageShare> Languages,
    Estimate<CommonOdds> LanguageOdds,
    IReadOnlyList<QuestionFlag> Flags);

/// <summary>Counts in one language.</summary>
/// <param name="Language">Which.</param>
/// <param name="All">Answers, or sittings.</param>
/// <param name="Counted">Right answers, or passes.</param>
public sealed record LanguageShare(Language Language, long All, long Counted)
{
    /// <summary>The share, with its 95 % interval.</summary>
    public Estimate<Interval> Likely => ShareInterval.Wilson(Counted, All, 0.95);
}
