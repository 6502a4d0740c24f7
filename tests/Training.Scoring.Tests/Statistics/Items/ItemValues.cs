namespace Training.Scoring.Tests;

/// <summary>What the library computes for the rows <c>item.*</c> and <c>synth.*</c> of the expected values.</summary>
internal static class ItemValues
{
    public static IEnumerable<(string Name, object Value)> All() =>
    [
        .. OfTable("lsat6", isRightOrWrong: true),
        .. OfTable("lsat7", isRightOrWrong: true),
        .. OfTable("attitude", isRightOrWrong: false),
        .. Feldt(),
        .. Generator(),
        .. Synthetic("synth.rasch", new(1.0)),
        .. Synthetic("synth.twopl", new(0.6, 1.0, 1.6)),
    ];

    private static IEnumerable<(string Name, object Value)> OfTable(string name, bool isRightOrWrong)
    {
        var table = QuizData.Table(name);
        var tally = Tallies.Of(table);
        var alpha = tally.Alpha.Known();
        var populationVariance = tally.PopulationVariance.Known();
        var sampleVariance = tally.SampleVariance.Known();
        yield return ($"item.{name}.n", tally.People);
        yield return ($"item.{name}.k", tally.Items);
        yield return ($"item.{name}.total.mean", tally.TotalMean.Known());
        yield return ($"item.{name}.total.var_sample", sampleVariance);
        yield return ($"item.{name}.total.var_population", populationVariance);
        yield return ($"item.{name}.alpha", alpha);
        yield return ($"item.{name}.sem_sample", TestReliability.StandardErrorOfMeasurement(sampleVariance, alpha).Known());
        yield return ($"item.{name}.sem_population", TestReliability.StandardErrorOfMeasurement(populationVariance, alpha).Known());
        for (var item = 0; item < tally.Items; item++)
        {
            var result = tally.Item(item);
            yield return ($"item.{name}.p.q{item + 1}", result.Difficulty.Known());
            yield return ($"item.{name}.r_total.q{item + 1}", result.TotalCorrelation.Known());
            yield return ($"item.{name}.r_rest.q{item + 1}", result.RestCorrelation.Known());
            yield return ($"item.{name}.alpha_drop.q{item + 1}", result.AlphaIfDropped.Known());
        }

        if (!isRightOrWrong) yield break;
        var mean = tally.TotalMean.Known();
        var groups = Tallies.UpperLower(table);
        yield return ($"item.{name}.kr20", tally.Kr20.Known());
        yield return ($"item.{name}.kr21", TestReliability.Kr21(tally.Items, mean, populationVariance).Known());
        yield return ($"item.{name}.kr21_sample", TestReliability.Kr21(tally.Items, mean, sampleVariance).Known());
        yield return ($"item.{name}.group27", groups.GroupSize);
        for (var item = 0; item < tally.Items; item++)
        {
            yield return ($"item.{name}.D27.q{item + 1}", groups.Index(item).Known());
        }
    }

    private static IEnumerable<(string Name, object Value)> Feldt()
    {
        var tally = Tallies.Of(QuizData.Table("lsat6"));
        var limits = TestReliability.FeldtLimits(tally.Alpha.Known(), tally.People, tally.Items, 0.95).Known();
        yield return ("item.lsat6.alpha_feldt95.lower", limits.Lower);
        yield return ("item.lsat6.alpha_feldt95.upper", limits.Upper);
    }

    private static IEnumerable<(string Name, object Value)> Generator()
    {
        var random = new SplitMix64(1234567);
        for (var output = 1; output <= 5; output++)
        {
            yield return ($"synth.splitmix64.seed1234567.output{output}", random.NextUInt64());
        }
    }

    private static IEnumerable<(string Name, object Value)> Synthetic(string name, SyntheticAnswers answers)
    {
        var tally = Tallies.Of(answers.Rows);
        yield return ($"{name}.total_correct", answers.Rows.Sum(row => row.Sum()));
        yield return ($"{name}.first_person", Text(answers.Rows[0]));
        yield return ($"{name}.person_1000", Text(answers.Rows[999]));
        yield return ($"{name}.last_person", Text(answers.Rows[^1]));
        yield return ($"{name}.kr20", tally.Kr20.Known());
        var difficulties = Enumerable.Range(0, tally.Items).Select(item => tally.Item(item).Difficulty.Known()).ToList();
        yield return ($"{name}.spearman_p_vs_b", RankCorrelation(difficulties, answers.Locations));
        for (var item = 0; item < tally.Items; item++)
        {
            yield return ($"{name}.correct.q{item + 1}", answers.Rows.Sum(row => row[item]));
            yield return ($"{name}.r_rest.q{item + 1}", tally.Item(item).RestCorrelation.Known());
        }
    }

    private static string Text(double[] row) => string.Concat(row.Select(score => score > 0 ? '1' : '0'));

    // In a table of two columns the rest of the one is the other.
    private static double RankCorrelation(IReadOnlyList<double> first, IReadOnlyList<double> second) => Tallies
        .Of([.. first.Zip(second, (one, other) => new double[] { first.Count(lower => lower < one), second.Count(lower => lower < other) })])
        .Item(0).RestCorrelation.Known();
}
