namespace Training.Courses.Tests.Species;

/// <summary>Each finding on its own: one change to good files, one finding with its code, file, line and part.</summary>
public sealed class SpeciesFindingTests
{
    private const string NoLine = "";

    /// <summary>File, text replaced, its replacement; code; file of the finding; text on its line (none: the whole file); part.</summary>
    public static TheoryData<string, string, string, string, string, string, string?> Findings => new()
    {
        // Structure.
        { "species.yaml", "  group: coral", "  group: coral\n  colour: red", CourseProblems.FieldUnknown, "species.yaml", "colour", "species ringed-one" },
        { "species.yaml", "    wider: true", "    wider: true\n    county: Pima", CourseProblems.FieldUnknown, "species.yaml", "county", "species red-one" },
        { "species.yaml", "  group: coral", "  group: cobra", CourseProblems.FieldValue, "species.yaml", "cobra", "species ringed-one" },
        { "species.yaml", "id: ringed-one", "id: red-one", CourseProblems.IdTwice, "species.yaml", "- id: red-one\n  group: coral", "species red-one" },
        { "species.yaml", "id: plain-one", "id: Plain_one", CourseProblems.IdForm, "species.yaml", "Plain_one", null },
        { "species.yaml", "  group: coral\n  fact: F-SP-91", "  group: coral\n  fact: F-SP-99", CourseProblems.FactUnknown, "species.yaml", "F-SP-99", "species ringed-one" },
        { "species.yaml", "      - US-NM", "      - US-ZZ", SpeciesProblems.StateUnknown, "species.yaml", "US-ZZ", "species red-one" },
        { "species.yaml", "      - US-NM", "      - US-AZ", CourseProblems.IdTwice, "species.yaml", "      - US-AZ\n    wider", "species red-one" },
        { "species.yaml", "states: [US-FL], ", "", SpeciesProblems.PlaceEmpty, "species.yaml", "where: {", "species ringed-one" },

        // Lengths.
        { "species.yaml", "standing: from-memory", "standing: confirmed", SpeciesProblems.StandingDiffers, "species.yaml", "least: 5", "species red-one" },
        { "species.yaml", "unit: ft, standing: from-memory, ", "unit: ft, ", CourseProblems.FieldMissing, "species.yaml", "least: 5", "species red-one" },
        { "species.yaml", "least: 60, most: 110, ", "", SpeciesProblems.LengthForm, "species.yaml", "{ unit: cm", "species red-one" },
        { "species.yaml", "least: 60, most: 110", "least: 110, most: 60", SpeciesProblems.LengthForm, "species.yaml", "least: 110", "species red-one" },
        { "species.yaml", "least: 60, most: 110, unit: cm", "least: 60, most: 110", CourseProblems.FieldMissing, "species.yaml", "least: 60", "species red-one" },
        { "species.yaml", "least: 60", "least: sixty", CourseProblems.NumberRange, "species.yaml", "sixty", "species red-one" },
        { "species.yaml", "least: 60", "least: 0", CourseProblems.NumberRange, "species.yaml", "least: 0", "species red-one" },

        // Across sheets and sets.
        { "species.yaml", "    - plain-one", "    - nobody", SpeciesProblems.ConfusionUnknown, "species.yaml", "nobody", "species red-one" },
        { "species.yaml", "    - plain-one", "    - red-one", SpeciesProblems.ConfusionItself, "species.yaml", "    - red-one", "species red-one" },
        { "regions.yaml", "    - ringed-one", "    - nobody", SpeciesProblems.RegionSpeciesUnknown, "regions.yaml", "nobody", "region south" },
        { "regions.yaml", "    - ringed-one", "    - red-one", SpeciesProblems.InNoSet, "species.yaml", "id: ringed-one", "species ringed-one" },
        { "regions.yaml", "    - red-one", "    - red-one\n    - plain-one", SpeciesProblems.RegionLookAlike, "regions.yaml", "plain-one", "region west" },
        { "regions.yaml", "    - red-one", "    - red-one\n    - ringed-one", SpeciesProblems.RegionSpeciesElsewhere, "regions.yaml", "    - ringed-one\n- id", "region west" },
        { "regions.yaml", "US-AZ, US-NM, ", "US-AZ, ", SpeciesProblems.StateWithoutSet, "species.yaml", "      - US-NM", "species red-one" },
        { "regions.yaml", "id: south", "id: west", CourseProblems.IdTwice, "regions.yaml", "- id: west\n  states: [US-FL", "region west" },
        { "regions.yaml", "US-GA", "US-XX", SpeciesProblems.StateUnknown, "regions.yaml", "US-XX", "region south" },
        { "regions.yaml", "  fact: F-RGN-91", "  fact: F-RGN-99", CourseProblems.FactUnknown, "regions.yaml", "F-RGN-99", "region west" },
        { "regions.yaml", "  fact: F-RGN-91", "  fact: F-RGN-91\n  note: x", CourseProblems.FieldUnknown, "regions.yaml", "note: x", "region west" },

        // Words.
        { "es/species.md", "## plain-one\n\n- `name` Plain one\n- `sure` Not sure. <fact:F-SP-91>\n", "", CourseProblems.WordsMissing, "es/species.md", NoLine, "species plain-one" },
        { "en/species.md", "## plain-one", "## extra-one", CourseProblems.WordsUnexpected, "en/species.md", "## extra-one", "species extra-one" },
        { "en/species.md", "- `name` Ringed one\n", "", CourseProblems.WordsMissing, "en/species.md", "## ringed-one", "species ringed-one" },
        { "en/species.md", "- `name` Ringed one\n- `sure` Not sure. <fact:F-SP-91>", "- `name` Ringed one", CourseProblems.WordsMissing, "en/species.md", "## ringed-one", "species ringed-one" },
        { "en/species.md", "- `name` Ringed one", "- `name` Ringed one\n- `price` Much", CourseProblems.WordsUnexpected, "en/species.md", "`price`", "species ringed-one" },
        { "en/species.md", "- `name` Ringed one", "- `name` Ringed one\n- `name` Again", CourseProblems.WordsTwice, "en/species.md", "Again", "species ringed-one" },
        { "en/species.md", "- `name` Ringed one", "- `name`", CourseProblems.WordsMissing, "en/species.md", "- `name`\n", "species ringed-one" },
        { "en/species.md", "## ringed-one\n", "## ringed-one\n\nHello.\n", CourseProblems.WordsLayout, "en/species.md", "Hello.", "species ringed-one" },
        { "en/species.md", "## ringed-one\n", "## ringed-one\n\n::: only coral\n\nHello.\n\n:::\n", CourseProblems.WordsLayout, "en/species.md", "::: only", "species ringed-one" },
        { "en/species.md", "hills. <fact:F-SP-91>", "hills.", SpeciesProblems.SourceMissing, "en/species.md", "- `range`", "species red-one" },
        { "en/species.md", "hills. <fact:F-SP-91>", "hills. <fact:F-SP-98>", CourseProblems.FactUnknown, "en/species.md", "F-SP-98", "species red-one" },
        { "en/species.md", "hills.", "hills <guidance:stand-off-us-2012>.", CourseProblems.GuidanceSuperseded, "en/species.md", "- `range`", "species red-one" },
        { "es/species.md", "- `range` Arizona and the hills. <fact:F-SP-91>\n", "", CourseProblems.LanguagesDiffer, "es/species.md", "## red-one", "species red-one" },
        { "es/species.md", "hills. <fact:F-SP-91>", "hills. <fact:F-SP-91-LEN>", CourseProblems.LanguagesDiffer, "en/species.md", "## red-one", "species red-one" },
        { "es/regions.md", "- `south` The south\n", "", CourseProblems.WordsMissing, "es/regions.md", NoLine, null },
        { "en/regions.md", "- `south` The south\n", "- `south` The south\n- `north` The north\n", CourseProblems.WordsUnexpected, "en/regions.md", "north", null },
        { "en/regions.md", "- `south` The south\n", "- `south`\n", CourseProblems.WordsMissing, "en/regions.md", "- `south`", null },
    };

    [Theory, MemberData(nameof(Findings))]
    public void One_change_gives_one_finding_in_its_place(string file, string old, string @new, string code, string foundIn, string onLine, string? part)
    {
        var (reading, texts) = SpeciesFixture.ReadWith(file, old, @new);

        var finding = Assert.Single(reading.Problems, problem =>
            problem.Code == code && problem.Place.File == foundIn && problem.Place.Part == part && (onLine.Length == 0 || problem.Place.Line == LineOf(texts[foundIn], onLine)));
        if (onLine.Length == 0 && code == CourseProblems.WordsMissing) Assert.Null(finding.Place.Line);
        Assert.Null(reading.Library);
    }

    [Theory]
    [InlineData("en/species.md", "hills. <fact:F-SP-91>", "hills."), InlineData("en/regions.md", "- `south` The south\n", "- `south`\n")]
    [InlineData("es/species.md", "- `range` Arizona and the hills. <fact:F-SP-91>\n", "")]
    public void One_slip_in_words_is_told_once(string file, string old, string @new) => Assert.Single(SpeciesFixture.ReadWith(file, old, @new).Reading.Problems);

    [Theory]
    [InlineData("species.yaml"), InlineData("regions.yaml"), InlineData("en/species.md"), InlineData("es/species.md"), InlineData("en/regions.md"), InlineData("es/regions.md")]
    public void With_one_of_the_files_the_others_must_be_there(string file)
    {
        var texts = SpeciesFixture.Texts();
        texts.Remove(file);

        Assert.Contains(SpeciesFixture.Read(texts).Problems, problem => problem.Code == CourseProblems.FileMissing && problem.Place.File == file);
    }

    private static int LineOf(string text, string marker)
    {
        var at = text.IndexOf(marker, StringComparison.Ordinal);
        Assert.True(at >= 0, marker);
        return text[..at].Count(c => c == '\n') + 1;
    }
}
