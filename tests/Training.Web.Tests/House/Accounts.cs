using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Training.Records;

namespace Training.Web.Tests.House;

/// <summary>Accounts of invented people.</summary>
internal static class Accounts
{
    /// <summary>Of every account of the tests.</summary>
    public const string Password = "gravel tortoise umbrella";

    // Hashing is slow on purpose; one password, one hash.
    private static string? hash;

    /// <summary>The person's sign-in name; the account is made where there is none.</summary>
    public static async Task<string> EnsureAsync(IServiceProvider services, Guid personId)
    {
        await using var records = await services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContextAsync();
        var name = $"person-{personId:N}";
        if (await records.Accounts.AnyAsync(account => account.PersonId == personId)) return name;
        var account = new Account { Id = Guid.CreateVersion7(), PersonId = personId, UserName = name, NormalizedUserName = KeyText.Of(name) };
        hash ??= new PasswordHasher<Account>().HashPassword(account, Password);
        account.PasswordHash = hash;
        records.Add(account);
        await records.SaveChangesAsync();
        return name;
    }
}
