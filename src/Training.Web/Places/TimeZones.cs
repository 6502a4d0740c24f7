using Training.Courses;

namespace Training.Web.Places;

/// <summary>The time zones that a site may lie in.</summary>
public static class TimeZones
{
    private static readonly string[] Areas =
        ["Africa/", "America/", "Antarctica/", "Arctic/", "Asia/", "Atlantic/", "Australia/", "Europe/", "Indian/", "Pacific/"];

    // What people in the United States call the zones that most of them live in.
    private static readonly (string Zone, string English, string Spanish)[] Common =
    [
        ("America/New_York", "Eastern Time (New York)", "Hora del Este (Nueva York)"),
        ("America/Chicago", "Central Time (Chicago)", "Hora del Centro (Chicago)"),
        ("America/Denver", "Mountain Time (Denver)", "Hora de la Montaña (Denver)"),
        ("America/Phoenix", "Arizona, no clock change (Phoenix)", "Arizona, sin cambio de hora (Phoenix)"),
        ("America/Los_Angeles", "Pacific Time (Los Angeles)", "Hora del Pacífico (Los Ángeles)"),
        ("America/Anchorage", "Alaska Time (Anchorage)", "Hora de Alaska (Anchorage)"),
        ("Pacific/Honolulu", "Hawaii Time (Honolulu)", "Hora de Hawái (Honolulu)"),
    ];

    /// <summary>IANA names of places, by name.</summary>
    public static IReadOnlyList<string> All { get; } =
        [.. TimeZoneInfo.GetSystemTimeZones().Select(zone => zone.Id).Where(IsPlace).Order(StringComparer.Ordinal)];

    /// <summary>The zones that most sites lie in, from east to west, with what people call them.</summary>
    public static IReadOnlyList<(string Zone, string Name)> CommonOnes(Language language) => [.. Common.Select(zone => (zone.Zone, NameOf(zone.Zone, language)))];

    /// <summary>What people call it; its IANA name where it is not one of the common ones.</summary>
    public static string NameOf(string zone, Language language) => Array.Find(Common, one => one.Zone == zone) switch
    {
        { Zone: not null } known => language switch
        {
            Language.English => known.English,
            Language.Spanish => known.Spanish,
        },
        _ => zone,
    };

    /// <summary>The zone as IANA writes it, or null where there is none of that name; case and spaces aside.</summary>
    public static string? Find(string? typed)
    {
        var name = (typed ?? "").Trim().Replace(' ', '_');
        return All.FirstOrDefault(zone => string.Equals(zone, name, StringComparison.OrdinalIgnoreCase));
    }

    private static bool IsPlace(string zone) => Array.Exists(Areas, area => zone.StartsWith(area, StringComparison.Ordinal));
}
