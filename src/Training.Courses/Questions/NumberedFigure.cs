using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Training.Courses;

/// <summary>A figure whose regions get numbers when it is shown: the numbers follow the order of the list beside it.</summary>
/// <param name="FigureHtml">The drawing with its name and description, as safe HTML, without numbers.</param>
/// <param name="Width">Of its <c>viewBox</c>.</param>
/// <param name="Regions">The places.</param>
public sealed record NumberedFigure(string FigureHtml, decimal Width, IReadOnlyList<SpotRegion> Regions)
{
    private const string End = "</svg>";

    // As wide as a phone, a drawing shows this as a number of about 25 px across.
    private const int NumbersAcross = 28;

    /// <summary>Half of what a number takes, in the units of a drawing of that width.</summary>
    public static decimal NumberRadius(decimal width) => width / NumbersAcross;

    /// <summary>The drawing with an outline round each region and its number in it.</summary>
    /// <param name="regionIds">In the order of the list: the first is number 1.</param>
    /// <exception cref="ArgumentException">One of the ids is no region.</exception>
    public string ToHtml(IReadOnlyList<string> regionIds)
    {
        // Only numbers are added to what went through the gate.
        var marks = new StringBuilder();
        foreach (var (index, id) in regionIds.Index())
        {
            var region = Regions.FirstOrDefault(region => region.Id == id) ?? throw new ArgumentException($"'{id}' is no region.", nameof(regionIds));
            var (radius, at) = (NumberRadius(Width), region.Number);
            marks.Append(Outline(region.Shape)).Append(CultureInfo.InvariantCulture, $"<g class=\"number\"><circle cx=\"{Round(at.X)}\" cy=\"{Round(at.Y)}\" r=\"{Round(radius)}\"/>")
                .Append(CultureInfo.InvariantCulture, $"<text x=\"{Round(at.X)}\" y=\"{Round(at.Y)}\" font-size=\"{Round(radius * 1.3m)}\" text-anchor=\"middle\" dominant-baseline=\"central\">{index + 1}</text></g>");
        }

        return FigureHtml.Insert(FigureHtml.LastIndexOf(End, StringComparison.Ordinal), marks.ToString());
    }

    private static string Outline(SpotShape shape) => shape switch
    {
        SpotShape.Circle circle => string.Create(
            CultureInfo.InvariantCulture, $"<circle class=\"spot\" cx=\"{circle.Centre.X}\" cy=\"{circle.Centre.Y}\" r=\"{circle.Radius}\"/>"),
        SpotShape.Rectangle rectangle => string.Create(
            CultureInfo.InvariantCulture,
            $"<rect class=\"spot\" x=\"{rectangle.Corner.X}\" y=\"{rectangle.Corner.Y}\" width=\"{rectangle.Width}\" height=\"{rectangle.Height}\"/>"),
        SpotShape.Polygon polygon => $"<polygon class=\"spot\" points=\"{string.Join(' ', polygon.Corners.Select(Corner))}\"/>",
        _ => throw new UnreachableException(),
    };

    private static string Corner(SpotPoint corner) => string.Create(CultureInfo.InvariantCulture, $"{corner.X},{corner.Y}");

    private static decimal Round(decimal length) => decimal.Round(length, 2);
}
