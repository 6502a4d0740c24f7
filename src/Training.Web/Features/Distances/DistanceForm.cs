using System.Globalization;
using Training.Courses;

namespace Training.Web.Features.Distances;

/// <summary>What somebody asks the calculator; everything as typed.</summary>
public sealed class DistanceForm
{
    /// <summary>Id of a species sheet whose greatest length is taken where no length was typed; may be empty.</summary>
    public string? Species { get; set; }

    /// <summary>Length of the snake, a high estimate, in <see cref="Unit"/>; may be empty where a species is named.</summary>
    public string? Snake { get; set; }

    /// <summary>Working length of the tool in <see cref="Unit"/>; may be empty.</summary>
    public string? Tool { get; set; }

    /// <summary><c>cm</c> or <c>in</c>.</summary>
    public string? Unit { get; set; }

    /// <summary><c>flat</c>, or <c>braced</c>: on a slope, or against a wall or a rock.</summary>
    public string? Ground { get; set; }

    /// <summary>Whether lengths are in inches.</summary>
    public bool IsInches => Unit == "in";

    /// <summary>Whether the snake may brace itself.</summary>
    public bool IsBraced => Ground == "braced";

    /// <summary>A typed length in centimetres, unrounded; null where it is no number. A point or a comma may stand before the decimals.</summary>
    public decimal? ReadCm(string? typed) =>
        decimal.TryParse((typed ?? "").Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var length)
            ? IsInches ? length * Lengths.CentimetresInInch : length
            : null;
}
