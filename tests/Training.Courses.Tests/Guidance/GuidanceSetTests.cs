namespace Training.Courses.Tests.Guidance;

/// <summary>Look-up of guidance. CV ids are rows of the project's domain facts, section 8, with the sources named there.</summary>
public sealed class GuidanceSetTests
{
    private static readonly GuidanceSet Set = new(
        [
            // Utah wildlife agency: 5 ft in April 2022, 10 ft in 2024 and 2025 (F-DST-20, F-DST-21).
            Length("stand-off-2022", "US", 5, "ft", "2022-04-06", "stand-off-2024"),
            Length("stand-off-2024", "US", 10, "ft", "2024-01-01"),
            Length("stand-off-elsewhere", "XX", 182.88m, "cm", "2017-09-01"),

            // Regional plans (F-REG-01 to F-REG-04).
            Word("pib-pit-viper", "pressure-bandage", "not-recommended", "US", "pit-viper", "2011-12-01"),
            Word("pib-coral", "pressure-bandage", "consider", "US", "coral", "2018-01-01"),
            Word("pib-unknown", "pressure-bandage", "not-recommended", "US", "unidentified", "2011-12-01"),
            Word("pib-au", "pressure-bandage", "required", "AU", "any", "2018-01-01"),
            Word("wash-us", "wash-bite", "yes", "US", "any", "2016-07-01"),
            Word("wash-au", "wash-bite", "no", "AU", "any", "2018-01-01"),

            // CDC/NIOSH 2016 page and current list (F-CON-01).
            Word("limb-2016", "limb-position", "below-heart", "US", "any", "2016-07-01", "limb-2023"),
            Word("limb-2023", "limb-position", "neutral", "US", "any", "2023-05-24"),
        ],
        new Dictionary<Language, IReadOnlyDictionary<string, string>>());

    [Theory]
    [InlineData("CV-17 Utah, 2022", "2022-04-06", 152.4)]
    [InlineData("CV-17 Utah, 2025", "2025-04-09", 304.8)]
    [InlineData("the day before the successor", "2023-12-31", 152.4)]
    [InlineData("the first day of the successor", "2024-01-01", 304.8)]
    public void The_stand_off_in_force_depends_on_the_day(string row, string on, double centimetres)
    {
        var entry = Set.InForce("stand-off", "US", "any", DateOnly.Parse(on, System.Globalization.CultureInfo.InvariantCulture));

        Assert.NotNull(entry);
        Assert.True((decimal)centimetres == Lengths.InCentimetres(Assert.IsType<GuidanceValue.Quantity>(entry.Value)), row);
    }

    [Fact]
    public void An_entry_ends_the_day_before_its_successor_begins()
    {
        Assert.Equal(["stand-off-2022"], Set.AllInForce("stand-off", "US", "any", new(2023, 12, 31)).Select(entry => entry.Id));
        Assert.Equal(["stand-off-2024"], Set.AllInForce("stand-off", "US", "any", new(2024, 1, 1)).Select(entry => entry.Id));
    }

    [Theory]
    [InlineData("CV-20 US pit viper", "pressure-bandage", "US", "pit-viper", "not-recommended")]
    [InlineData("CV-20 US coral", "pressure-bandage", "US", "coral", "consider")]
    [InlineData("CV-20 AU any", "pressure-bandage", "AU", "any", "required")]
    [InlineData("CV-20 US unknown", "pressure-bandage", "US", "unidentified", "not-recommended")]
    [InlineData("a group that nobody names", "pressure-bandage", "US", "sea-serpent", "not-recommended")]
    [InlineData("a group without a row of its own", "pressure-bandage", "AU", "pit-viper", "required")]
    [InlineData("CV-21 US", "wash-bite", "US", "unidentified", "yes")]
    [InlineData("CV-21 AU", "wash-bite", "AU", "coral", "no")]
    [InlineData("a state takes its country's", "wash-bite", "US-UT", "any", "yes")]
    public void The_plan_depends_on_region_and_snakes(string row, string subject, string region, string snakes, string expected)
    {
        var entry = Set.InForce(subject, region, snakes, new(2026, 1, 1));

        Assert.True(entry?.Value == new GuidanceValue.Code(expected), row);
    }

    [Theory]
    [InlineData("CV-22 CDC 2016 version", "2020-01-01", "below-heart")]
    [InlineData("CV-22 current version", "2026-01-01", "neutral")]
    public void Limb_position_changed(string row, string on, string expected)
    {
        var entry = Set.InForce("limb-position", "US", "any", DateOnly.Parse(on, System.Globalization.CultureInfo.InvariantCulture));

        Assert.True(entry?.Value == new GuidanceValue.Code(expected), row);
    }

    [Fact]
    public void An_unlisted_region_takes_the_largest_stand_off() =>
        Assert.Equal("stand-off-2024", Set.InForce("stand-off", "ZZ", "any", new(2026, 1, 1))?.Id);

    [Fact]
    public void An_unlisted_region_takes_the_largest_of_that_day() =>
        Assert.Equal("stand-off-elsewhere", Set.InForce("stand-off", "ZZ", "any", new(2023, 1, 1))?.Id);

    [Fact]
    public void An_unlisted_region_has_no_first_aid_step_of_another() =>
        Assert.Null(Set.InForce("pressure-bandage", "ZZ", "any", new(2026, 1, 1)));

    [Fact]
    public void Before_its_first_day_nothing_is_in_force() =>
        Assert.Null(Set.InForce("wash-bite", "US", "any", new(2016, 6, 30)));

    [Fact]
    public void Sources_side_by_side_are_all_shown_and_the_largest_one_counts()
    {
        var set = new GuidanceSet(
            [Length("third", "US", 1m / 3, "fraction", "2020-01-01"), Length("two-thirds", "US", 2m / 3, "fraction", "2019-01-01"), Length("half", "US", 0.5m, "fraction", "2021-01-01")],
            new Dictionary<Language, IReadOnlyDictionary<string, string>>());

        Assert.Equal(["third", "two-thirds", "half"], set.AllInForce("stand-off", "US", "any", new(2026, 1, 1)).Select(entry => entry.Id));
        Assert.Equal("two-thirds", set.InForce("stand-off", "US", "any", new(2026, 1, 1))?.Id);
    }

    [Theory]
    [InlineData("10", "ft", "10 feet (3.0 metres)", "10 pies (3.0 metros)")]
    [InlineData("1", "ft", "1 foot (0.3 metres)", "1 pie (0.3 metros)")]
    [InlineData("5.5", "ft", "5.5 feet (1.7 metres)", "5.5 pies (1.7 metros)")]
    [InlineData("30", "cm", "30 centimetres (12 inches)", "30 centímetros (12 pulgadas)")]
    [InlineData("15", "minutes", "15 minutes", "15 minutos")]
    [InlineData("29.4", "°C", "29.4 °C (85 °F)", "29.4 °C (85 °F)")]
    [InlineData("43.3", "°C", "43.3 °C (110 °F)", "43.3 °C (110 °F)")]
    [InlineData("0.5", "fraction", "one-half", "la mitad")]
    [InlineData("1", "fraction", "the whole", "la totalidad")]
    [InlineData("0.4", "fraction", "2/5", "2/5")]
    public void Quantities_are_written_with_both_units_in_the_language_of_the_page(string amount, string unit, string english, string spanish)
    {
        var quantity = new GuidanceValue.Quantity(decimal.Parse(amount, System.Globalization.CultureInfo.InvariantCulture), unit);

        Assert.Equal(english, Set.Text(quantity, Language.English));
        Assert.Equal(spanish, Set.Text(quantity, Language.Spanish));
    }

    [Fact]
    public void Two_thirds_are_two_thirds() =>
        Assert.Equal("two-thirds", Set.Text(new GuidanceValue.Quantity(2m / 3, "fraction"), Language.English));

    private static GuidanceEntry Length(string id, string region, decimal amount, string unit, string from, string? next = null) =>
        Entry(id, "stand-off", new GuidanceValue.Quantity(amount, unit), region, "any", from, next);

    private static GuidanceEntry Word(string id, string subject, string code, string region, string snakes, string from, string? next = null) =>
        Entry(id, subject, new GuidanceValue.Code(code), region, snakes, from, next);

    private static GuidanceEntry Entry(string id, string subject, GuidanceValue value, string region, string snakes, string from, string? next) => new(
        id, subject, value, region, snakes, DateOnly.Parse(from, System.Globalization.CultureInfo.InvariantCulture), next, "F-DST-21", "test", FactStanding.Confirmed);
}
