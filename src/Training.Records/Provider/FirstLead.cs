using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records;

/// <summary>Who becomes the first programme lead.</summary>
/// <param name="Account">With its password; its person is made along with it.</param>
/// <param name="Name">As they write it; at most 200 characters.</param>
/// <param name="Language">To write to them in.</param>
/// <param name="StartsOn">First day of the appointment.</param>
public sealed record FirstLead(Account Account, string Name, Language Language, DateOnly StartsOn);

/// <summary>The first account of an empty database.</summary>
public static class FirstLeadKeeping
{
    /// <summary>Whether nobody at all can sign in.</summary>
    public static async Task<bool> IsWithoutAccountsAsync(this RecordsContext records, CancellationToken cancellation) =>
        !await records.Accounts.AnyAsync(cancellation);

    /// <summary>Keeps the hash of a new code; those before stop working.</summary>
    public static async Task KeepAsync(this RecordsContext records, FirstLeadCode code, CancellationToken cancellation)
    {
        await records.FirstLeadCodes.Where(other => other.SpentAt == null)
            .ExecuteUpdateAsync(set => set.SetProperty(other => other.SpentAt, code.MadeAt), cancellation);
        await records.TryInsertAsync(cancellation, code);
    }

    /// <summary>
    /// Makes the first lead: person, name, appointment and account, and the code is used up, all in one transaction. False where the code
    /// does not work or there is an account already; nothing was written then.
    /// </summary>
    public static async Task<bool> MakeFirstLeadAsync(
        this RecordsContext records, FirstLead lead, string codeHash, DateTimeOffset now, CancellationToken cancellation)
    {
        await using var transaction = await records.Database.BeginTransactionAsync(cancellation);
        // The code comes first: of two at once one changes its row, and the other waits for that and then finds it spent.
        var isMine = await records.FirstLeadCodes.Where(code => code.CodeHash == codeHash && code.SpentAt == null && code.EndsAt > now)
            .ExecuteUpdateAsync(set => set.SetProperty(code => code.SpentAt, now), cancellation) == 1;
        if (!isMine || !await records.IsWithoutAccountsAsync(cancellation)) return false;

        var personId = lead.Account.PersonId;
        var isMade = await records.TryInsertAsync(
            cancellation,
            new Person { Id = personId, Language = lead.Language },
            new PersonName { Id = Guid.CreateVersion7(), PersonId = personId, Text = lead.Name, StartsOn = lead.StartsOn },
            new Appointment
            {
                Id = Guid.CreateVersion7(), PersonId = personId, StartsOn = lead.StartsOn, Role = AppointedRole.ProgrammeLead, Languages = LanguageTags.All,
            },
            lead.Account);
        if (isMade) await transaction.CommitAsync(cancellation);
        return isMade;
    }
}
