using System.Globalization;

namespace Training.Courses;

/// <summary>Reads the figure of a spot, its regions and which of them is right.</summary>
internal static class SpotReader
{
    private const int Most = 100_000;
    private static readonly string[] ShapeFields = ["circle", "rect", "polygon"];

    public static QuestionKey.Spot Read(Fields fields, CourseFolder folder)
    {
        var figure = fields.Text("figure");
        var box = ReadBox(fields, folder, figure);
        var regions = new List<(SpotRegion Region, int Line)>();
        foreach (var region in fields.Maps("regions"))
        {
            region.Part = fields.Part;
            var id = region.Id("id");
            var read = ReadRegion(id, region);
            region.Finish();
            if (id.Length > 0 && regions.Exists(known => known.Region.Id == id)) region.Report(CourseProblems.IdTwice, region.LineOf("id"), id);
            else if (read is not null) regions.Add((read, region.Line));
        }

        if (fields.Has("regions") && regions.Count < 2) fields.Report(CourseProblems.OptionCount, fields.LineOf("regions"), "2");
        if (box is not null) CheckPlaces(fields, regions, box.Value);
        var right = fields.Required("right", CourseProblems.KeyMissing) is { } node ? fields.TextOf("right", node) : "";
        QuestionsReader.CheckOption(fields, right, [.. regions.Select(region => region.Region.Id)], fields.LineOf("right"));
        return new(right, figure, [.. regions.Select(region => region.Region)]);
    }

    private static (decimal Left, decimal Top, decimal Width, decimal Height)? ReadBox(Fields fields, CourseFolder folder, string figure)
    {
        if (figure.Length == 0) return null;
        if (!folder.HasFigure(folder.PathOf(figure)))
        {
            fields.Report(CourseProblems.FigureMissing, fields.LineOf("figure"), figure);
            return null;
        }

        // A drawing that is no safe SVG has been reported.
        if (folder.FindFigure(folder.PathOf(figure)) is not { } drawing) return null;
        if (drawing.HasText || drawing.ViewBox is null) fields.Report(CourseProblems.SpotFigure, fields.LineOf("figure"), figure);
        return drawing.ViewBox;
    }

    private static SpotRegion? ReadRegion(string id, Fields region)
    {
        var shapes = ShapeFields.Select(field => (Field: field, Numbers: Numbers(region, field))).Where(shape => shape.Numbers is not null).ToList();
        var number = Numbers(region, "number");
        var shape = shapes is [var (field, numbers)] ? ShapeOf(field, numbers ?? []) : null;
        if (shape is null || number is not (null or { Count: 2 }))
        {
            region.Report(CourseProblems.RegionForm, region.Line, id);
            return null;
        }

        return id.Length == 0 ? null : new(id, shape, number is null ? shape.Middle : new(number[0], number[1]));
    }

    private static SpotShape? ShapeOf(string field, List<decimal> numbers) => field switch
    {
        "circle" => CircleOf(numbers),
        "rect" => RectangleOf(numbers),
        _ => PolygonOf(numbers),
    };

    private static SpotShape.Circle? CircleOf(List<decimal> numbers) =>
        numbers is [var x, var y, > 0 and var radius] ? new(new(x, y), radius) : null;

    private static SpotShape.Rectangle? RectangleOf(List<decimal> numbers) =>
        numbers is [var x, var y, > 0 and var width, > 0 and var height] ? new(new(x, y), width, height) : null;

    private static SpotShape.Polygon? PolygonOf(List<decimal> numbers)
    {
        if (numbers.Count % 2 != 0) return null;
        var polygon = new SpotShape.Polygon([.. numbers.Chunk(2).Select(corner => new SpotPoint(corner[0], corner[1]))]);
        return polygon.IsConvex ? polygon : null;
    }

    /// <summary>A list of numbers; null where the field is not there, empty where something in it is no number.</summary>
    private static List<decimal>? Numbers(Fields region, string field)
    {
        if (region.Optional(field) is not { } node) return null;
        var numbers = new List<decimal>();
        foreach (var item in (node as SourceNode.List)?.Items ?? [])
        {
            if (item is not SourceNode.Text text || !Amounts.TryRead(text.Value, out var number) || Math.Abs(number) > Most) return [];
            numbers.Add(number);
        }

        return numbers;
    }

    private static void CheckPlaces(
        Fields fields, List<(SpotRegion Region, int Line)> regions, (decimal Left, decimal Top, decimal Width, decimal Height) box)
    {
        var (left, top, right, bottom) = (box.Left, box.Top, box.Left + box.Width, box.Top + box.Height);
        var radius = NumberedFigure.NumberRadius(box.Width);
        foreach (var (index, (region, line)) in regions.Index())
        {
            var bounds = region.Shape.Bounds;
            if (bounds.Left < left || bounds.Top < top || bounds.Right > right || bounds.Bottom > bottom)
            {
                fields.Report(CourseProblems.RegionOutside, line, region.Id, string.Create(CultureInfo.InvariantCulture, $"{left} {top} {box.Width} {box.Height}"));
            }

            var number = region.Number;
            var isOnPaper = number.X - radius >= left && number.X + radius <= right && number.Y - radius >= top && number.Y + radius <= bottom;
            var before = regions.Take(index).Select(other => other.Region).ToList();
            if (!region.Shape.Contains(number) || !isOnPaper || before.Exists(other => AreClose(number, other.Number, 2 * radius)))
            {
                fields.Report(CourseProblems.RegionNumber, line, region.Id);
            }

            foreach (var other in before.Where(other => Overlap(bounds, other.Shape.Bounds))) fields.Report(CourseProblems.RegionOverlap, line, region.Id, other.Id);
        }
    }

    private static bool AreClose(SpotPoint one, SpotPoint other, decimal distance)
    {
        var (x, y) = (one.X - other.X, one.Y - other.Y);
        return (x * x) + (y * y) < distance * distance;
    }

    // The boxes round the shapes: stricter than the shapes need, and plain to see in the numbers of the file. Boxes may touch.
    private static bool Overlap(
        (decimal Left, decimal Top, decimal Right, decimal Bottom) one, (decimal Left, decimal Top, decimal Right, decimal Bottom) other) =>
        one.Left < other.Right && other.Left < one.Right && one.Top < other.Bottom && other.Top < one.Bottom;
}
