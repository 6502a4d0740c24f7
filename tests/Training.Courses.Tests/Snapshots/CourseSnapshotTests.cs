using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace Training.Courses.Tests.Snapshots;

public sealed class CourseSnapshotTests
{
    private static readonly CourseReading Whole = CourseFixture.Read();

    [Theory, InlineData(0), InlineData(1)]
    public void A_snapshot_alone_gives_the_identical_course_back(int which)
    {
        var snapshot = Whole.Snapshots[which];

        var again = new CourseSnapshot(snapshot.CourseId, snapshot.Hash, snapshot.Content).Read();

        // Serialised, since records compare their lists by reference: every id, key, word and version is in it.
        Assert.Equal(JsonSerializer.Serialize(Whole.Courses[which]), JsonSerializer.Serialize(again));
        Assert.Equal(Whole.Courses[which].Questions.Select(KeyText), again.Questions.Select(KeyText));
        Assert.Equal(Whole.Courses[which].Scheme.Grant, again.Scheme.Grant);
        Assert.Equal(snapshot.Hash, again.Hash);
    }

    [Fact]
    public void The_hash_is_the_sha_256_of_the_content()
    {
        var snapshot = Whole.Snapshots[0];

        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(snapshot.Content))), snapshot.Hash);
        Assert.Matches("^[0-9a-f]{64}$", snapshot.Hash);
    }

    [Fact]
    public void The_content_is_json_that_begins_the_same_for_ever()
    {
        using var json = JsonDocument.Parse(Whole.Snapshots[0].Content);

        Assert.Equal(["course", "facts", "files", "format", "guidance", "words"], json.RootElement.EnumerateObject().Select(member => member.Name));
        Assert.Equal("course-snapshot/1", json.RootElement.GetProperty("format").GetString());
        Assert.Equal(["limb", "stand-off-us-2024"], json.RootElement.GetProperty("guidance").EnumerateArray().Select(entry => entry.GetProperty("id").GetString()));
        Assert.Equal(3, json.RootElement.GetProperty("facts").GetArrayLength());
    }

    [Fact]
    public void Line_endings_and_byte_order_marks_do_not_change_a_hash()
    {
        var windows = CourseFixture.Texts().ToDictionary(file => file.Key, file => "\uFEFF" + file.Value.Replace("\n", "\r\n"), StringComparer.Ordinal);

        Assert.Equal(Whole.Courses.Select(course => course.Hash), CourseReader.Read(new CourseFiles(windows)).Courses.Select(course => course.Hash));
    }

    [Fact]
    public void What_a_course_does_not_use_does_not_change_its_hash()
    {
        var (reading, _) = CourseFixture.ReadWith(
            ("facts.yaml", "- id: F-AID-02", "- id: F-NOT-01\n  says: No tourniquet.\n  source: An agency\n  standing: confirmed\n- id: F-AID-02"),
            ("guidance.yaml", "value: 2/3", "value: 1/2"));

        Assert.Empty(reading.Problems);
        Assert.Equal(Whole.Courses.Select(course => course.Hash), reading.Courses.Select(course => course.Hash));
    }

    [Theory]
    [InlineData("guidance.yaml", "value: 10", "value: 12")]
    [InlineData("guidance.yaml", "A health agency (2023)", "A health agency (2024)")]
    [InlineData("facts.yaml", "Call at once.", "Call first.")]
    [InlineData("es/guidance.md", "neutral y cómoda", "neutral")]
    [InlineData("alpha/en/modules/second.md", "Some text.", "Other text.")]
    [InlineData("alpha/figures/stick.svg", "120", "121")]
    public void What_a_course_uses_changes_its_hash_when_it_changes(string file, string old, string @new)
    {
        var (reading, _) = CourseFixture.ReadWith((file, old, @new));

        Assert.Empty(reading.Problems);
        Assert.NotEqual(Whole.Courses[0].Hash, reading.Courses[0].Hash);
    }

    [Fact]
    public void A_question_has_a_new_version_only_when_its_own_key_words_or_guidance_change()
    {
        var (key, _) = CourseFixture.ReadWith(("alpha/questions.yaml", "right: back", "right: wait"));
        var (words, _) = CourseFixture.ReadWith(("alpha/es/questions.md", "Step back", "Atrás"));
        var (guidance, _) = CourseFixture.ReadWith(("guidance.yaml", "value: 10", "value: 12"));

        foreach (var reading in new[] { key, words, guidance })
        {
            Assert.NotEqual(Whole.Courses[0].Questions[0].Version, reading.Courses[0].Questions[0].Version);
            Assert.Equal(Whole.Courses[0].Questions.Skip(1).Select(q => q.Version), reading.Courses[0].Questions.Skip(1).Select(q => q.Version));
        }
    }

    [Theory]
    [InlineData(4, "alpha/questions.yaml", "lock, weigh]", "weigh, lock]")]
    [InlineData(4, "alpha/questions.yaml", "hook: lift\n    bucket: hold", "hook: hold\n    bucket: lift")]
    [InlineData(5, "alpha/questions.yaml", "circle: [30, 50, 20]", "circle: [30, 50, 21]")]
    [InlineData(5, "alpha/questions.yaml", "number: [80, 40]", "number: [81, 40]")]
    [InlineData(5, "alpha/questions.yaml", "[200, 80, 230, 20, 260, 80]", "[200, 80, 230, 20, 261, 80]")]
    [InlineData(5, "alpha/questions.yaml", "right: away", "right: beside")]
    [InlineData(5, "alpha/figures/place.svg", "M0 90", "M0 91")]                // the drawing is what is asked about
    public void The_version_of_pairs_or_a_spot_covers_matches_regions_and_drawing(int which, string file, string old, string @new)
    {
        var (reading, _) = CourseFixture.ReadWith((file, old, @new));

        Assert.Empty(reading.Problems);
        Assert.Equal(
            [which],
            Enumerable.Range(0, Whole.Courses[0].Questions.Count)
                .Where(place => Whole.Courses[0].Questions[place].Version != reading.Courses[0].Questions[place].Version));
    }

    [Fact]
    public void A_checklist_has_a_new_version_when_a_step_or_its_words_change()
    {
        var (step, _) = CourseFixture.ReadWith(("beta/checklists.yaml", "      prompt: allowed\n", ""));
        var (words, _) = CourseFixture.ReadWith(("beta/es/checklists.md", "Works the jaws", "Mueve las mordazas"));

        Assert.NotEqual(Whole.Courses[1].Checklists[0].Version, step.Courses[1].Checklists[0].Version);
        Assert.NotEqual(Whole.Courses[1].Checklists[0].Version, words.Courses[1].Checklists[0].Version);
    }

    [Fact]
    public void A_changed_snapshot_is_refused()
    {
        var snapshot = Whole.Snapshots[0];
        var forged = snapshot with { Content = snapshot.Content.Replace("right: back", "right: wait", StringComparison.Ordinal) };

        Assert.NotEqual(snapshot.Content, forged.Content);
        Assert.Throws<InvalidDataException>(() => forged.Read());
    }

    [Fact]
    public void A_snapshot_outlives_the_guidance_that_it_rests_on()
    {
        var (later, _) = CourseFixture.ReadWith((
            "guidance.yaml",
            "  effective-from: 2024-01-01",
            "  effective-from: 2024-01-01\n  superseded-by: stand-off-us-2030"),
            ("guidance.yaml", "- id: reach", "- id: stand-off-us-2030\n  subject: stand-off\n  value: 12\n  unit: ft\n  region: US\n  snakes: any\n  effective-from: 2030-01-01\n  fact: F-DST-21\n  source: An agency\n  standing: confirmed\n- id: reach"));

        Assert.DoesNotContain(later.Courses, course => course.Id == "alpha");
        Assert.Contains("10 feet (3.0 metres)", Whole.Snapshots[0].Read().Modules[0].Pages[Language.English].Html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_course_with_passages_blocks_snakes_and_marks_of_its_translation_comes_back_the_same()
    {
        var texts = CourseFixture.ReadWith(
            LanguageTags.All.Select(language => (
                $"alpha/{language.Tag()}/modules/second.md", "Some text.\n", "Some text.\n\n<block:site-plan>\n\n::: only coral\n\nRings.\n\n:::\n"))
            .Append(("alpha/questions.yaml", "  right: [aa, cc]", "  right: [aa, cc]\n  species: [coral]\n  machine: [es]"))).Texts;
        texts["alpha/es/translation.yaml"] = Translation.FileOf(new CourseFiles(texts), "alpha", Language.Spanish) ?? "";
        var reading = CourseReader.Read(new CourseFiles(texts));

        var (course, again) = (reading.Courses[0], reading.Snapshots[0].Read());

        Assert.Equal("alpha", course.Id);
        Assert.Equal(course.Hash, again.Hash);
        Assert.Equal(course.Questions.Select(question => question.Version), again.Questions.Select(question => question.Version));
        Assert.Equal(["coral"], again.Questions[1].Snakes);
        Assert.Equal([Language.Spanish], again.Questions[1].MachineMade);
        Assert.Equal(PartsOf(course), PartsOf(again));
    }

    /// <summary>Records hold courses from before a rule of the house; what was taught then must stay readable.</summary>
    [Theory]
    [InlineData("    objectives: [stop]\\n", "")]                             // modules named no objectives
    [InlineData("- `bb` B\\n", "- `bb` None of these\\n")]
    [InlineData("  right: back\\n", "  right: back\\n  species: [dragon]\\n")]    // a sheet that is gone
    public void No_snapshot_is_refused_for_a_rule_of_the_house(string old, string @new)
    {
        // As the snapshot holds it, with line ends escaped. The blueprint must not need the question, so it asks for one less.
        var content = Whole.Snapshots[0].Content.Replace(old, @new, StringComparison.Ordinal)
            .Replace("questions: 2\\n      critical: 1", "questions: 1\\n      critical: 0", StringComparison.Ordinal);
        Assert.Contains(old, Whole.Snapshots[0].Content, StringComparison.Ordinal);
        var hash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content)));

        Assert.Equal(hash, new CourseSnapshot("alpha", hash, content).Read().Hash);
    }

    private static IEnumerable<string> PartsOf(Course course) => course.Modules.SelectMany(module => LanguageTags.All.SelectMany(language =>
        module.Pages[language].Parts.Select(part => part is PagePart.Text text ? $"{string.Join(' ', text.Snakes)}: {text.Html}" : $"{part}")));

    private static string KeyText(Question question) => question.Key switch
    {
        QuestionKey.Several several => string.Join(',', several.OptionIds),
        QuestionKey.Order order => string.Join(',', order.OptionIds),
        QuestionKey.Match match => $"{string.Join(',', match.MatchIds)} {string.Join(',', match.Pairs)}",
        QuestionKey.Spot spot => $"{spot.RegionId} {spot.Figure} {string.Join(',', spot.Regions)}",
        var key => key.ToString(),
    };
}
