using System.Xml.Linq;

namespace Training.Courses.Tests.Questions;

public sealed class NumberedFigureTests
{
    private static readonly NumberedFigure Figure = CourseFixture.Read().Courses[0].Questions[5].Words[Language.English].Figure!; // a spot has one

    [Fact]
    public void Numbers_follow_the_order_of_the_list()
    {
        var svg = Svg(Figure.ToHtml(["away", "beside", "between"]));

        // The numbers stand where the regions are: away, beside, between.
        Assert.Equal(
            ["1 at 230 60", "2 at 30 50", "3 at 80 40"],
            svg.Descendants().Where(element => element.Name.LocalName == "text").Select(text => $"{text.Value} at {(string?)text.Attribute("x")} {(string?)text.Attribute("y")}"));
    }

    [Fact]
    public void Each_region_has_its_outline_and_all_of_it_lies_within_the_drawing()
    {
        var svg = Svg(Figure.ToHtml(["beside", "between", "away"]));

        var outlines = svg.Elements().Where(element => (string?)element.Attribute("class") == "spot");
        Assert.Equal(["circle", "rect", "polygon"], outlines.Select(outline => outline.Name.LocalName));
    }

    [Fact]
    public void Name_and_description_stay_what_the_author_wrote()
    {
        var svg = Svg(Figure.ToHtml(["beside", "between", "away"]));

        Assert.Equal("A path", svg.Elements().Single(element => element.Name.LocalName == "title").Value);
        Assert.Equal("A path and three places", svg.Elements().Single(element => element.Name.LocalName == "desc").Value);
    }

    [Fact]
    public void Nothing_in_the_drawing_tells_which_region_is_right()
    {
        var html = Figure.ToHtml(["beside", "between", "away"]);

        Assert.All(new[] { "beside", "between", "away" }, id => Assert.DoesNotContain(id, html, StringComparison.Ordinal));
    }

    [Fact]
    public void A_number_without_a_region_is_a_broken_promise() => Assert.Throws<ArgumentException>(() => Figure.ToHtml(["elsewhere"]));

    private static XElement Svg(string html) => XElement.Parse(html).Elements().Single();
}
