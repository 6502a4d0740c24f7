namespace Training.Web.Features.Employers;

/// <summary>The time zones that a site may lie in.</summary>
public static class TimeZones
{
    private static readonly string[] Areas =
        ["Africa/", "America/", "Antarctica/", "Arctic/", "Asia/", "Atlantic/", "Australia/", "Europe/", "Indian/", "Pacific/"];

    /// <summary>IANA names of places, by name.</summary>
    public static IReadOnlyList<string> All { get; } =
        [.. TimeZoneInfo.GetSystemTimeZones().Select(zone => zone.Id).Where(IsPlace).Order(StringComparer.Ordinal)];

    /// <summary>The zone as IANA writes it, or null where there is none of that name; case and spaces aside.</summary>
    public static string? Find(string? typed)
    {
        var name = (typed ?? "").Trim().Replace(' ', '_');
        return All.FirstOrDefault(zone => string.Equals(zone, name, StringComparison.OrdinalIgnoreCase));
    }

    private static bool IsPlace(string zone) => Array.Exists(Areas, area => zone.StartsWith(area, StringComparison.Ordinal));
}
