using CsCheck;

namespace Training.Courses.Tests.Questions;

public sealed class SpotRegionTests
{
    private static readonly SpotShape.Polygon Kite = new([new(0, 0), new(4, 0), new(6, 6), new(0, 4)]);

    public static TheoryData<SpotShape, decimal, decimal, bool> Shape_point_and_whether_it_lies_inside => new()
    {
        { new SpotShape.Circle(new(5, 5), 5), 5, 5, true },
        { new SpotShape.Circle(new(5, 5), 5), 10, 5, true },        // the outline belongs to it
        { new SpotShape.Circle(new(5, 5), 5), 8, 9, true },
        { new SpotShape.Circle(new(5, 5), 5), 8.01m, 9, false },
        { new SpotShape.Rectangle(new(1, 2), 3, 4), 1, 2, true },
        { new SpotShape.Rectangle(new(1, 2), 3, 4), 4, 6, true },
        { new SpotShape.Rectangle(new(1, 2), 3, 4), 4.01m, 6, false },
        { new SpotShape.Rectangle(new(1, 2), 3, 4), 2, 1.99m, false },
        { Kite, 3, 3, true },
        { Kite, 5, 3, true },                                       // on its edge
        { Kite, 5.01m, 3, false },
        { Kite, 0, 4, true },                                       // a corner
        { Kite, 0, 4.01m, false },
    };

    [Theory, MemberData(nameof(Shape_point_and_whether_it_lies_inside))]
    public void A_shape_holds_its_inside_and_its_outline(SpotShape shape, decimal x, decimal y, bool isInside) =>
        Assert.Equal(isInside, shape.Contains(new(x, y)));

    [Fact]
    public void A_box_is_as_large_as_its_shape()
    {
        Assert.Equal((0m, 0m, 10m, 10m), new SpotShape.Circle(new(5, 5), 5).Bounds);
        Assert.Equal((1m, 2m, 4m, 6m), new SpotShape.Rectangle(new(1, 2), 3, 4).Bounds);
        Assert.Equal((0m, 0m, 6m, 6m), Kite.Bounds);
    }

    public static TheoryData<string, bool> Corners_and_whether_they_bend_one_way => new()
    {
        { "0,0 10,0 10,10 0,10", true },
        { "0,0 0,10 10,10 10,0", true },                            // the other way round
        { "0,0 10,0 5,5", true },
        { "0,0 10,0", false },
        { "0,0 5,0 10,0", false },                                  // a line
        { "0,0 5,0 10,0 10,10", false },                            // a corner that is none
        { "0,0 10,0 5,2 5,10", false },                             // a dent
        { "0,0 10,0 0,10 10,10", false },                           // it crosses itself
        { "5,0 8,10 0,4 10,4 2,10", false },                        // a star: one way, but twice round
        { "0,0 10,0 10,10 10,10", false },                          // a corner twice
    };

    [Theory, MemberData(nameof(Corners_and_whether_they_bend_one_way))]
    public void A_polygon_without_dents_bends_one_way_and_goes_round_once(string corners, bool isConvex) =>
        Assert.Equal(isConvex, new SpotShape.Polygon([.. corners.Split(' ').Select(corner => corner.Split(',')).Select(xy => new SpotPoint(int.Parse(xy[0]), int.Parse(xy[1])))]).IsConvex);

    [Fact]
    public void The_middle_of_a_polygon_is_the_centre_of_its_area() =>
        Assert.Equal(new SpotPoint(5, 5), new SpotShape.Polygon([new(0, 0), new(10, 0), new(10, 10), new(0, 10)]).Middle);

    [Fact]
    public void Every_shape_holds_its_middle() =>
        Gen.Int[-50, 50].Array[2, 12].Sample(numbers =>
        {
            var corners = numbers.Zip(numbers.Skip(1), (x, y) => new SpotPoint(x, y)).ToList();
            var polygon = new SpotShape.Polygon(corners);

            Assert.True(!polygon.IsConvex || polygon.Contains(polygon.Middle));
        });
}
