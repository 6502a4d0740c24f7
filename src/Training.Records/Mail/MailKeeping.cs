using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Takes mails to be sent, and keeps what became of them.</summary>
/// <remarks>
/// A mail server's acceptance and our record of it cannot be one step. A mail is leased before it is sent: of several servers one gets it, and
/// where that one is killed between the two, the lease runs out and the same mail, with the same Message-ID, goes once more. None is lost.
/// </remarks>
public static class MailKeeping
{
    /// <summary>How long a server has for one mail. Longer than any try may last, so that a slow server is not taken for a dead one.</summary>
    public static readonly TimeSpan Lease = TimeSpan.FromMinutes(10);

    private const int Looked = 20;

    /// <summary>Leases the mail that has waited longest, or answers null where none is to be tried now.</summary>
    public static async Task<OutgoingMail?> TakeMailAsync(this RecordsContext records, DateTimeOffset now, CancellationToken cancellation)
    {
        while (true)
        {
            var waiting = await records.OutgoingMails.AsNoTracking()
                .Where(mail => mail.SentAt == null && mail.GivenUpAt == null && mail.NextTryAt <= now && (mail.LeaseEndsAt == null || mail.LeaseEndsAt <= now))
                .OrderBy(mail => mail.NextTryAt).ThenBy(mail => mail.Id).Take(Looked).ToListAsync(cancellation);
            if (waiting.Count == 0) return null;
            foreach (var mail in waiting)
            {
                if (await records.ChangeAsync(mail, row => row.LeaseEndsAt = now + Lease, cancellation)) return mail;
            }
        }
    }

    /// <summary>Keeps that the mail server accepted it.</summary>
    public static Task KeepSentAsync(this RecordsContext records, OutgoingMail mail, DateTimeOffset now, CancellationToken cancellation) =>
        records.ChangeAsync(
            mail,
            row =>
            {
                row.SentAt = now;
                row.LeaseEndsAt = null;
            },
            cancellation);

    /// <summary>Keeps that a try was not accepted.</summary>
    /// <param name="records">Where to.</param>
    /// <param name="mail">As it was taken.</param>
    /// <param name="answer">What was said; cut where it is long.</param>
    /// <param name="nextTryAt">When to try again, or null: given up.</param>
    /// <param name="now">The instant, UTC.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static Task KeepFailureAsync(
        this RecordsContext records, OutgoingMail mail, string answer, DateTimeOffset? nextTryAt, DateTimeOffset now, CancellationToken cancellation) =>
        records.ChangeAsync(
            mail,
            row =>
            {
                row.FailedTries++;
                row.LastAnswer = Cut(answer);
                row.LeaseEndsAt = null;
                if (nextTryAt is { } next) row.NextTryAt = next;
                else row.GivenUpAt = now;
            },
            cancellation);

    /// <summary>Keeps that mail does not reach an address. Known already: nothing changes.</summary>
    public static Task KeepUnreachableAsync(
        this RecordsContext records, Guid personId, string address, string answer, DateTimeOffset now, CancellationToken cancellation) =>
        records.TryInsertAsync(cancellation, new UnreachableAddress
        {
            Id = Guid.CreateVersion7(), PersonId = personId, Address = address, FoundAt = now, Answer = Cut(answer),
        });

    /// <summary>Keeps where mail reaches a person, or that no address is known. What was known against that address is forgotten.</summary>
    /// <returns>False where there is no such person.</returns>
    public static async Task<bool> KeepMailAddressAsync(this RecordsContext records, Guid personId, string? address, CancellationToken cancellation)
    {
        await using var transaction = await records.Database.BeginTransactionAsync(cancellation);
        var kept = await records.Persons.Where(row => row.Id == personId).ExecuteUpdateAsync(
            set => set.SetProperty(row => row.MailAddress, address).SetProperty(row => row.Version, row => row.Version + 1), cancellation);
        await records.UnreachableAddresses.Where(row => row.PersonId == personId && row.Address == address).ExecuteDeleteAsync(cancellation);
        await transaction.CommitAsync(cancellation);
        return kept == 1;
    }

    /// <summary>Puts a mail that was given up back: it is tried from now on as if it were new. False where it is not given up.</summary>
    public static async Task<bool> TryAgainAsync(this RecordsContext records, Guid mailId, DateTimeOffset now, CancellationToken cancellation)
    {
        var mail = await records.OutgoingMails.AsNoTracking().SingleOrDefaultAsync(row => row.Id == mailId && row.GivenUpAt != null, cancellation);
        return mail is not null && await records.ChangeAsync(
            mail,
            row =>
            {
                row.GivenUpAt = null;
                row.FailedTries = 0;
                row.NextTryAt = now;
            },
            cancellation);
    }

    private static string Cut(string answer) => answer.Length <= Bounds.Conditions ? answer : answer[..Bounds.Conditions];

    // False where another server changed it first.
    private static async Task<bool> ChangeAsync(this RecordsContext records, OutgoingMail mail, Action<OutgoingMail> change, CancellationToken cancellation)
    {
        var tracked = records.Attach(mail);
        change(mail);
        try
        {
            return await records.TrySaveAsync(cancellation);
        }
        finally
        {
            tracked.State = EntityState.Detached;
        }
    }
}
