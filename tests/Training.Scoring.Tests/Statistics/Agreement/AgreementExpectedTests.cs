namespace Training.Scoring.Tests;

/// <summary>Every row of Data/agreement-expected.csv, to its tolerance; sources stand in the file and in Data/agreement-cut.README.md.</summary>
public sealed class AgreementExpectedTests
{
    private static readonly IReadOnlyList<ExpectedFigure> Expected = JudgementFiles.Expected("agreement-expected.csv");

    private static readonly Lazy<Dictionary<string, double>> Computed = new(() => new(
        [
            .. Cohen(), .. Table("agresti", "agreement-agresti-4x4.csv"), .. Table("sas", "agreement-sas-3x3.csv"),
            .. Fleiss("fleiss1971", "agreement-fleiss1971.csv"), .. Fleiss("fleiss10x14", "agreement-fleiss-10x14.csv"),
            .. Icc(), .. Alpha(), .. Gwet(),
        ],
        StringComparer.Ordinal));

    public static TheoryData<string> Names => [.. Expected.Select(row => row.Name)];

    [Theory, MemberData(nameof(Names))]
    public void The_expected_value_comes_out(string name) => Expected.Single(row => row.Name == name).Assert(Computed.Value[name]);

    [Fact]
    public void Every_row_is_asserted_and_nothing_else_is() =>
        Assert.Equal(Expected.Select(row => row.Name).Order(StringComparer.Ordinal), Computed.Value.Keys.Order(StringComparer.Ordinal));

    private static IEnumerable<KeyValuePair<string, double>> Cohen()
    {
        var cells = JudgementFiles.Counts("agreement-cohen1968.csv");
        var weights = cells.GroupBy(cell => cell[0], cell => (double)cell[3]).Select(row => row.ToArray()).ToArray();
        var unweighted = Kappa("agreement-cohen1968.csv", new KappaWeights.Unweighted());
        return
        [
            new("agree.cohen1960.po", unweighted.Observed),
            new("agree.cohen1960.pe", unweighted.Expected),
            new("agree.cohen1960.kappa", unweighted.Value),
            new("agree.cohen1960.kappa_se", unweighted.StandardError.Known()),
            new("agree.cohen1968.kappa_w", Kappa("agreement-cohen1968.csv", new KappaWeights.Own(weights)).Value),
            .. Table("cohen1968", "agreement-cohen1968.csv"),
        ];
    }

    private static IEnumerable<KeyValuePair<string, double>> Table(string tag, string file)
    {
        (string Name, KappaWeights Weights)[] all =
        [
            ("unweighted", new KappaWeights.Unweighted()), ("linear", new KappaWeights.Linear()), ("quadratic", new KappaWeights.Quadratic()),
        ];
        foreach (var (name, weights) in all)
        {
            var kappa = Kappa(file, weights);
            yield return new($"agree.{tag}.kappa_{name}", kappa.Value);
            yield return new($"agree.{tag}.kappa_{name}_se", kappa.StandardError.Known());
        }
    }

    private static CohenKappa Kappa(string file, KappaWeights weights) => CohenKappa.Of(
        PairTable.Of([.. JudgementFiles.Counts(file).GroupBy(cell => cell[0], cell => cell[2]).Select(row => row.ToArray())]), weights).Known();

    private static IEnumerable<KeyValuePair<string, double>> Fleiss(string tag, string file)
    {
        var counts = JudgementFiles.Counts(file);
        var kappa = FleissKappa.Of(CategoryCounts.Of(counts[0].Length, counts)).Known();
        return
        [
            new($"agree.{tag}.p_bar", kappa.Observed),
            new($"agree.{tag}.p_e", kappa.Expected),
            new($"agree.{tag}.kappa", kappa.Value),
            new($"agree.{tag}.se0", kappa.AgainstChance.Known().StandardError),
            new($"agree.{tag}.z", kappa.AgainstChance.Known().Z),
            .. kappa.Categories.Select((category, index) => KeyValuePair.Create($"agree.{tag}.kappa_category{index + 1}", category.Known().Value)),
        ];
    }

    private static IEnumerable<KeyValuePair<string, double>> Icc()
    {
        var targets = JudgementFiles.Numbers("agreement-shrout-fleiss1979.csv").Select(row => row.Select(cell => (double?)cell).ToArray());
        var icc = IntraclassCorrelations.Of([.. targets]).Known();
        (string Form, IntraclassCorrelation Value)[] forms =
            [("1", icc.OneWay.Known()), ("2", icc.TwoWayRandom.Known()), ("3", icc.TwoWayMixed.Known())];
        return
        [
            new("agree.icc.BMS", icc.MeanSquares.BetweenSubjects),
            new("agree.icc.WMS", icc.MeanSquares.WithinSubjects),
            new("agree.icc.JMS", icc.MeanSquares.BetweenRaters),
            new("agree.icc.EMS", icc.MeanSquares.Error),
            .. forms.Select(form => KeyValuePair.Create($"agree.icc.{form.Form}_1", form.Value.Single)),
            .. forms.Select(form => KeyValuePair.Create($"agree.icc.{form.Form}_k", form.Value.Mean.Known())),
            .. forms.Select(form => KeyValuePair.Create($"agree.icc.{form.Form}_1.lower95", form.Value.Limits.Known().Lower)),
            .. forms.Select(form => KeyValuePair.Create($"agree.icc.{form.Form}_1.upper95", form.Value.Limits.Known().Upper)),
        ];
    }

    private static IEnumerable<KeyValuePair<string, double>> Alpha()
    {
        (string Data, MeasurementLevel Level)[] rows =
        [
            ("4x12", MeasurementLevel.Nominal), ("4x12", MeasurementLevel.Ordinal), ("4x12", MeasurementLevel.Interval),
            ("4x12", MeasurementLevel.Ratio), ("3x15", MeasurementLevel.Nominal), ("3x15", MeasurementLevel.Interval),
            ("2x12", MeasurementLevel.Nominal), ("2x10", MeasurementLevel.Nominal),
        ];
        return rows.Select(row => KeyValuePair.Create(
            $"agree.krippendorff.{row.Data}.{row.Level.ToString().ToLowerInvariant()}",
            KrippendorffAlpha.Of(JudgementFiles.Subjects($"agreement-krippendorff-{row.Data}.csv"), row.Level).Known().Value));
    }

    private static IEnumerable<KeyValuePair<string, double>> Gwet()
    {
        var units = JudgementFiles.Subjects("agreement-krippendorff-4x12.csv").Select(ratings => ratings.Select(rating => (int?)rating - 1).ToArray());
        var counts = CategoryCounts.FromRatings(5, [.. units]);
        return
        [
            new("agree.gwet.ac1", CategoryAgreement.Ac1(counts).Known().Value),
            new("agree.gwet.fleiss", FleissKappa.Of(counts).Known().Value),
            new("agree.gwet.brennan_prediger", CategoryAgreement.BrennanPrediger(counts).Known().Value),
            new("agree.gwet.pa", CategoryAgreement.PercentOf(counts).Known()),
        ];
    }
}
