using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Training.Records;
using Training.Web.Doors;

namespace Training.Web.Features.SignIn;

/// <summary>Looks accounts up, compares passwords, and keeps new ones.</summary>
/// <remarks>Rule: docs/security.md, "Sign-in".</remarks>
public sealed class PasswordCheck(UserManager<Account> accounts, RecordsContext records, IPasswordHasher<Account> hasher)
{
    /// <summary>So many failures in a row from devices unknown to the account, and only a new code opens it there (NIST SP 800-63B: at most 100).</summary>
    public const int MostFailuresInARow = 100;

    // Compared for nobody's name, so that the answer takes as long as for somebody's.
    private static string? nobodysHash;

    /// <summary>The account of a sign-in name, or null.</summary>
    public async Task<Account?> FindAccountAsync(string? name) => string.IsNullOrWhiteSpace(name) ? null : await accounts.FindByNameAsync(name);

    /// <summary>The account with this id.</summary>
    /// <exception cref="InvalidOperationException">There is none: accounts are never deleted.</exception>
    public async Task<Account> GetAccountAsync(Guid id) =>
        await accounts.FindByIdAsync(id.ToString()) ?? throw new InvalidOperationException($"Account {id} is gone.");

    /// <summary>Whether the password is right, and the device may try; counts failures in a row.</summary>
    public async Task<bool> IsRightAsync(Account? account, string? password, bool isKnownDevice)
    {
        var typed = password is { Length: <= DoorsSetup.MostPassword } ? password : "";
        if (account?.PasswordHash is null)
        {
            CompareWithNobodys(typed);
            return false;
        }

        var isRight = await accounts.CheckPasswordAsync(account, typed)
            && (isKnownDevice || account.AccessFailedCount < MostFailuresInARow);
        // Counted up by the database itself: two tries at once are two.
        if (!isRight)
        {
            await records.Accounts.Where(row => row.Id == account.Id)
                .ExecuteUpdateAsync(set => set.SetProperty(row => row.AccessFailedCount, row => row.AccessFailedCount + 1));
        }
        else if (account.AccessFailedCount > 0)
        {
            await records.Accounts.Where(row => row.Id == account.Id).ExecuteUpdateAsync(set => set.SetProperty(row => row.AccessFailedCount, 0));
        }

        return isRight;
    }

    /// <summary>Why a new password is refused, or null where it may be kept.</summary>
    public async Task<PasswordFault?> FindFaultAsync(Account? account, string? name, string? password)
    {
        if (password is null || password.Length < DoorsSetup.LeastPassword) return PasswordFault.TooShort;
        if (password.Length > DoorsSetup.MostPassword) return PasswordFault.TooLong;
        var user = account ?? new Account { PersonId = Guid.Empty, UserName = name };
        foreach (var validator in accounts.PasswordValidators)
        {
            if (!(await validator.ValidateAsync(accounts, user, password)).Succeeded) return PasswordFault.Known;
        }

        return null;
    }

    /// <summary>Keeps a password that was looked at before.</summary>
    public async Task SetAsync(Account account, string password)
    {
        var hash = hasher.HashPassword(account, password);
        await records.Accounts.Where(row => row.Id == account.Id).ExecuteUpdateAsync(
            set => set.SetProperty(row => row.PasswordHash, hash).SetProperty(row => row.AccessFailedCount, 0));
    }

    private void CompareWithNobodys(string typed)
    {
        var nobody = new Account { PersonId = Guid.Empty };
        nobodysHash ??= hasher.HashPassword(nobody, Guid.NewGuid().ToString());
        hasher.VerifyHashedPassword(nobody, nobodysHash, typed);
    }
}
