namespace Training.Courses.Tests.Reading;

public sealed class CourseReaderTests
{
    private static readonly CourseReading Whole = CourseFixture.Read();

    [Fact]
    public void A_folder_without_findings_gives_its_courses_and_snapshots()
    {
        Assert.Empty(Whole.Problems);
        Assert.Equal(["alpha", "beta"], Whole.Courses.Select(course => course.Id));
        Assert.Equal(Whole.Courses.Select(course => course.Hash), Whole.Snapshots.Select(snapshot => snapshot.Hash));
        Assert.Equal(5, Whole.Guidance.Entries.Count);
        Assert.Equal(3, Whole.Facts.Count);
    }

    [Fact]
    public void A_scheme_is_read_as_written()
    {
        var scheme = Whole.Courses[1].Scheme;

        Assert.Equal("beta", scheme.Id);
        Assert.Equal(SchemeKind.Certification, scheme.Kind);
        Assert.Equal(Separation.TeachScoreDecide, scheme.Separation);
        Assert.Equal(new DateOnly(2026, 1, 1), scheme.EffectiveFrom);
        Assert.Equal(new Terms(new(12, DurationUnit.Months), new(60, DurationUnit.Days), new(30, DurationUnit.Days)), scheme.Terms);
        Assert.Equal(
            [
                new Requirement.PassedQuiz("beta-quiz", new(6, DurationUnit.Months)),
                new Requirement.PassedPractical("move", Subject.Model, new(6, DurationUnit.Months)),
                new Requirement.PassedPractical("move", Subject.Live, new(6, DurationUnit.Months)),
                new Requirement.Holds("alpha"),
            ],
            scheme.Grant);
        Assert.Equal("Knows to stop.", scheme.Words[Language.Spanish].ShownText);
        Assert.Equal("<p>What it covers.</p>", scheme.Words[Language.English].ScopeHtml);
    }

    [Theory]
    [InlineData("window: P60D", "P90D P60D P30D P7D")]                        // docs/course-format.md: left out, it is these four
    [InlineData("window: P60D\n  remind: [P2M, P10D]", "P2M P10D")]
    public void A_scheme_says_when_its_holders_are_reminded(string written, string read)
    {
        var reading = CourseFixture.ReadWith(("beta/course.yaml", "window: P60D", written)).Reading;

        Assert.Empty(reading.Problems);
        Assert.Equal(read, string.Join(' ', reading.Courses[1].Scheme.Remind));
    }

    [Fact]
    public void Every_type_of_question_is_read_with_its_key()
    {
        var questions = Whole.Courses[0].Questions;

        Assert.Equal(new QuestionKey.One("back"), questions[0].Key);
        Assert.Equal(["aa", "cc"], Assert.IsType<QuestionKey.Several>(questions[1].Key).OptionIds);
        Assert.Equal(["two-step", "one-step", "three-step"], Assert.IsType<QuestionKey.Order>(questions[2].Key).OptionIds);
        Assert.Equal(new QuestionKey.Number(130, 2.5m, "cm"), questions[3].Key);
        Assert.True(questions[0].IsCritical);
        Assert.False(questions[1].IsCritical);
        Assert.Equal("first#stop", questions[0].Passage.ToString());
        Assert.Equal("Touch it with a stick", questions[0].Words[Language.English].OptionHtml["prod"]);
        Assert.Equal("<p>Silence is not safety.</p>", questions[0].Words[Language.English].ExplanationHtml.Replace("<blockquote>\n", "").Replace("\n</blockquote>", ""));
        Assert.Contains("<strong>no</strong>", questions[0].Words[Language.English].StemHtml, StringComparison.Ordinal);
        Assert.Contains("10 pies (3.0 metros)", questions[0].Words[Language.Spanish].StemHtml, StringComparison.Ordinal);
    }

    [Fact]
    public void Pairs_are_read_with_their_matches()
    {
        var question = Whole.Courses[0].Questions[4];

        var key = Assert.IsType<QuestionKey.Match>(question.Key);
        Assert.Equal(["hook", "bucket", "box"], question.OptionIds);
        Assert.Equal(["hold", "lift", "lock", "weigh"], key.MatchIds);
        Assert.Equal([new("hook", "lift"), new("bucket", "hold"), new("box", "lock")], key.Pairs);
        Assert.Equal("The <strong>hook</strong>", question.Words[Language.English].OptionHtml["hook"]);
    }

    [Fact]
    public void What_can_be_matched_is_plain_text_since_a_list_to_choose_from_shows_no_markup()
    {
        var texts = Whole.Courses[0].Questions[4].Words[Language.Spanish].MatchText;

        Assert.Equal(["hold", "lift", "lock", "weigh"], texts.Keys);
        Assert.Equal("Holding & carrying", texts["hold"]);
        Assert.Equal("Lifting, neutral y cómoda", texts["lift"]);
    }

    [Fact]
    public void A_spot_is_read_with_its_regions_and_its_figure_apart_from_the_stem()
    {
        var question = Whole.Courses[0].Questions[5];

        var key = Assert.IsType<QuestionKey.Spot>(question.Key);
        Assert.Equal(["beside", "between", "away"], question.OptionIds);
        Assert.Equal(("away", "figures/place.svg"), (key.RegionId, key.Figure));
        Assert.Equal(new SpotRegion("beside", new SpotShape.Circle(new(30, 50), 20), new(30, 50)), key.Regions[0]);
        Assert.Equal(new SpotRegion("between", new SpotShape.Rectangle(new(60, 20), 100, 60), new(80, 40)), key.Regions[1]);
        Assert.Equal([new(200, 80), new(230, 20), new(260, 80)], Assert.IsType<SpotShape.Polygon>(key.Regions[2].Shape).Corners);
        Assert.Equal(new SpotPoint(230, 60), key.Regions[2].Number);            // a third of the way up a triangle
        Assert.Equal("<p>Where do you stand?</p>", question.Words[Language.English].StemHtml);
        Assert.StartsWith("<figure class=\"drawing\"><svg role=\"img\" aria-labelledby=\"place-en-figure-1-name\"", question.Words[Language.English].Figure?.FigureHtml, StringComparison.Ordinal);
    }

    [Fact]
    public void A_blueprint_row_without_extras_asks_for_no_critical_question_and_no_minimum() =>
        Assert.Equal([new("near", 2, 1, 50), new("far", 1, 0, 0)], Whole.Courses[0].Quiz.Blueprint);

    [Fact]
    public void A_checklist_keeps_titles_steps_and_reasons_apart()
    {
        var checklist = Assert.Single(Whole.Courses[1].Checklists);
        var words = checklist.Words[Language.Spanish];

        Assert.Equal("Move it", words.Title);
        Assert.Equal("<p>Read this first. Site rules come first.</p>", words.InstructionsHtml);
        Assert.Equal("Works the jaws", words.StepHtml["inspect"]);
        Assert.Equal("Works the jaws", words.StepText["inspect"]);
        Assert.Contains("leave a hand inside reach", words.ReasonHtml["inspect"], StringComparison.Ordinal);
        Assert.False(words.ReasonHtml.ContainsKey("label"));
        Assert.Equal([new("inspect", "check", true, true, "F-CP-01"), new("label", "check", false, false, "F-CP-01")], checklist.Steps);
    }

    [Fact]
    public void A_page_numbers_its_sources_in_the_order_of_first_citation()
    {
        var page = Whole.Courses[0].Modules[0].Pages[Language.English];

        Assert.Equal("First", page.Title);
        Assert.Equal([new("stop", "Stop"), new("caution", "Caution")], page.Sections);
        Assert.Equal(["F-AID-02", "stand-off-us-2024", "limb"], page.Notes.Select(note => note.Id));
        Assert.Equal(new DateOnly(2024, 1, 1), page.Notes[1].EffectiveFrom);
        Assert.Contains("neutral &amp; comfortable", page.Html, StringComparison.Ordinal);
        Assert.Equal(2, page.Html.Split("href=\"#note-1\"").Length - 1);
        Assert.Single(page.Html.Split("id=\"note-1-here\"").Skip(1));
    }

    [Fact]
    public void Links_between_modules_go_where_the_site_says()
    {
        var (_, texts) = CourseFixture.ReadWith();
        var moved = CourseReader.Read(new CourseFiles(texts), (language, course, module, section) => $"/{language.Tag()}/{course}/{module}#{section}");

        Assert.Contains("<a href=\"second#reach\">reach</a>", Whole.Courses[0].Modules[0].Pages[Language.English].Html, StringComparison.Ordinal);
        Assert.Contains("<a href=\"/es/alpha/second#reach\">", moved.Courses[0].Modules[0].Pages[Language.Spanish].Html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_drawing_is_named_described_and_its_ids_are_its_own()
    {
        var html = Whole.Courses[0].Modules[0].Pages[Language.English].Html;

        Assert.Contains("<figure class=\"drawing\"><svg role=\"img\" aria-labelledby=\"first-en-figure-1-name\"", html, StringComparison.Ordinal);
        Assert.Contains("<desc id=\"first-en-figure-1-tells\">A stick lies between hand and snake</desc>", html, StringComparison.Ordinal);
        Assert.Contains("marker-end=\"url(#first-en-figure-1-tip)\"", html, StringComparison.Ordinal);
        Assert.DoesNotContain("dropped", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Coverage_tells_what_teaches_each_objective_and_what_asks_for_it() => Assert.Equal(
        [("alpha", "stop", "first second", 3, 0), ("alpha", "measure", "second", 3, 0), ("beta", "check", "kit", 1, 2)],
        Whole.Coverage.Select(row => (row.CourseId, row.ObjectiveId, string.Join(' ', row.Modules), row.Questions, row.Steps)));

    [Fact]
    public void Every_place_that_names_an_entry_is_listed_for_whoever_changes_it() => Assert.Equal(
        [
            "alpha/en/modules/first.md:5", "alpha/en/questions.md:5", "alpha/es/modules/first.md:5", "alpha/es/questions.md:5", "alpha/questions.yaml:9",
        ],
        Whole.GuidanceUses.Where(use => use.EntryId == "stand-off-us-2024").Select(use => $"{use.Place.File}:{use.Place.Line}"));

    [Fact]
    public void A_passage_for_some_snakes_and_a_block_cut_the_page_into_parts()
    {
        var (reading, _) = CourseFixture.ReadWith(LanguageTags.All.Select(language => (
            $"alpha/{language.Tag()}/modules/second.md",
            "Some text.\n",
            "Some text.\n\n<block:distance-calculator>\n\n::: only coral\n\nRings. <fact:F-AID-02>\n\n- One\n\n:::\n\nMore text.\n")));

        Assert.Empty(reading.Problems);
        var page = reading.Courses[0].Modules[1].Pages[Language.English];
        Assert.Collection(
            page.Parts,
            part => Assert.EndsWith("<p>Some text.</p>", Assert.IsType<PagePart.Text>(part).Html, StringComparison.Ordinal),
            part => Assert.Equal(new PagePart.Block(PageBlock.DistanceCalculator), part),
            part =>
            {
                var text = Assert.IsType<PagePart.Text>(part);
                Assert.Equal(["coral"], text.Snakes);
                Assert.StartsWith("<p>Rings.<sup", text.Html, StringComparison.Ordinal);
            },
            part => Assert.StartsWith("<p>More text.</p>", Assert.IsType<PagePart.Text>(part).Html, StringComparison.Ordinal));
        Assert.Equal(["Some text.", "Rings.", "One", "More text.", "Site rules come first."], page.Prose);
    }

    [Fact]
    public void Sources_are_numbered_in_the_order_of_reading_also_across_passages()
    {
        var (reading, _) = CourseFixture.ReadWith(LanguageTags.All.Select(language => (
            $"alpha/{language.Tag()}/modules/second.md",
            "Some text.\n",
            "Some text. <fact:F-DST-21>\n\n::: only coral\n\nRings. <fact:F-AID-02>\n\n:::\n\nMore text. <fact:F-CP-01>\n")));

        Assert.Equal(["F-DST-21", "F-AID-02", "F-CP-01"], reading.Courses[0].Modules[1].Pages[Language.English].Notes.Select(note => note.Id));
    }

    [Fact]
    public void A_question_keeps_for_which_snakes_it_is_and_its_version_says_so()
    {
        var (reading, _) = CourseFixture.ReadWith(("alpha/questions.yaml", "  right: [aa, cc]", "  right: [aa, cc]\n  species: [coral]\n  machine: [es]"));

        var (before, after) = (Whole.Courses[0].Questions[1], reading.Courses[0].Questions[1]);
        Assert.Equal(["coral"], after.Snakes);
        Assert.Equal([Language.Spanish], after.MachineMade);
        Assert.NotEqual(before.Version, after.Version);
        Assert.Equal(Whole.Courses[0].Questions[0].Version, reading.Courses[0].Questions[0].Version);
    }

    [Fact]
    public void A_person_who_has_read_what_a_machine_wrote_makes_no_new_question_of_it()
    {
        var (reading, _) = CourseFixture.ReadWith(("alpha/questions.yaml", "  right: [aa, cc]", "  right: [aa, cc]\n  machine: [es]"));

        Assert.Equal([Language.Spanish], reading.Courses[0].Questions[1].MachineMade);
        Assert.Equal(Whole.Courses[0].Questions[1].Version, reading.Courses[0].Questions[1].Version);
    }

    [Theory, InlineData("species: []"), InlineData("machine: []"), InlineData("species:")]
    public void A_question_for_no_snake_in_particular_may_say_so_and_stays_the_same_question(string written)
    {
        var (reading, _) = CourseFixture.ReadWith(("alpha/questions.yaml", "  right: [aa, cc]", $"  right: [aa, cc]\n  {written}"));

        Assert.Empty(reading.Problems);
        Assert.Empty(reading.Courses[0].Questions[1].Snakes);
        Assert.Empty(reading.Courses[0].Questions[1].MachineMade);
        Assert.Equal(Whole.Courses[0].Questions[1].Version, reading.Courses[0].Questions[1].Version);
    }

    [Fact]
    public void Everything_broken_is_reported_at_once_and_the_other_course_still_serves()
    {
        var (reading, _) = CourseFixture.ReadWith(
            ("alpha/course.yaml", "validity: P24M", "validity: P1Y6M"),
            ("alpha/questions.yaml", "topic: near", "topic: nowhere"),
            ("alpha/questions.yaml", "  right: back\n", ""),
            ("alpha/es/questions.md", "- `prod` Touch it with a stick\n", ""),
            ("alpha/en/modules/first.md", "second.md#reach", "third.md"),
            ("alpha/figures/stick.svg", "<text", "<script/><text"),
            ("alpha/en/modules/second.md", "## Caution {#caution}", "## Caution"));

        Assert.Equal(["beta"], reading.Courses.Select(course => course.Id));
        Assert.Superset(
            new HashSet<string>
            {
                CourseProblems.DurationForm, CourseProblems.TopicUnknown, CourseProblems.KeyMissing, CourseProblems.WordsMissing,
                CourseProblems.LinkBroken, CourseProblems.FigureUnsafe, CourseProblems.CautionMissing,
            },
            reading.Problems.Select(problem => problem.Code).ToHashSet());
    }

    [Fact]
    public void A_scheme_of_a_broken_course_still_exists_for_others()
    {
        var (reading, _) = CourseFixture.ReadWith(("alpha/course.yaml", "validity: P24M", "validity: never"));

        Assert.Equal(["beta"], reading.Courses.Select(course => course.Id));
        Assert.Equal(CourseProblems.DurationForm, Assert.Single(reading.Problems).Code);
    }
}
