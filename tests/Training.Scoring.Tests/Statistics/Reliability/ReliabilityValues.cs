using System.Globalization;

namespace Training.Scoring.Tests;

/// <summary>What the library computes for the rows <c>dc.*</c> of the expected values.</summary>
internal static class ReliabilityValues
{
    private static readonly (double Cut, double Reliability)[] NormalCases = [(0, 0.5), (0, 0.9), (0.4, 0.4), (1, 0.8), (2, 0.1)];

    public static ScoreDistribution Exam => Read("exam-40x200.csv", 40);

    public static ScoreDistribution Wide => Read("exam-50x500.csv", 50);

    public static IEnumerable<(string Name, object Value)> All() =>
    [
        ("dc.livingston.textbook", SingleSitting.Livingston(4, 2, 0.5, 2).Known()),
        .. OfExam(),
        .. Subkoviak1976(),
        .. NormalCases.SelectMany(OfNormal),
        .. OfClassification("dc.ll.known_parameters", LivingstonLewis.Classify(new(0.25, 0.75, 5, 3), 50, 25, 0.5)),
        .. OfLivingstonLewis("dc.ll.exam", Exam, 0.82, 28),
        .. OfLivingstonLewis("dc.ll.wide", Wide, 0.90, 30),
        .. OfHalves("total", 0.078, 0.0265, 0.0265, 0.870),
        .. OfHalves("first_time", 0.030, 0.019, 0.019, 0.931),
    ];

    private static IEnumerable<(string Name, object Value)> OfNormal((double Cut, double Reliability) one)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"dc.normal.z{one.Cut}.r{one.Reliability}");
        var consistency = SingleSitting.PengSubkoviak(one.Cut, one.Reliability).Known();
        return [($"{name}.p", consistency.Agreement), ($"{name}.kappa", consistency.Kappa.Known())];
    }

    private static IEnumerable<(string Name, object Value)> OfExam()
    {
        var exam = Exam;
        var mean = exam.Mean.Known();
        var variance = exam.PopulationVariance.Known();
        var kr21 = TestReliability.Kr21(exam.Items, mean, variance).Known();
        var rates = SingleSitting.HuynhParameters(mean, exam.Items, kr21).Known();
        yield return ("dc.exam.mean", mean);
        yield return ("dc.exam.var_population", variance);
        yield return ("dc.exam.kr21", kr21);
        yield return ("dc.exam.huynh.alpha_parameter", rates.Alpha);
        yield return ("dc.exam.huynh.beta_parameter", rates.Beta);
        foreach (var cut in new[] { 24, 28, 32 })
        {
            yield return ($"dc.exam.livingston_k2.cut{cut}", SingleSitting.Livingston(mean, variance, kr21, cut).Known());
            var standardisedCut = (cut - 0.5 - mean) / Math.Sqrt(variance);
            var estimates = Named($"dc.exam.subkoviak.cut{cut}", SingleSitting.Subkoviak(exam, kr21, cut).Known())
                .Concat(Named($"dc.exam.huynh.cut{cut}", SingleSitting.Huynh(mean, exam.Items, kr21, cut).Known()))
                .Concat(Named($"dc.exam.peng_subkoviak.cut{cut}", SingleSitting.PengSubkoviak(standardisedCut, kr21).Known()));
            foreach (var estimate in estimates) yield return estimate;
        }
    }

    private static IEnumerable<(string Name, object Value)> Subkoviak1976()
    {
        var scores = Tallies.Distribution(5, QuizData.Rows("subkoviak1976.csv").Select(row => (QuizData.Whole(row["score"]), 1)));
        var mean = scores.Mean.Known();
        var kr21 = TestReliability.Kr21(5, mean, scores.PopulationVariance.Known()).Known();
        var huynh = SingleSitting.Huynh(mean, 5, kr21, 4).Known();
        return
        [
            ("dc.subkoviak1976.given_58.alpha", 0.58),
            .. Named("dc.subkoviak1976.given_58", SingleSitting.Subkoviak(scores, 0.58, 4).Known()),
            ("dc.subkoviak1976.kr21.alpha", kr21),
            .. Named("dc.subkoviak1976.kr21", SingleSitting.Subkoviak(scores, kr21, 4).Known()),
            ("dc.subkoviak1976.huynh.p", huynh.Agreement),
            ("dc.subkoviak1976.huynh.kappa", huynh.Kappa.Known()),
        ];
    }

    private static IEnumerable<(string Name, object Value)> OfLivingstonLewis(string name, ScoreDistribution scores, double reliability, int cut)
    {
        var exactLength = LivingstonLewis.EffectiveLength(scores, reliability).Known();
        var length = (int)Math.Round(exactLength);
        yield return ($"{name}.effective_length", exactLength);
        yield return ($"{name}.effective_length_rounded", length);
        var fits = new[] { ("2p", LivingstonLewis.FitTwo(scores, reliability)), ("4p", LivingstonLewis.FitFour(scores, reliability)) };
        foreach (var (parameters, fit) in fits)
        {
            var trueScores = fit.Known();
            yield return ($"{name}.{parameters}.l", trueScores.Lower);
            yield return ($"{name}.{parameters}.u", trueScores.Upper);
            yield return ($"{name}.{parameters}.alpha", trueScores.Alpha);
            yield return ($"{name}.{parameters}.beta", trueScores.Beta);
            yield return ($"{name}.{parameters}.usable", trueScores.IsUsable ? 1 : 0);
            if (!trueScores.IsUsable) continue;
            var effectiveCut = LivingstonLewis.EffectiveCut(length, scores.Items, cut);
            yield return ($"{name}.{parameters}.k", effectiveCut);
            var classification = LivingstonLewis.Classify(trueScores, length, effectiveCut, (double)cut / scores.Items);
            foreach (var value in OfClassification($"{name}.{parameters}", classification)) yield return value;
        }
    }

    private static IEnumerable<(string Name, object Value)> OfClassification(string name, Classification shares) =>
    [
        ($"{name}.pass_true_pass", shares.PassTruePass),
        ($"{name}.fail_true_pass", shares.FailTruePass),
        ($"{name}.pass_true_fail", shares.PassTrueFail),
        ($"{name}.fail_true_fail", shares.FailTrueFail),
        ($"{name}.accuracy", shares.Accuracy),
        ($"{name}.p_pass_pass", shares.PassPass),
        ($"{name}.p_fail_fail", shares.FailFail),
        ($"{name}.p_pass_fail", shares.PassFail),
        ($"{name}.consistency", shares.Consistency.Agreement),
        ($"{name}.chance", shares.Consistency.ByChance),
        ($"{name}.kappa", shares.Consistency.Kappa.Known()),
    ];

    private static IEnumerable<(string Name, object Value)> OfHalves(
        string name, double bothFail, double onlyFirst, double onlySecond, double bothPass)
    {
        var halves = HalfTests.From(bothFail, onlyFirst, onlySecond, bothPass).Known();
        yield return ($"dc.woodruff_sawyer.{name}.phi_half", halves.HalfPhi);
        yield return ($"dc.woodruff_sawyer.{name}.phi", halves.Phi);
        yield return ($"dc.woodruff_sawyer.{name}.theta", halves.Agreement);
    }

    private static IEnumerable<(string Name, object Value)> Named(string name, DecisionConsistency consistency) =>
    [
        ($"{name}.p", consistency.Agreement), ($"{name}.chance", consistency.ByChance), ($"{name}.kappa", consistency.Kappa.Known()),
    ];

    private static ScoreDistribution Read(string file, int items) =>
        Tallies.Distribution(items, QuizData.Rows(file).Select(row => (QuizData.Whole(row["score"]), QuizData.Whole(row["count"]))));
}
