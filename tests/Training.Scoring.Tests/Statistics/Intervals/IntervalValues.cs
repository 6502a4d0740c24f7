using System.Globalization;

namespace Training.Scoring.Tests;

/// <summary>What the library computes for the rows <c>ci.*</c> and <c>flags.*</c> of the expected values.</summary>
internal static class IntervalValues
{
    private static readonly (long Counted, long All)[] Shares =
    [
        (81, 263), (15, 148), (0, 20), (1, 29), (18, 20), (20, 20), (45, 50), (3, 10), (30, 100), (300, 1000), (0, 1), (1, 1), (7, 12),
    ];

    private static readonly (double Correlation, long People)[] Correlations = [(0.15, 20), (0.15, 100), (0.15, 400), (0.3, 30)];

    public static IEnumerable<(string Name, object Value)> All() =>
    [
        .. from share in Shares
           let name = $"ci.{share.Counted}_of_{share.All}"
           from value in Limits($"{name}.wilson", ShareInterval.Wilson(share.Counted, share.All, 0.95))
               .Concat(Limits($"{name}.clopper", ShareInterval.ClopperPearson(share.Counted, share.All, 0.95)))
           select value,
        .. Limits("ci.81_of_263.wilson90", ShareInterval.Wilson(81, 263, 0.90)),
        .. Limits("ci.81_of_263.wilson99", ShareInterval.Wilson(81, 263, 0.99)),
        .. from one in Correlations
           let name = string.Create(CultureInfo.InvariantCulture, $"ci.r{one.Correlation}_n{one.People}.fisher")
           from value in Limits(name, CorrelationInterval.Fisher(one.Correlation, one.People, 0.95))
           select value,
        ("flags.rows", QuizData.Rows("item-flags.csv").Count(row => row["flags"] == Flags(row))),
    ];

    private static IEnumerable<(string Name, object Value)> Limits(string name, Estimate<Interval> interval) =>
        [($"{name}_lo", interval.Known().Lower), ($"{name}_hi", interval.Known().Upper)];

    private static string Flags(IReadOnlyDictionary<string, string> row)
    {
        var flags = ItemFlags.Of(QuizData.Whole(row["n"]), QuizData.Whole(row["correct"]), QuizData.Number(row["r_rest"]));
        return flags.Count == 0 ? "none" : string.Join('+', flags.Select(Name));
    }

    private static string Name(ItemFlag flag) => flag switch
    {
        ItemFlag.TooFew => "too_few",
        ItemFlag.TooHard => "too_hard",
        ItemFlag.TooEasy => "too_easy",
        ItemFlag.Negative => "negative",
        ItemFlag.Weak => "weak",
    };
}
