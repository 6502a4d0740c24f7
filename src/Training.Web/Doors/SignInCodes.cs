using Microsoft.EntityFrameworkCore;
using Training.Records;

namespace Training.Web.Doors;

/// <summary>One-time codes with which people choose a password: a lead starts it and never learns the password.</summary>
/// <remarks>Rule: docs/security.md, "One-time codes".</remarks>
public static class SignInCodes
{
    /// <summary>Makes a code for an account; earlier codes of it stop working.</summary>
    /// <returns>The code, to be shown once; the records keep only its hash.</returns>
    public static async Task<string> MakeCodeAsync(
        this RecordsContext records, Guid accountId, Guid? madeById, DateTimeOffset now, CancellationToken cancellation)
    {
        await records.SignInCodes.Where(code => code.AccountId == accountId && code.SpentAt == null)
            .ExecuteUpdateAsync(set => set.SetProperty(code => code.SpentAt, now), cancellation);
        var code = OneTimeCode.Draw();
        records.Add(new SignInCode
        {
            Id = Guid.CreateVersion7(), AccountId = accountId, CodeHash = OneTimeCode.HashOf(code), MadeById = madeById, MadeAt = now,
            EndsAt = now + OneTimeCode.Lasts,
        });
        await records.SaveChangesAsync(cancellation);
        return code;
    }

    /// <summary>Uses a code up, once: of two at the same moment one gets it.</summary>
    public static async Task<bool> SpendCodeAsync(
        this RecordsContext records, Guid accountId, string typed, DateTimeOffset now, CancellationToken cancellation)
    {
        var hash = OneTimeCode.HashOf(typed);
        return await records.SignInCodes
            .Where(code => code.AccountId == accountId && code.CodeHash == hash && code.SpentAt == null && code.EndsAt > now)
            .ExecuteUpdateAsync(set => set.SetProperty(code => code.SpentAt, now), cancellation) == 1;
    }
}
