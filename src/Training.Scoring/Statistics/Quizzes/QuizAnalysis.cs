namespace Training.Scoring;

/// <summary>What the sittings of a quiz say about the quiz.</summary>
/// <param name="Sittings">Looked at.</param>
/// <param name="Passed">Of these.</param>
/// <param name="ReachedCut">Sittings with enough points; the others cannot pass. More than passed where critical questions or topics were missed.</param>
/// <param name="Unfinished">Sittings that left a question blank or late.</param>
/// <param name="Scores">Points of the sittings that have the full number of questions.</param>
/// <param name="PassMark">Points that the cut asks of a full form.</param>
/// <param name="Precision">How precise and how steady the scores are.</param>
/// <param name="Languages">Passes by the language of the sitting.</param>
/// <param name="Questions">By question id, then text.</param>
public sealed record QuizAnalysis(
    long Sittings,
    long Passed,
    long ReachedCut,
    long Unfinished,
    ScoreDistribution Scores,
    int PassMark,
    QuizPrecision Precision,
    IReadOnlyList<LanguageShare> Languages,
    IReadOnlyList<QuestionAnalysis> Questions)
{
    /// <summary>Sittings whose points lie within one standard error of the cut: another draw might have decided otherwise.</summary>
    public Estimate<long> NearTheCut => Precision.StandardError.Then<long>(error =>
    {
        var near = 0L;
        for (var score = 0; score <= Scores.Items; score++)
        {
            if (Math.Abs(score - PassMark) <= error) near += Scores.Counts[score];
        }

        return near;
    });
}

/// <summary>How precise the scores are, by the design under which they came about.</summary>
/// <param name="Design">Which formulas hold.</param>
/// <param name="Reliability">Share of the differences between people that is no error, at most 1.</param>
/// <param name="AtTheCut">Φ(λ): the same for the distance from the cut.</param>
/// <param name="StandardError">Of one person's score, in points.</param>
/// <param name="Decisions">How steadily pass and fail by points are decided.</param>
public sealed record QuizPrecision(
    FormDesign Design,
    Estimate<double> Reliability,
    Estimate<double> AtTheCut,
    Estimate<double> StandardError,
    Estimate<Classification> Decisions);

/// <summary>Who saw which questions.</summary>
public enum FormDesign
{
    /// <summary>All saw the same questions: persons × items.</summary>
    Same,

    /// <summary>Everybody saw a draw of their own: items nested in persons.</summary>
    Drawn,
}
