namespace Training.Certification.Tests;

public sealed class ScorerBondTests
{
    private static readonly (Guid Candidate, Guid Scorer) People = (Guid.NewGuid(), Guid.NewGuid());

    // The table of docs/rules.md, "Separation of hats".
    [Theory]
    [InlineData("2024-03-10", "2026-03-10", false)]
    [InlineData("2024-03-11", "2026-03-10", true)]
    [InlineData("2026-03-10", "2026-03-10", true)]
    [InlineData("2026-03-11", "2026-03-10", false)]
    [InlineData("2024-02-29", "2026-02-28", true)]
    [InlineData("2024-02-29", "2026-03-01", false)]
    public void A_teaching_binds_for_two_years(string taughtOn, string sheetOn, bool binds) =>
        Assert.Equal(binds, ScorerBond.Find([Taught(People.Scorer, taughtOn)], People.Scorer, Day(sheetOn)) is not null);

    [Fact]
    public void The_latest_teaching_by_that_scorer_is_named_and_nobody_elses()
    {
        var found = ScorerBond.Find(
            [Taught(People.Scorer, "2025-01-01"), Taught(People.Scorer, "2025-06-01"), Taught(Guid.NewGuid(), "2025-12-01")], People.Scorer, Day("2026-01-01"));

        Assert.Equal(Day("2025-06-01"), found?.On);
    }

    private static Teaching Taught(Guid by, string on) => new(Guid.NewGuid(), People.Candidate, by, Day(on));

    private static DateOnly Day(string text) => DateOnly.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
