using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records;

/// <summary>Somebody to write to.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="Language">To write to them in.</param>
/// <param name="Address">Where mail reaches them; null where none is kept, or mail does not reach the one that is.</param>
public sealed record Recipient(Guid PersonId, Language Language, string? Address);

/// <summary>Reads whom mail reaches.</summary>
public static class MailQueries
{
    /// <summary>The person as somebody to write to.</summary>
    /// <exception cref="InvalidOperationException">There is no such person.</exception>
    public static Task<Recipient> GetRecipientAsync(this RecordsContext records, Guid personId, CancellationToken cancellation) =>
        records.Persons.Where(person => person.Id == personId)
            .Select(person => new Recipient(
                person.Id, person.Language,
                records.UnreachableAddresses.Any(row => row.PersonId == person.Id && row.Address == person.MailAddress) ? null : person.MailAddress))
            .SingleAsync(cancellation);
}
