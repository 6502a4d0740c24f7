namespace Training.Courses.Tests.Species;

public sealed class SpeciesReaderTests
{
    private static readonly CourseReading Whole = SpeciesFixture.Read();

    [Fact]
    public void Sheets_and_sets_without_findings_are_read_in_the_order_of_their_files()
    {
        Assert.Empty(Whole.Problems);
        Assert.Equal(["red-one", "ringed-one", "plain-one"], Whole.Species.Select(sheet => sheet.Id));
        Assert.Equal(["west", "south"], Whole.Regions.Select(region => region.Id));
        Assert.Equal("The west", Whole.Regions[0].Names[Language.Spanish]);
    }

    [Fact]
    public void A_sheet_is_read_as_written()
    {
        var sheet = Whole.Species[0];

        Assert.Equal((SpeciesGroup.PitViper, "pit-viper", true), (sheet.Group, sheet.GuidanceGroup, sheet.IsVenomous));
        Assert.Equal(["Crotalus ruber"], sheet.ScientificNames);
        Assert.Equal(["US-AZ", "US-NM"], sheet.Where!.States);
        Assert.True(sheet.Where.IsWider);
        Assert.Equal([(60, 110, FactStanding.Confirmed)], sheet.Typical.Select(length => (length.LeastCm, length.MostCm, length.Fact.Standing)));
        Assert.Equal(["plain-one"], sheet.ConfusedWith);
    }

    [Fact]
    public void Lengths_keep_their_own_standing_and_the_longest_is_reckoned_with_whatever_that_is()
    {
        var sheet = Whole.Species[0];

        Assert.Equal([(140m, null, FactStanding.Confirmed), (152.4m, 152.4m, FactStanding.FromMemory)], sheet.Greatest.Select(length => (length.LeastCm, length.MostCm, length.Fact.Standing)));
        Assert.Equal(152.4m, sheet.Longest!.LongestCm);
        Assert.Null(Whole.Species[1].Longest);
    }

    [Fact]
    public void Words_carry_their_sources_by_number_and_know_what_they_rest_on()
    {
        var words = Whole.Species[0].Words[Language.English];

        Assert.Equal("Red one", words.Name);
        Assert.Equal([SpeciesTopic.Range, SpeciesTopic.Marks, SpeciesTopic.Sure], words.Texts.Keys.Order());
        Assert.Equal(["F-SP-91", "F-SP-91-LEN"], words.Notes.Select(note => note.Id));
        Assert.Equal([FactStanding.Confirmed, FactStanding.FromMemory], words.Texts[SpeciesTopic.Marks].Facts.Select(fact => fact.Standing));
        Assert.Contains("hills.<sup class=\"note\"><a role=\"doc-noteref\" href=\"#note-1\" id=\"note-1-here\">1</a></sup>", words.Texts[SpeciesTopic.Range].Html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_look_alike_counts_as_a_snake_that_nobody_has_named()
    {
        Assert.Equal((GuidanceSet.Unidentified, false), (Whole.Species[2].GuidanceGroup, Whole.Species[2].IsVenomous));
        Assert.Equal("coral", Whole.Species[1].GuidanceGroup);
    }

    [Fact]
    public void Confusion_is_found_from_either_side()
    {
        var library = Whole.Library!;

        Assert.Equal(["plain-one"], library.ConfusedWith(library.Find("red-one")!).Select(sheet => sheet.Id));
        Assert.Equal(["red-one"], library.ConfusedWith(library.Find("plain-one")!).Select(sheet => sheet.Id));
        Assert.Empty(library.ConfusedWith(library.Find("ringed-one")!));
    }

    [Theory]
    [InlineData("red-one", "US-AZ", SpeciesPresence.Named)]
    [InlineData("red-one", "US-NV", SpeciesPresence.InWords)]        // the source names an area in words as well
    [InlineData("ringed-one", "US-FL", SpeciesPresence.Named)]
    [InlineData("ringed-one", "US-GA", SpeciesPresence.Elsewhere)]
    [InlineData("plain-one", "US-GA", SpeciesPresence.InWords)]      // no source at all is no leave to say that it is not there
    public void A_state_is_named_or_may_be_meant_or_is_not_named(string id, string state, SpeciesPresence presence) =>
        Assert.Equal(presence, SpeciesLibrary.PresenceIn(Whole.Library!.Find(id)!, state));

    [Fact]
    public void A_state_knows_its_sets()
    {
        Assert.Equal(["west"], Whole.Library!.RegionsOf("US-NV").Select(region => region.Id));
        Assert.Empty(Whole.Library!.RegionsOf("US-AK"));
        Assert.Equal(["ringed-one"], Whole.Library!.Of(Whole.Regions[1]).Select(sheet => sheet.Id));
    }

    [Fact]
    public void Courses_and_their_snapshots_are_the_same_with_and_without_sheets()
    {
        var without = CourseFixture.Read();

        Assert.Equal(without.Snapshots.Select(snapshot => snapshot.Hash), Whole.Snapshots.Select(snapshot => snapshot.Hash));
        Assert.Empty(without.Species);
        Assert.NotNull(without.Library);
    }

    [Fact]
    public void One_finding_withholds_all_sheets_and_no_course()
    {
        var (reading, _) = SpeciesFixture.ReadWith("es/species.md", "- `name` Plain one\n", "");

        Assert.Null(reading.Library);
        Assert.Empty(reading.Species);
        Assert.Equal(["alpha", "beta"], reading.Courses.Select(course => course.Id));
    }

    [Fact]
    public void No_slip_in_a_sheet_makes_the_reader_throw() => CsCheck.Check.Sample(
        CsCheck.Gen.Select(
            CsCheck.Gen.Int[0, 5], CsCheck.Gen.Int[0, 1_000_000], CsCheck.Gen.String[CsCheck.Gen.Char["\0{}[]:-#`><\"'\n\tx&*!|%@,? 9"], 0, 4], CsCheck.Gen.Int[0, 3]),
        (which, where, typed, gone) =>
        {
            var texts = SpeciesFixture.Texts();
            var file = new[] { "species.yaml", "regions.yaml", "en/species.md", "es/species.md", "en/regions.md", "es/regions.md" }[which];
            var at = where % texts[file].Length;
            texts[file] = texts[file][..at] + typed + texts[file][Math.Min(texts[file].Length, at + gone)..];
            Assert.NotNull(SpeciesFixture.Read(texts));
        },
        iter: 500);
}
