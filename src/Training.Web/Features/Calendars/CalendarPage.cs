using Training.Records;

namespace Training.Web.Features.Calendars;

/// <summary>The addresses of one calendar.</summary>
/// <param name="EmployerId">Whose people and sites; null for an instructor's own classes.</param>
/// <param name="EmployerName">Its name; null for an instructor's own classes.</param>
/// <param name="Zone">Whose days the instants are told in.</param>
/// <param name="Feeds">Newest first.</param>
/// <param name="Names">Of who made them.</param>
/// <param name="FormId">Of the form that makes another.</param>
public sealed record CalendarPage(
    Guid? EmployerId, string? EmployerName, TimeZoneInfo Zone, IReadOnlyList<MadeFeed> Feeds, IReadOnlyDictionary<Guid, string> Names, Guid FormId)
{
    /// <summary>The address that was just made, shown this once; null otherwise.</summary>
    public Uri? Made { get; init; }

    /// <summary>The form came again: its address was made before and cannot be shown any more.</summary>
    public bool WasMadeBefore { get; init; }

    /// <summary>There are as many addresses as one calendar may have.</summary>
    public bool IsFull { get; init; }

    /// <summary>Path of the page, without the language.</summary>
    public string Path => EmployerId is { } id ? $"employers/{id}/calendar" : "my/calendar";
}
