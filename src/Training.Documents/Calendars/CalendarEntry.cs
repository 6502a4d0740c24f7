namespace Training.Documents;

/// <summary>One event of a calendar file.</summary>
/// <param name="Uid">The same for ever, whatever becomes of the event: programs find it again by this (RFC 5545, 3.8.4.7).</param>
/// <param name="Sequence">0 for the first version, more for each later one (RFC 5545, 3.8.7.4).</param>
/// <param name="Summary">One line.</param>
/// <param name="Description">More lines; empty where there are none.</param>
/// <param name="ChangedAt">When what stands here last changed, UTC, to the second. Not the moment of writing: the same content is the same file.</param>
/// <param name="When">The day or the hours.</param>
public sealed record CalendarEntry(string Uid, int Sequence, string Summary, string Description, DateTimeOffset ChangedAt, CalendarTime When);
