namespace Training.Documents;

/// <summary>What a calendar file says of itself.</summary>
/// <param name="Name">As programs show it; empty in a file that holds one event.</param>
/// <param name="Organizer">Who publishes it.</param>
/// <param name="OrganizerAddress">Their mail address; null in a feed, which nobody answers.</param>
/// <param name="Refresh">How often to look again, in whole hours (RFC 7986, 5.7); null in a file that does not change.</param>
public sealed record CalendarHead(string Name, string Organizer, string? OrganizerAddress, TimeSpan? Refresh);
