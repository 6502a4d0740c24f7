namespace Training.Scoring;

/// <summary>One judge's cut and the per cent of people whom the judge expects to pass; null where not given.</summary>
public sealed record BeukJudge(string Name, double? Cut, double? PassPercent)
{
    /// <summary>Why a cut on scores up to the greatest does without the judge, or null where it does not.</summary>
    public LeftOutReason? WhyLeftOut(int greatestScore)
    {
        if (Cut is not { } cut || PassPercent is not { } percent) return LeftOutReason.Incomplete;
        return cut >= 0 && cut <= greatestScore && percent is >= 0 and <= 100 ? null : LeftOutReason.OutOfRange;
    }
}

/// <summary>Compromise between the cut that judges want and the share that they expect to pass; what they agree on weighs more (Beuk).</summary>
/// <param name="Cut">Where the panel's line meets the curve of those who pass, whole scores joined by straight lines; with decimals.</param>
/// <param name="PassMark">Smallest whole score not below the cut; one above the greatest score where nobody would pass.</param>
/// <param name="MeanCut">Of the judges.</param>
/// <param name="MeanPassPercent">Of the judges.</param>
/// <param name="Slope">Spread of the per cents against that of the cuts. Judges who all want one cut have none; it is then the cut.</param>
/// <param name="LeftOut">Judges that it does without.</param>
public sealed record BeukCut(
    double Cut,
    int PassMark,
    double MeanCut,
    double MeanPassPercent,
    Estimate<double> Slope,
    IReadOnlyList<LeftOutJudge> LeftOut)
{
    /// <summary>The cut of a panel.</summary>
    /// <remarks>
    /// <para>Beuk, "A method for reaching a compromise between absolute and relative standards in examinations", Journal of Educational
    /// Measurement 21, 1984; Mills and Melican, "A preliminary investigation of three compromise methods", 1987 (ERIC ED283842). The line
    /// runs through both means; its slope is the ratio of the standard deviations.</para>
    /// <para>There is always a meeting: at a cut of 0 all pass and the line is at most there, above the greatest score none pass and it is
    /// at least there.</para>
    /// </remarks>
    public static Estimate<BeukCut> Of(IReadOnlyList<BeukJudge> judges, FailCurve curve)
    {
        var usable = judges.Where(judge => judge.WhyLeftOut(curve.GreatestScore) is null).ToList();
        var cuts = usable.Select(judge => judge.Cut).OfType<double>().ToList();
        var percents = usable.Select(judge => judge.PassPercent).OfType<double>().ToList();
        if (curve.People == 0) return Obstacle.NobodyScored;
        if (usable.Count == 0) return Obstacle.NoUsableJudge;
        if (usable.Count == 1) return Obstacle.OneJudge;

        double spreadOfCuts = SampleMoments.StandardDeviation(cuts), spreadOfPercents = SampleMoments.StandardDeviation(percents);
        if (spreadOfCuts == 0 && spreadOfPercents == 0) return Obstacle.JudgesAlike;
        var slope = spreadOfPercents / spreadOfCuts;
        var meeting = spreadOfCuts == 0 ? cuts[0] : Meeting(curve, new CutLine(cuts.Average(), 100 - percents.Average(), -slope));
        return new BeukCut(
            meeting,
            PassMarks.Of(meeting),
            cuts.Average(),
            percents.Average(),
            spreadOfCuts == 0 ? Obstacle.NoVariation : slope,
            [.. from judge in judges
                let reason = judge.WhyLeftOut(curve.GreatestScore)
                where reason is not null
                select new LeftOutJudge(judge.Name, reason.Value)]);
    }

    // Rounding may put the line a hair above the curve at its very end.
    private static double Meeting(FailCurve curve, CutLine line) => curve.Reaches(line, 0, curve.GreatestScore + 1) ?? curve.GreatestScore + 1;
}
