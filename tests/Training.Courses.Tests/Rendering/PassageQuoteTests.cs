namespace Training.Courses.Tests.Rendering;

public sealed class PassageQuoteTests
{
    private const string Html = """
        <h1>Distances</h1><p>Before.</p>
        <h2 id="reach">Reach</h2><p>Far.<sup class="note"><a id="note-1-here" href="#note-1">1</a></sup></p><figure><svg></svg></figure>
        <h3 id="more">More</h3><ul><li>Wide</li></ul>
        <h2 id="stand-off">Stand-off</h2><p>Stay out.</p>
        """;

    [Fact]
    public void A_passage_ends_at_the_next_heading_of_its_level()
    {
        Assert.Equal("<p>Far.</p><h3>More</h3><ul><li>Wide</li></ul>", PassageQuote.Find(Page, "reach"));
        Assert.Equal("<ul><li>Wide</li></ul>", PassageQuote.Find(Page, "more"));
        Assert.Equal("<p>Stay out.</p>", PassageQuote.Find(Page, "stand-off"));
    }

    [Fact]
    public void A_heading_that_is_not_there_is_not_quoted() => Assert.Null(PassageQuote.Find(Page, "dodge"));

    /// <summary>Whoever was asked about those snakes is sent here, wherever they work.</summary>
    [Fact]
    public void What_is_read_only_where_some_snakes_live_is_quoted_too()
    {
        var page = new ModulePage(
            "Bite",
            [
                new PagePart.Text("<h2 id=\"signs\">Signs</h2><p>Pain.</p>", []), new PagePart.Text("<p>Late signs.</p>", ["coral"]),
                new PagePart.Block(PageBlock.SitePlan), new PagePart.Text("<p>Call.</p><h2 id=\"caution\">Caution</h2>", []),
            ],
            [], [], []);

        Assert.Equal("<p>Pain.</p><p>Late signs.</p><p>Call.</p>", PassageQuote.Find(page, "signs"));
    }

    [Fact]
    public void Every_passage_that_a_shipped_question_names_can_be_quoted_in_both_languages()
    {
        foreach (var course in CourseReader.Read(CourseFiles.FromFolder(Library.ShippedCourses.Folder)).Courses)
        {
            foreach (var question in course.Questions)
            {
                var module = course.Modules.Single(part => part.Id == question.Passage.ModuleId);
                Assert.All(LanguageTags.All, language => Assert.NotEmpty(PassageQuote.Find(module.Pages[language], question.Passage.Section) ?? ""));
            }
        }
    }

    private static ModulePage Page => new("Distances", [new PagePart.Text(Html, [])], [], [], []);
}
