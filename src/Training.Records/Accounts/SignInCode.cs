using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A one-time code with which a person chooses a password: the first one, or another when it is forgotten. A lead makes it and hands it over.</summary>
public sealed class SignInCode : IVersioned
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>For which account.</summary>
    public required Guid AccountId { get; init; }

    /// <summary>SHA-256 of the code, lower-case hex: the code itself is shown once and kept nowhere.</summary>
    public required string CodeHash { get; init; }

    /// <summary>The lead who made it; null for the first lead of an empty database.</summary>
    public required Guid? MadeById { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>UTC; refused from this instant on.</summary>
    public required DateTimeOffset EndsAt { get; init; }

    /// <summary>When it was used, UTC, or replaced by a newer one; null while it works.</summary>
    public DateTimeOffset? SpentAt { get; set; }

    /// <inheritdoc/>
    public int Version { get; set; }
}

internal sealed class SignInCodeConfiguration : IEntityTypeConfiguration<SignInCode>
{
    public void Configure(EntityTypeBuilder<SignInCode> builder)
    {
        builder.ToTable("SignInCodes");
        builder.Property(code => code.Id).ValueGeneratedNever();
        builder.Property(code => code.CodeHash).HasMaxLength(Bounds.Hash);
        builder.Property(code => code.Version).IsConcurrencyToken();
        builder.HasIndex(code => code.CodeHash).IsUnique();
        builder.HasOne<Account>().WithMany().HasForeignKey(code => code.AccountId);
        builder.HasOne<Person>().WithMany().HasForeignKey(code => code.MadeById);
    }
}
