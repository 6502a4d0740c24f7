namespace Training.Scoring;

/// <summary>Agreement of two raters beyond what their own habits would give by chance.</summary>
/// <param name="Value">1 for full agreement, 0 for as much as by chance, negative for less.</param>
/// <param name="StandardError">Large-sample error of the value itself. The error for a test of "no agreement" is another.</param>
/// <param name="Observed">Share of subjects agreed on, 0 to 1; weighted, the same category counts in full and the worst disagreement not.</param>
/// <param name="Expected">The same by chance, from how often each rater chose each category.</param>
/// <param name="Subjects">How many both rated.</param>
public sealed record CohenKappa(double Value, Estimate<double> StandardError, double Observed, double Expected, int Subjects)
{
    /// <summary>Kappa of a table, weighted or not.</summary>
    /// <remarks>
    /// <para>κ = 1 − Σ v·p / Σ v·e, where p are the shares of the table, e the products of its margins and v the weights of disagreement:
    /// Cohen, "A coefficient of agreement for nominal scales", Educational and Psychological Measurement 20, 1960; weighted: Cohen,
    /// Psychological Bulletin 70, 1968.</para>
    /// <para>SE: Fleiss, Cohen and Everitt, "Large sample standard errors of kappa and weighted kappa", Psychological Bulletin 72, 1969.</para>
    /// </remarks>
    public static Estimate<CohenKappa> Of(PairTable table, KappaWeights weights)
    {
        if (table.Categories < 2) return Obstacle.OneCategory;
        if (!weights.Fit(table.Categories)) return Obstacle.WeightsDoNotFit;
        if (table.Subjects == 0) return Obstacle.NothingCompared;
        if (table.Subjects == 1) return Obstacle.OneSubject;

        var shares = new Shares(table, weights);
        if (shares.ExpectedDisagreement == 0) return Obstacle.NoVariation;
        return new CohenKappa(
            1 - (shares.ObservedDisagreement / shares.ExpectedDisagreement),
            shares.StandardError(),
            1 - shares.ObservedDisagreement,
            1 - shares.ExpectedDisagreement,
            table.Subjects);
    }

    /// <summary>The table as shares, with weights brought to 0 … 1; their unit cancels out of kappa and of its error.</summary>
    private sealed class Shares
    {
        // What is left of a difference of two equal sums, against those sums.
        private const double Rounding = 1e-12;

        private readonly PairTable _table;
        private readonly double[,] _disagreement;
        private readonly double[] _first;
        private readonly double[] _second;

        public Shares(PairTable table, KappaWeights weights)
        {
            _table = table;
            _disagreement = new double[table.Categories, table.Categories];
            _first = new double[table.Categories];
            _second = new double[table.Categories];
            var greatest = Cells().Max(cell => weights.Disagreement(cell.First, cell.Second));
            foreach (var (first, second) in Cells())
            {
                _disagreement[first, second] = weights.Disagreement(first, second) / greatest;
                _first[first] += Share(first, second);
                _second[second] += Share(first, second);
            }

            ObservedDisagreement = Cells().Sum(cell => _disagreement[cell.First, cell.Second] * Share(cell.First, cell.Second));
            ExpectedDisagreement = Cells().Sum(cell => _disagreement[cell.First, cell.Second] * _first[cell.First] * _second[cell.Second]);
        }

        public double ObservedDisagreement { get; }

        public double ExpectedDisagreement { get; }

        public Estimate<double> StandardError()
        {
            double observed = 1 - ObservedDisagreement, expected = 1 - ExpectedDisagreement;
            var ofFirst = Categories().Select(first => Categories().Sum(second => _second[second] * Weight(first, second))).ToArray();
            var ofSecond = Categories().Select(second => Categories().Sum(first => _first[first] * Weight(first, second))).ToArray();
            var squares = Cells().Sum(cell => Share(cell.First, cell.Second) * Square(
                (Weight(cell.First, cell.Second) * ExpectedDisagreement) - ((ofFirst[cell.First] + ofSecond[cell.Second]) * ObservedDisagreement)));
            var inner = squares - Square((observed * expected) - (2 * expected) + observed);
            if (inner <= squares * Rounding) return Obstacle.ErrorVanishes;
            return Math.Sqrt(inner / _table.Subjects) / Square(ExpectedDisagreement);
        }

        private static double Square(double value) => value * value;

        private double Weight(int first, int second) => 1 - _disagreement[first, second];

        private double Share(int first, int second) => _table[first, second] / (double)_table.Subjects;

        private IEnumerable<int> Categories() => Enumerable.Range(0, _table.Categories);

        private IEnumerable<(int First, int Second)> Cells() =>
            from first in Categories() from second in Categories() select (first, second);
    }
}
