using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>
/// What a person signs in with. It says who somebody is, never what they may do: that follows from appointments and representatives,
/// read anew on every request.
/// </summary>
public sealed class Account : IdentityUser<Guid>, IVersioned
{
    /// <summary>Whose. One account a person.</summary>
    public required Guid PersonId { get; init; }

    /// <inheritdoc/>
    public int Version { get; set; }
}

internal sealed class AccountConfiguration : IEntityTypeConfiguration<Account>
{
    public void Configure(EntityTypeBuilder<Account> builder)
    {
        builder.ToTable("Accounts");
        builder.Property(account => account.Id).ValueGeneratedNever();
        builder.Property(account => account.UserName).HasMaxLength(Bounds.SignInName).IsRequired();
        builder.Property(account => account.NormalizedUserName).HasMaxLength(Bounds.SignInName).IsRequired();
        builder.Property(account => account.PasswordHash).HasMaxLength(Bounds.PasswordHash);
        builder.Property(account => account.SecurityStamp).HasMaxLength(Bounds.Hash);
        builder.Property(account => account.Version).IsConcurrencyToken();
        builder.HasIndex(account => account.NormalizedUserName).IsUnique();
        builder.HasIndex(account => account.PersonId).IsUnique();
        builder.HasOne<Person>().WithMany().HasForeignKey(account => account.PersonId);

        // Not asked of anybody: addresses come with the mail that needs them. A lock on the account could be used against a crew; see SignInThrottle.
        builder.Ignore(account => account.Email);
        builder.Ignore(account => account.NormalizedEmail);
        builder.Ignore(account => account.EmailConfirmed);
        builder.Ignore(account => account.PhoneNumber);
        builder.Ignore(account => account.PhoneNumberConfirmed);
        builder.Ignore(account => account.TwoFactorEnabled);
        builder.Ignore(account => account.LockoutEnabled);
        builder.Ignore(account => account.LockoutEnd);
        // Version does its work.
        builder.Ignore(account => account.ConcurrencyStamp);
    }
}
