using CsCheck;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class HoldsTests
{
    private static readonly Hold Open = new(Id(1), Worker, On("2026-03-02"), ReviewCause.NearMiss, Id(2), null);
    private static readonly Hold Concluded = Open with { Conclusion = new(On("2026-03-09"), Lead, "Went through the near miss together.") };

    /// <summary>The table of docs/rules.md, "Reviews and holds".</summary>
    [Theory]
    [InlineData("2026-03-01", false, false)]
    [InlineData("2026-03-02", true, true)]
    [InlineData("2026-03-09", true, true)]
    [InlineData("2026-03-10", false, true)]
    [InlineData("2026-03-17", false, true)]
    [InlineData("2030-01-01", false, true)]
    public void A_hold_touches_its_first_day_the_day_of_the_conclusion_and_every_day_between(string day, bool concluded, bool open)
    {
        Assert.Equal(concluded, Holds.IsOn([Concluded], On(day)));
        Assert.Equal(open, Holds.IsOn([Open], On(day)));
    }

    [Theory]
    [InlineData("2026-03-02", false)]
    [InlineData("2026-03-16", false)]
    [InlineData("2026-03-17", true)]
    public void An_open_review_is_overdue_when_more_than_14_days_have_passed(string day, bool isOverdue) =>
        Assert.Equal(isOverdue, Reviews.IsOverdue(On("2026-03-02"), On(day)));

    [Fact]
    public void Without_holds_nobody_is_on_hold() => Assert.False(Holds.IsOn([], On("2026-03-02")));

    /// <summary>The second implementation paints the days of each hold and looks one up.</summary>
    [Fact]
    public void Several_holds_are_on_exactly_on_the_days_that_one_of_them_touches() =>
        Gen.Select(Gen.Select(Gen.Int[0, 60], Gen.Int[-1, 20]).Array[0, 5], Gen.Int[0, 100]).Sample((spans, looked) =>
        {
            var start = On("2026-01-01");
            Hold[] holds = [.. spans.Select(span => Open with
            {
                From = start.AddDays(span.Item1),
                Conclusion = span.Item2 < 0 ? null : new(start.AddDays(span.Item1 + span.Item2), Lead, "Reviewed."),
            })];
            var painted = spans.SelectMany(span => Enumerable.Range(span.Item1, span.Item2 < 0 ? 200 : span.Item2 + 1)).ToHashSet();

            return Holds.IsOn(holds, start.AddDays(looked)) == painted.Contains(looked)
                && Holds.On(holds, start.AddDays(looked)).All(holds.Contains);
        });
}
