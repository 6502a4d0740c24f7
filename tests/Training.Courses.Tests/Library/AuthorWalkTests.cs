namespace Training.Courses.Tests.Library;

/// <summary>
/// Somebody with a text editor adds to the shipped courses what docs/course-format.md shows, and slips. Each slip is one finding that says where to
/// look.
/// </summary>
public sealed class AuthorWalkTests
{
    private const string NoLine = "";

    /// <summary>The types that the page tells by its table alone.</summary>
    private const string TypesOfTheTable = """
        - id: what-to-check
          type: several
          # topic, objective, difficulty, passage, fact …
          options: [ground, shade, sky]
          right: [ground, shade]
        - id: which-way
          type: order
          # topic, objective, difficulty, passage, fact …
          options: [stop, see, step-back]
          right: [stop, see, step-back]
        - id: how-long
          type: number
          # topic, objective, difficulty, passage, fact …
          right: { value: 130, tolerance: 5, unit: cm }

        """;

    private const string WordsOfTheTable = """

        ## what-to-check

        Where do you look?

        - `ground` On the ground
        - `shade` In the shade
        - `sky` At the sky

        > Snakes rest low.

        ## which-way

        In which order?

        - `stop` Stop
        - `see` See
        - `step-back` Step back

        > Stop first.

        ## how-long

        How many centimetres are 1.3 metres?

        > A metre has a hundred.

        """;

    private static readonly string[] Read = ["awareness/", "en/", "es/"];
    private static readonly Dictionary<string, string> Walked = Walk();

    [Fact]
    public void A_question_of_each_type_a_module_and_a_species_from_the_page_have_no_finding()
    {
        var reading = CourseReader.Read(new CourseFiles(Walked));

        Assert.Empty(reading.Problems.Select(problem => $"{problem.Place.File}:{problem.Place.Line} {problem.Code} {string.Join(' ', problem.Arguments)}"));
        var awareness = reading.Courses.Single(course => course.Id == "awareness");
        Assert.Equal(
            ["under-the-truck", "silent-snake", "tool-uses", "where-to-stand", "what-to-check", "which-way", "how-long"],
            awareness.Questions.TakeLast(7).Select(question => question.Id));
        Assert.Equal("Serpientes y vehículos", awareness.Modules[^1].Pages[Language.Spanish].Title);
        Assert.Contains("hill-rattlesnake", reading.Regions.Single(region => region.Id == "hills").SpeciesIds);
        Assert.Contains("hill-rattlesnake", reading.Species.Select(sheet => sheet.Id));
    }

    /// <summary>File, what is typed over what; code; file of the finding; text on its line (none: the whole file); part.</summary>
    public static TheoryData<string, string, string, string, string, string, string?> Slips => new()
    {
        // The Spanish question was forgotten.
        { "awareness/es/questions.md", FormatPage.Sample("**A question.**", "markdown", number: 2), "", CourseProblems.WordsMissing, "awareness/es/questions.md", NoLine, "question under-the-truck" },

        // A line of the module stands one space too far left.
        { "awareness/course.yaml", "    minutes: 3\n", "   minutes: 3\n", CourseProblems.YamlSyntax, "awareness/course.yaml", "   minutes: 3", null },
        { "awareness/en/modules/vehicles.md", "## Caution {#caution}", "## Caution", CourseProblems.CautionMissing, "awareness/en/modules/vehicles.md", "# Snakes and vehicles", "module vehicles" },
        { "awareness/questions.yaml", "passage: vehicles#under\n  fact: F-CP-09", "passage: vehicles#under\n  fact: F-CP-99", CourseProblems.FactUnknown, "awareness/questions.yaml", "F-CP-99", "question under-the-truck" },
        { "awareness/questions.yaml", "passage: vehicles#under\n", "passage: vehicles#under\n  guidance: [stand-off-us-2022]\n", CourseProblems.GuidanceSuperseded, "awareness/questions.yaml", "[stand-off-us-2022]", "question under-the-truck" },
        { "awareness/en/questions.md", " \"A snake lies coiled on a path. Two cones with tape stand between it and a truck.\"", "", CourseProblems.FigureWordsMissing, "awareness/en/questions.md", "(../figures/meeting.svg)", "question where-to-stand" },

        // Two answers seemed right.
        { "awareness/questions.yaml", "right: look-down", "right: [look-down, wait-inside]", CourseProblems.KeyNotOne, "awareness/questions.yaml", "right: [look-down", "question under-the-truck" },
        { "awareness/course.yaml", "    objectives: [look-first]\n    minutes: 3", "    minutes: 3", CourseProblems.ModuleWithoutObjective, "awareness/course.yaml", "- id: vehicles", "module vehicles" },
        { "regions.yaml", "    - hill-rattlesnake\n", "    - western-diamondback\n", SpeciesProblems.InNoSet, "species.yaml", "- id: hill-rattlesnake", "species hill-rattlesnake" },
        { "awareness/en/modules/vehicles.md", "A parked truck gives shade.", "A parked truck gives shade: [trucks](trucks.md).", CourseProblems.LinkBroken, "awareness/en/modules/vehicles.md", "trucks.md", "module vehicles" },

        // The source was cited in one language.
        { "awareness/es/modules/vehicles.md", " <fact:F-CP-09>", "", CourseProblems.LanguagesDiffer, "awareness/es/modules/vehicles.md", NoLine, "module vehicles" },

        // A name was typed wrong: that of a block, that of a snake.
        { "awareness/en/modules/vehicles.md", "## Caution", "<block:site-plans>\n\n## Caution", CourseProblems.BlockUnknown, "awareness/en/modules/vehicles.md", "<block:", "module vehicles" },
        { "awareness/questions.yaml", "passage: vehicles#under\n", "passage: vehicles#under\n  species: [hill-rattler]\n", CourseProblems.SnakeUnknown, "awareness/questions.yaml", "[hill-rattler]", "question under-the-truck" },
        { "awareness/en/questions.md", "- `wait-inside` Wait until somebody tells you that it is safe", "- `wait-inside` None of these", CourseProblems.OptionCatchAll, "awareness/questions.yaml", "- id: under-the-truck", "question under-the-truck" },
    };

    [Theory, MemberData(nameof(Slips))]
    public void A_slip_is_one_finding_with_its_place(string file, string old, string typed, string code, string foundIn, string onLine, string? part)
    {
        // The slips are in one course and in what all share; reading the other courses each time is most of the time.
        var texts = Walked.Where(text => !text.Key.Contains('/') || Read.Any(text.Key.StartsWith)).ToDictionary(StringComparer.Ordinal);
        var at = texts[file].LastIndexOf(old, StringComparison.Ordinal);
        Assert.True(at >= 0, old);
        texts[file] = texts[file][..at] + typed + texts[file][(at + old.Length)..];
        MarkAsCompared(texts);

        var finding = Assert.Single(CourseReader.Read(new CourseFiles(texts)).Problems);

        Assert.Equal((code, foundIn, part), (finding.Code, finding.Place.File, finding.Place.Part));
        Assert.Equal(onLine.Length == 0 ? null : LineOf(texts[foundIn], onLine), finding.Place.Line);
    }

    [Fact]
    public void A_new_part_that_nobody_compared_with_its_translation_is_one_finding()
    {
        var texts = new Dictionary<string, string>(Walked, StringComparer.Ordinal);
        texts["awareness/es/translation.yaml"] = string.Join(
            '\n', texts["awareness/es/translation.yaml"].Split('\n').Where(line => !line.StartsWith("question under-the-truck:", StringComparison.Ordinal)));

        var finding = Assert.Single(CourseReader.Read(new CourseFiles(texts)).Problems);

        Assert.Equal(
            (CourseProblems.TranslationUnmarked, "awareness/es/translation.yaml", "question under-the-truck"),
            (finding.Code, finding.Place.File, finding.Place.Part));
    }

    private static Dictionary<string, string> Walk()
    {
        var files = CourseFiles.FromFolder(ShippedCourses.Folder);
        var texts = files.Paths.ToDictionary(path => path, path => files.Find(path) ?? "", StringComparer.Ordinal);
        texts["awareness/questions.yaml"] += string.Join("\n",
            FormatPage.Sample("**A question.**", "yaml"), FormatPage.Sample("## questions.yaml", "yaml"),
            FormatPage.Whole(FormatPage.Sample("## questions.yaml", "yaml", number: 2)), FormatPage.Whole(FormatPage.Sample("## questions.yaml", "yaml", number: 3)),
            FormatPage.Whole(TypesOfTheTable));
        texts["awareness/course.yaml"] =
            texts["awareness/course.yaml"].Replace("\nquiz:\n", "\n" + FormatPage.Sample("**A module.**", "yaml") + "quiz:\n", StringComparison.Ordinal);
        texts["awareness/figures/meeting.svg"] = FormatPage.Sample("## Modules", "svg");
        texts["facts.yaml"] += FormatPage.Sample("**A species.**", "yaml");
        texts["species.yaml"] += FormatPage.Sample("## species.yaml", "yaml");
        texts["regions.yaml"] += FormatPage.Sample("## regions.yaml", "yaml");
        foreach (var (tag, number) in new[] { ("en", 1), ("es", 2) })
        {
            // The page shows the words of these in one language; what is asked here is the form.
            texts[$"awareness/{tag}/questions.md"] += "\n" + string.Join(
                "\n", Enumerable.Range(1, 3).Select(sample => FormatPage.Sample("## en/questions.md", "markdown", sample))) + WordsOfTheTable;
            texts[$"awareness/{tag}/questions.md"] += "\n" + FormatPage.Sample("**A question.**", "markdown", number);
            texts[$"awareness/{tag}/modules/vehicles.md"] = FormatPage.Sample("**A module.**", "markdown", number);
            texts[$"{tag}/species.md"] += "\n" + FormatPage.Sample("## en/species.md", "markdown");
            texts[$"{tag}/regions.md"] += FormatPage.Sample("## regions.yaml", "markdown");
        }

        MarkAsCompared(texts);
        return texts;
    }

    /// <summary>The last thing that an author does, as the page says.</summary>
    private static void MarkAsCompared(Dictionary<string, string> texts) =>
        texts["awareness/es/translation.yaml"] = Translation.FileOf(new CourseFiles(texts), "awareness", Language.Spanish) ?? "";

    private static int LineOf(string text, string marker) => text[..text.LastIndexOf(marker, StringComparison.Ordinal)].Count(c => c == '\n') + 1;
}
