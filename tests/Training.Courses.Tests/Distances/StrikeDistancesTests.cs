using CsCheck;

namespace Training.Courses.Tests.Distances;

/// <summary>
/// Distances against the check values CV-01 to CV-18 of the project's domain facts, section 8. CV-15 (Fahrenheit) is held by
/// <c>GuidanceSetTests</c> the other way round, CV-17 there too; CV-16 (strike speed) has no function here: speed decides nothing.
/// </summary>
public sealed class StrikeDistancesTests
{
    private const decimal Margin = 30;
    private static readonly ReachFraction Third = ReachFraction.Of(1, 3);
    private static readonly ReachFraction Half = ReachFraction.Of(1, 2);
    private static readonly ReachFraction TwoThirds = ReachFraction.Of(2, 3);
    private static readonly ReachFraction Whole = ReachFraction.Of(1, 1);

    [Theory]
    [InlineData("CV-01", 1, 2, 75)]
    [InlineData("CV-02", 1, 3, 50)]
    [InlineData("CV-03", 2, 3, 100)]
    [InlineData("CV-04", 1, 1, 150)]
    public void Reach_is_the_share_of_the_length(string row, int numerator, int denominator, int expected) =>
        Assert.True(StrikeDistances.Reach(150, ReachFraction.Of(numerator, denominator)) == expected, row);

    [Fact]
    public void CV_05_and_CV_06_add_the_margin()
    {
        Assert.Equal(90, StrikeDistances.MinimumWorkingLength(120, Half, Margin));
        Assert.Equal(96.7m, decimal.Round(StrikeDistances.MinimumWorkingLength(200, Third, Margin), 1));
    }

    /// <summary>Worked examples F-EX-01 to F-EX-08 at two thirds and at the whole length, 1 decimal.</summary>
    [Theory]
    [InlineData(60, 70, 90)]
    [InlineData(90, 90, 120)]
    [InlineData(100, 96.7, 130)]
    [InlineData(120, 110, 150)]
    [InlineData(150, 130, 180)]
    [InlineData(180, 150, 210)]
    [InlineData(200, 163.3, 230)]
    [InlineData(244, 192.7, 274)]
    public void Worked_examples_come_out(int length, double atTwoThirds, double atWhole)
    {
        Assert.Equal((decimal)atTwoThirds, decimal.Round(StrikeDistances.MinimumWorkingLength(length, TwoThirds, Margin), 1));
        Assert.Equal((decimal)atWhole, StrikeDistances.MinimumWorkingLength(length, Whole, Margin));
    }

    [Theory]
    [InlineData("CV-07", 122, 150, 1, 2, true)]
    [InlineData("CV-08", 122, 150, 1, 1, false)]
    [InlineData("CV-11", 152.4, 244, 1, 2, true)]
    [InlineData("CV-12", 152.4, 244, 2, 3, false)]
    [InlineData("exactly enough at 2/3", 130, 150, 2, 3, true)]
    [InlineData("a hair too short at 2/3", 129.9999, 150, 2, 3, false)]
    [InlineData("unrounded: 96.67 is needed", 96.666, 100, 2, 3, false)]
    public void A_tool_is_compared_unrounded(string row, double tool, double snake, int numerator, int denominator, bool expected) =>
        Assert.True(StrikeDistances.Meets((decimal)tool, (decimal)snake, ReachFraction.Of(numerator, denominator), Margin) == expected, row);

    [Fact]
    public void CV_09_and_CV_10_give_the_longest_snake()
    {
        Assert.Equal(184, StrikeDistances.LongestManageable(122, Half, Margin));
        Assert.Equal(92, StrikeDistances.LongestManageable(122, Whole, Margin));
        Assert.Equal(0, StrikeDistances.LongestManageable(20, Half, Margin));
    }

    [Fact]
    public void CV_12_no_tool_is_long_enough_stand_off_and_call()
    {
        var choice = StrikeDistances.Choose([61, 122, 152.4m], 244, new ReachRules([Third, Half, TwoThirds], Margin));

        var call = Assert.IsType<ToolChoice.StandOffAndCall>(choice);
        Assert.Equal(192.7m, decimal.Round(call.NeededCm, 1));
        Assert.Equal(193, StrikeDistances.ShownNeeded(call.NeededCm));
    }

    [Fact]
    public void The_shortest_tool_that_is_long_enough_is_taken() =>
        Assert.Equal(new ToolChoice.LongEnough(122, 110), StrikeDistances.Choose([152, 122, 60], 120, new ReachRules([TwoThirds], Margin)));

    [Fact]
    public void An_empty_kit_means_stand_off_and_call() =>
        Assert.Equal(new ToolChoice.StandOffAndCall(110), StrikeDistances.Choose([], 120, new ReachRules([TwoThirds], Margin)));

    [Fact]
    public void One_third_or_more_never_decides()
    {
        Assert.Equal(TwoThirds, new ReachRules([Third], Margin).Deciding);
        Assert.Equal(TwoThirds, new ReachRules([Third, Half], Margin).Deciding);
        Assert.Equal(Whole, new ReachRules([Third, Whole, TwoThirds], Margin).Deciding);
    }

    [Fact]
    public void CV_13_nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => StrikeDistances.Reach(0, Half));
        Assert.Throws<ArgumentOutOfRangeException>(() => StrikeDistances.Reach(-1, Half));
        Assert.Throws<ArgumentOutOfRangeException>(() => StrikeDistances.Reach(100, default));
        Assert.Throws<ArgumentOutOfRangeException>(() => ReachFraction.From(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ReachFraction.From(1.01m));
        Assert.Throws<ArgumentOutOfRangeException>(() => ReachFraction.Of(3, 2));
        Assert.Throws<ArgumentException>(() => new ReachRules([], Margin));
        Assert.Throws<ArgumentOutOfRangeException>(() => new ReachRules([Half], 0));
    }

    [Fact]
    public void CV_14_feet_are_exact()
    {
        Assert.Equal(182.88m, Lengths.InCentimetres(new(6, "ft")));
        Assert.Equal(304.8m, Lengths.InCentimetres(new(10, "ft")));
        Assert.Equal(152.4m, Lengths.InCentimetres(new(5, "ft")));
    }

    [Fact]
    public void CV_18_the_line_for_bystanders_is_the_larger_of_the_two()
    {
        Assert.Equal(304.8m, StrikeDistances.StandOffLine(150, 304.8m, Margin));
        Assert.Equal(330, StrikeDistances.StandOffLine(300, 304.8m, Margin));
    }

    [Fact]
    public void An_unknown_length_is_the_record_length()
    {
        Assert.Equal(244, StrikeDistances.LengthToReckonWith(null, 244));
        Assert.Equal(120, StrikeDistances.LengthToReckonWith(120, 244));
        Assert.Throws<ArgumentOutOfRangeException>(() => StrikeDistances.LengthToReckonWith(0, 244));
    }

    [Fact]
    public void Needed_lengths_are_shown_rounded_up_and_manageable_snakes_rounded_down()
    {
        Assert.Equal(97, StrikeDistances.ShownNeeded(96.1m));
        Assert.Equal(138, StrikeDistances.ShownManageable(138.9m));
    }

    [Fact]
    public void Rules_come_from_guidance()
    {
        var (set, _) = CourseFixture.ReadWith();
        var margin = new GuidanceEntry("margin", "margin", new GuidanceValue.Quantity(1, "ft"), "US", "any", new(2024, 1, 1), null, "F-DST-21", "test", FactStanding.Confirmed);

        var rules = ReachRules.From(set.Guidance.AllInForce("strike-reach", "US", "any", new(2026, 1, 1)), margin);

        Assert.Equal((TwoThirds, 30.48m), (rules.Deciding, rules.MarginCm));
        Assert.Throws<ArgumentException>(() => ReachRules.From([margin], margin));
    }

    [Fact]
    public void A_longer_snake_never_needs_less_and_a_longer_tool_is_never_refused() => Check.Sample(
        Gen.Select(Gen.Int[1, 40_000], Gen.Int[1, 40_000], Gen.Int[1, 40_000], Gen.Int[1, 40]),
        (a, b, tool, lower) =>
        {
            var fraction = ReachFraction.Of(Math.Max(1, lower / 2), lower);
            var (shorter, longer) = (Math.Min(a, b) / 100m, Math.Max(a, b) / 100m);
            Assert.True(StrikeDistances.MinimumWorkingLength(shorter, fraction, Margin) <= StrikeDistances.MinimumWorkingLength(longer, fraction, Margin));
            if (StrikeDistances.Meets(tool, longer, fraction, Margin)) Assert.True(StrikeDistances.Meets(tool, shorter, fraction, Margin));
            if (StrikeDistances.Meets(tool, longer, fraction, Margin)) Assert.True(StrikeDistances.Meets(tool + 1, longer, fraction, Margin));
        });

    [Fact]
    public void A_fraction_survives_the_decimal_that_a_file_keeps_it_in() => Check.Sample(
        Gen.Int[1, 100].SelectMany(denominator => Gen.Select(Gen.Int[1, denominator], Gen.Const(denominator))),
        (numerator, denominator) => Assert.Equal(ReachFraction.Of(numerator, denominator), ReachFraction.From((decimal)numerator / denominator)));
}
