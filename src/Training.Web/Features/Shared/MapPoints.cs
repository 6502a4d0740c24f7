using System.Globalization;

namespace Training.Web.Features;

/// <summary>Places as people type them and read them out: degrees north and east on WGS 84 with a comma between.</summary>
public static class MapPoints
{
    /// <summary>The point, to five decimals (about a metre), or null where nothing can be read or no such point is.</summary>
    public static (decimal Latitude, decimal Longitude)? Read(string? typed) =>
        typed?.Split(',') is [var north, var east]
        && decimal.TryParse(north, NumberStyles.Float, CultureInfo.InvariantCulture, out var latitude) && latitude is >= -90 and <= 90
        && decimal.TryParse(east, NumberStyles.Float, CultureInfo.InvariantCulture, out var longitude) && longitude is >= -180 and <= 180
            ? (Math.Round(latitude, 5), Math.Round(longitude, 5))
            : null;

    /// <summary>As <see cref="Read"/> takes it.</summary>
    public static string Written(decimal latitude, decimal longitude) => string.Create(CultureInfo.InvariantCulture, $"{latitude:0.#####}, {longitude:0.#####}");
}
