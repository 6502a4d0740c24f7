using Training.Certification;
using Training.Records;
using Training.Web.Features.Encounters;

namespace Training.Web.Tests.Features.Encounters;

public sealed class EncounterTalliesTests
{
    private static readonly Guid North = Guid.CreateVersion7();
    private static readonly Guid South = Guid.CreateVersion7();

    private static EncounterCount Count(Guid site, string day, EncounterKind kind, int count = 1) =>
        new(site, site == North ? "North" : "South", kind, DateOnly.ParseExact(day, "yyyy-MM-dd"), count);

    private static readonly EncounterCount[] Counts =
    [
        Count(North, "2026-01-31", EncounterKind.Sighting, 2), Count(South, "2026-01-01", EncounterKind.NearMiss),
        Count(South, "2026-03-01", EncounterKind.Moved), Count(North, "2026-03-31", EncounterKind.Moved, 3),
    ];

    [Fact]
    public void Every_month_of_the_span_is_there_with_what_fell_into_it()
    {
        var months = EncounterTallies.ByMonth(Counts, new(2026, 1, 15), new(2026, 3, 31));

        Assert.Equal(
            ["2026-01 2/1/3", "2026-02 0/0/0", "2026-03 0/0/4"],
            months.Select(month => $"{month.Of:yyyy-MM} {month.Count(EncounterKind.Sighting)}/{month.Count(EncounterKind.NearMiss)}/{month.All}"));
    }

    [Fact]
    public void Sites_are_summed_by_name() =>
        Assert.Equal([("North", 5), ("South", 2)], EncounterTallies.BySite(Counts).Select(site => (site.Of, site.All)));

    [Fact]
    public void A_span_of_many_years_shows_its_latest_months() =>
        Assert.Equal(EncounterTallies.MostMonths, EncounterTallies.ByMonth([], new(1990, 1, 1), new(2026, 3, 31)).Count);

    [Fact]
    public void Close_ones_stand_open_on_top_of_the_others_and_the_heights_add_up()
    {
        var chart = MonthChart.Of(EncounterTallies.ByMonth(Counts, new(2026, 1, 1), new(2026, 3, 31)), "label", month => $"{month:MM}");

        var (calm, close, march) = (chart.Columns[0], chart.Columns[1], chart.Columns[2]);
        Assert.Equal((true, false, true, 3), (calm.IsPass, close.IsPass, march.IsPass, chart.Columns.Count));
        Assert.Equal((calm.X, calm.Y), (close.X, Math.Round(close.Y + close.Height, 1)));
        Assert.Equal(MonthChart.Ground, calm.Y + calm.Height, 3);
        Assert.Equal(2.0, calm.Height / close.Height, 2);
        Assert.Equal(4.0 / 3, march.Height / (calm.Height + close.Height), 2);
    }
}
