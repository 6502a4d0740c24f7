using System.Text.RegularExpressions;

namespace Training.Courses.Tests.Library;

/// <summary>The sheets that this repository ships, held against what their facts allow.</summary>
public sealed partial class ShippedSpeciesTests
{
    private static readonly CourseReading Reading = CourseReader.Read(CourseFiles.FromFolder(ShippedCourses.Folder));
    private static readonly SpeciesLibrary Library = Reading.Library ?? SpeciesLibrary.Empty;

    /// <summary>Every row of the domain reference: 25 venomous species, 9 groups that are taken for one.</summary>
    public static TheoryData<string> Rows =>
        [.. Enumerable.Range(1, 25).Select(number => $"F-SP-{number:00}"), .. Enumerable.Range(1, 9).Select(number => $"F-LK-{number:00}")];

    /// <summary>Alaska and Hawaii are in no set: no source of a sheet speaks of them.</summary>
    private static readonly string[] InNoSet = ["US-AK", "US-HI"];

    [Theory, MemberData(nameof(Rows))]
    public void Every_row_has_one_sheet_with_a_name_in_both_languages(string row)
    {
        var sheet = Assert.Single(Library.Species, sheet => sheet.Fact.Id == row);

        Assert.All(LanguageTags.All, language => Assert.NotEmpty(sheet.Words[language].Name));
        Assert.Equal(row.StartsWith("F-SP", StringComparison.Ordinal), sheet.IsVenomous);
    }

    [Fact]
    public void Twenty_five_are_venomous_and_three_of_them_coral_snakes()
    {
        Assert.Equal(25, Library.Species.Count(sheet => sheet.IsVenomous));
        Assert.Equal(3, Library.Species.Count(sheet => sheet.Group == SpeciesGroup.Coral));
    }

    [Fact]
    public void Every_venomous_sheet_gives_its_lengths_and_where_it_lives() => Assert.All(Library.Species.Where(sheet => sheet.IsVenomous), sheet =>
    {
        Assert.NotNull(sheet.Where);
        Assert.NotEmpty(sheet.Typical);
        Assert.NotNull(sheet.Longest);
    });

    /// <summary>The reader compares each length with its fact; this keeps the facts themselves honest: nobody looked a remembered one up.</summary>
    [Fact]
    public void What_field_guides_are_remembered_to_say_is_from_memory() => Assert.All(
        Reading.Facts.Where(fact => fact.Source.Contains("from memory", StringComparison.Ordinal)), fact => Assert.Equal(FactStanding.FromMemory, fact.Standing));

    [Fact]
    public void A_length_is_a_figure_that_its_fact_says() => Assert.All(
        Library.Species.SelectMany(sheet => sheet.Typical.Concat(sheet.Greatest).Select(length => (sheet.Id, Length: length))), item =>
        {
            foreach (var figure in new[] { item.Length.LeastCm, item.Length.MostCm }.OfType<decimal>())
                Assert.Matches($@"\b{figure:0}\b", item.Length.Fact.Statement);
        });

    [Fact]
    public void A_state_is_listed_only_where_its_fact_names_it() => Assert.All(Library.Species.Where(sheet => sheet.Where is not null), sheet =>
    {
        foreach (var state in sheet.Where!.States) Assert.Contains(StateNames[state], sheet.Where.Fact.Statement, StringComparison.Ordinal);
    });

    [Fact]
    public void Every_contiguous_state_is_in_a_set()
    {
        var held = Library.Regions.SelectMany(region => region.States).ToHashSet(StringComparer.Ordinal);

        Assert.Equal(InNoSet, UsStates.All.Where(state => !held.Contains(state)).Order());
    }

    [Theory, InlineData(Language.English), InlineData(Language.Spanish)]
    public void Nothing_invites_anybody_nearer(Language language) => Assert.All(Texts(language), text => Assert.DoesNotMatch(
        language == Language.English
            ? @"(?i)\b(go|get|step|move|come|lean|walk) (up|closer|nearer|in)\b|\blook (closely|closer)\b|\bcheck the\b|\bcount the\b|\bpick (it )?up\b|\bharmless\b(?!\.)|\bsafe\b"
            : @"(?i)\b(acérquese|arrímese|fíjese|revise|cuente los|levántela|agárrela)\b|\b(inofensiva)\b(?!\.)|\bsegura\b",
        text));

    [Theory, InlineData(Language.English, "venomous|close|unknown|line|every rattlesnake|books"), InlineData(Language.Spanish, "venenos|cerca|desconocida|toda cascabel|libros")]
    public void Every_sheet_says_how_little_can_be_known_from_outside(Language language, string words) =>
        Assert.All(Library.Species, sheet => Assert.Matches(words, Plain(sheet.Words[language].Texts[SpeciesTopic.Sure].Html)));

    [Theory, InlineData(Language.English, "as venomous|as\nvenomous"), InlineData(Language.Spanish, "venenosa")]
    public void Every_look_alike_is_to_be_treated_as_venomous(Language language, string words) =>
        Assert.All(Library.Species.Where(sheet => !sheet.IsVenomous), sheet => Assert.Matches(words, Plain(sheet.Words[language].Texts[SpeciesTopic.Sure].Html)));

    /// <summary>Those come from the guidance in force, never from the words of a sheet.</summary>
    [Theory, InlineData(Language.English), InlineData(Language.Spanish)]
    public void No_distance_to_keep_and_no_first_aid_is_written_in_words(Language language)
    {
        Assert.All(Texts(language), text => Assert.DoesNotMatch(@"\b(feet|pies? de distancia|metres|metros|bandage|vendaje|tourniquet|torniquete|911|antivenom|antiveneno)\b", text));
        Assert.DoesNotContain(Library.Species.SelectMany(sheet => sheet.Words[language].Notes), note =>
            note.Id.StartsWith("F-AID", StringComparison.Ordinal) || note.Id.StartsWith("F-NOT", StringComparison.Ordinal));
    }

    private static IEnumerable<string> Texts(Language language) => Library.Species.SelectMany(sheet => sheet.Words[language].Texts.Values.Select(text => Plain(text.Html)));

    private static string Plain(string html) => Tag().Replace(html, "").ReplaceLineEndings(" ");

    private static readonly Dictionary<string, string> StateNames = new(StringComparer.Ordinal)
    {
        ["US-AZ"] = "Arizona", ["US-AR"] = "Arkansas", ["US-CA"] = "California", ["US-FL"] = "Florida", ["US-GA"] = "Georgia", ["US-KS"] = "Kansas",
        ["US-LA"] = "Louisiana", ["US-MN"] = "Minnesota", ["US-MS"] = "Mississippi", ["US-MT"] = "Montana", ["US-NC"] = "North Carolina",
        ["US-NH"] = "New Hampshire", ["US-NM"] = "New Mexico", ["US-NV"] = "Nevada", ["US-OK"] = "Oklahoma", ["US-TX"] = "Texas", ["US-UT"] = "Utah",
    };

    [GeneratedRegex("<[^>]+>", RegexOptions.None, 1000)]
    private static partial Regex Tag();
}
