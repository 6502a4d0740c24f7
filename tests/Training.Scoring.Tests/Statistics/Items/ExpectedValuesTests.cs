using System.Globalization;

namespace Training.Scoring.Tests;

/// <summary>Every row of Data/Quizzes/expected.csv; its README names the sources and what is left out.</summary>
public sealed class ExpectedValuesTests
{
    private const string Slip = "kr20_mixed_variances_WRONG";

    private static readonly Dictionary<string, object> Ours = new(
        [.. Pairs(ItemValues.All()), .. Pairs(ReliabilityValues.All()), .. Pairs(IntervalValues.All()), .. Pairs(ChanceValues.All())],
        StringComparer.Ordinal);

    /// <summary>Families that are not in the file, and why.</summary>
    private static readonly Dictionary<string, string> LeftOut = new(StringComparer.Ordinal)
    {
        ["item.crt45."] = "data carried by a package under the GPL",
        ["item.quiz19."] = "data carried by a package under the GPL",
        ["dc.crt45."] = "data carried by a package under the GPL",
        ["dc.quiz19."] = "data carried by a package under the GPL",
        ["dc.subkoviak1988."] = "tables carried by a package under the GPL",
        ["irt."] = "no Rasch model is fitted",
    };

    public static TheoryData<string> Rows => [.. QuizData.Expected().Select(row => row.Name).Where(name => !IsSlip(name))];

    public static TheoryData<string> Slips => [.. QuizData.Expected().Select(row => row.Name).Where(IsSlip)];

    [Theory, MemberData(nameof(Rows))]
    public void A_computed_value_is_the_expected_one(string name)
    {
        var (_, expected, tolerance) = QuizData.Expected().Single(row => row.Name == name);

        var computed = Convert.ToString(Ours[name], CultureInfo.InvariantCulture)!; // null for null only

        if (tolerance == 0) Assert.Equal(expected, computed);
        else Assert.InRange(QuizData.Number(computed) - QuizData.Number(expected), -tolerance, tolerance);
    }

    [Theory, MemberData(nameof(Slips))]
    public void The_slip_of_mixing_variances_is_not_made(string name)
    {
        var slip = QuizData.Number(QuizData.Expected().Single(row => row.Name == name).Value);

        var kr20 = (double)Ours[name.Replace(Slip, "kr20", StringComparison.Ordinal)];

        Assert.True(Math.Abs(kr20 - slip) > 1e-4, $"{kr20} is what the slip gives");
    }

    [Fact]
    public void Every_row_is_asserted_and_nothing_is_computed_without_a_row() => Assert.Equal(
        QuizData.Expected().Select(row => row.Name).Where(name => !IsSlip(name)).Order(StringComparer.Ordinal),
        Ours.Keys.Order(StringComparer.Ordinal));

    [Fact]
    public void What_is_left_out_has_no_row() => Assert.All(
        LeftOut.Keys, family => Assert.DoesNotContain(QuizData.Expected(), row => row.Name.StartsWith(family, StringComparison.Ordinal)));

    private static bool IsSlip(string name) => name.EndsWith(Slip, StringComparison.Ordinal);

    private static IEnumerable<KeyValuePair<string, object>> Pairs(IEnumerable<(string Name, object Value)> values) =>
        values.Select(value => KeyValuePair.Create(value.Name, value.Value));
}
