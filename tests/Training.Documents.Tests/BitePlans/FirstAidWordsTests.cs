using Training.Courses;
using Training.Documents.BitePlans;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.BitePlans;

/// <summary>First aid follows guidance in force, and where guidance says something else than its words, there is none.</summary>
public sealed class FirstAidWordsTests
{
    private static readonly DateOnly Day = new(2026, 11, 27);

    private static GuidanceEntry Entry(string subject, GuidanceValue value, string snakes = "any", int year = 2016) =>
        new($"{subject}-{snakes}", subject, value, "US", snakes, new(year, 1, 1), null, "F-1", $"Agency of {subject}; copy", FactStanding.Confirmed);

    private static GuidanceValue.Code Code(string name) => new(name);

    private static GuidanceEntry[] Entries { get; } =
    [
        Entry("limb-position", Code("neutral"), year: 2023), Entry("medicines", Code("no-aspirin")), Entry("snake-after-bite", Code("leave")), Entry("wash-bite", Code("yes")),
        Entry("swelling-mark-interval", new GuidanceValue.Quantity(15, "minutes")), Entry("pressure-bandage", Code("not-recommended"), "pit-viper"),
        Entry("pressure-bandage", Code("not-recommended"), "unidentified"), Entry("pressure-bandage", Code("consider"), "coral"), Entry("walking", Code("carry"), "coral"),
    ];

    private static FirstAidGuidance? InForce(IEnumerable<GuidanceEntry> entries, string region = "US-AZ", bool hasCoral = false, Language language = Language.English) => FirstAidWords.InForce(
        new([.. entries], new Dictionary<Language, IReadOnlyDictionary<string, string>>
        {
            [Language.English] = new Dictionary<string, string> { ["neutral"] = "in a neutral, comfortable position", ["no-aspirin"] = "no aspirin, ibuprofen or naproxen" },
            [Language.Spanish] = new Dictionary<string, string> { ["neutral"] = "en una posición neutral y cómoda", ["no-aspirin"] = "sin aspirina, ibuprofeno ni naproxeno" },
        }),
        region, hasCoral, Day, language);

    [Fact]
    public void Its_lines_say_the_values_in_force_and_its_source_is_the_youngest()
    {
        var aid = InForce(Entries)!; // not null: every value is there

        Assert.Contains("Calm and still; the bitten limb in a neutral, comfortable position.", aid.Do);
        Assert.Contains("Mark the edge of the swelling with the time; again every 15 minutes.", aid.Do);
        Assert.Contains("No alcohol, no caffeine, no aspirin, ibuprofen or naproxen.", aid.DoNot);
        Assert.Equal(("Agency of limb-position", new(2023, 1, 1)), (aid.Source, aid.EffectiveFrom));
        Assert.DoesNotContain(aid.Do.Concat(aid.DoNot), line => line.Contains("coral", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_coral_snakes_may_live_two_more_lines_stand()
    {
        var (without, with) = (InForce(Entries)!, InForce(Entries, hasCoral: true)!); // not null: every value is there

        Assert.Equal("Coral snake: carry the person, where that is possible.", Assert.Single(with.Do.Except(without.Do)));
        Assert.Equal("Coral snake: a pressure bandage only if emergency services say so.", Assert.Single(with.DoNot.Except(without.DoNot)));
    }

    [Fact]
    public void In_Spanish_it_has_as_many_lines_and_the_values_in_Spanish()
    {
        var (english, spanish) = (InForce(Entries, hasCoral: true)!, InForce(Entries, hasCoral: true, language: Language.Spanish)!); // not null: every value is there

        Assert.Equal((english.Do.Count, english.DoNot.Count), (spanish.Do.Count, spanish.DoNot.Count));
        Assert.Contains("Sin alcohol ni cafeína, sin aspirina, ibuprofeno ni naproxeno.", spanish.DoNot);
        Assert.Empty(english.Do.Intersect(spanish.Do));
    }

    [Theory]
    [InlineData(Language.English, PaperSize.UsLetter)]
    [InlineData(Language.English, PaperSize.A4)]
    [InlineData(Language.Spanish, PaperSize.UsLetter)]
    [InlineData(Language.Spanish, PaperSize.A4)]
    public void With_coral_snakes_and_three_hospitals_an_overdue_plan_of_the_demonstration_still_fits_its_page(Language language, PaperSize paper)
    {
        var plan = Plans.Overdue(language, paper);
        var problems = new List<Problem>();

        BitePlanChecks.CanPrint(
            plan with
            {
                FirstAid = InForce(Entries, hasCoral: true, language: language), IsDemonstration = true,
                Hospitals = [.. plan.Hospitals, new("Mesa del Viento Medical Center", "1200 Palo Verde Avenue, Mesa del Viento; 602-555-0164", 95)],
                Antivenom = [.. plan.Antivenom, plan.Antivenom[0] with { HospitalName = "Mesa del Viento Medical Center" }],
            },
            FontFaces.Default, problems);

        Assert.Equal([], problems.Select(problem => $"{problem.Code} {string.Join(' ', problem.Arguments)}"));
    }

    public static TheoryData<string, string> Other_values => new()
    {
        { "snake-after-bite", "kill-or-bring" }, { "wash-bite", "no" }, { "pressure-bandage", "required" },
    };

    [Theory, MemberData(nameof(Other_values))]
    public void A_value_that_it_has_no_words_for_leaves_no_first_aid(string subject, string value)
    {
        Assert.Null(InForce(Entries.Select(entry => entry.Subject == subject ? entry with { Value = Code(value) } : entry)));
    }

    [Fact]
    public void A_region_that_nobody_speaks_for_has_none()
    {
        Assert.Null(InForce(Entries, region: "MX"));
        Assert.All(Entries.Select(entry => entry.Subject).Distinct().Except(["walking", "swelling-mark-interval"]), subject => Assert.Null(InForce(Entries.Where(entry => entry.Subject != subject))));
        Assert.Null(InForce(Entries.Where(entry => entry.Subject != "walking"), hasCoral: true));
    }
}
