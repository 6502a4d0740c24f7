using Training.Certification;
using Training.Records;

namespace Training.Web.Features.Reminders;

/// <summary>What goes out, what went, and what did not.</summary>
/// <param name="Zone">Whose days the instants are told in.</param>
/// <param name="Ahead">What falls due in the next 14 days as things stand, at most 200.</param>
/// <param name="AheadCount">How many there are in all.</param>
/// <param name="Made">The last 50 that were made, newest first, each with its mail, or null where it went onto a crew's list.</param>
/// <param name="GivenUp">Mails that are no longer tried, newest first, at most 50.</param>
/// <param name="Unreachable">Addresses in use that mail does not reach, at most 50.</param>
/// <param name="Names">Of everybody named here.</param>
/// <param name="Titles">Of the schemes.</param>
public sealed record RemindersPage(
    TimeZoneInfo Zone,
    IReadOnlyList<Reminder> Ahead,
    int AheadCount,
    IReadOnlyList<(ReminderRecord Reminder, OutgoingMail? Mail)> Made,
    IReadOnlyList<OutgoingMail> GivenUp,
    IReadOnlyList<UnreachableAddress> Unreachable,
    IReadOnlyDictionary<Guid, string> Names,
    IReadOnlyDictionary<string, string> Titles)
{
    /// <summary>How far ahead the page looks, in days.</summary>
    public const int DaysAhead = 14;

    /// <summary>Most lines of what is ahead.</summary>
    public const int MostAhead = 200;
}
