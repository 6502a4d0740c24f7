using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>An address at which whoever has it, such as a hospital or a gate, reads a site's bite plan without a sign-in. Append-only.</summary>
public sealed class BitePlanAddress
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>SHA-256 of the secret part of the address, in lower-case hex: the secret itself was shown once and is kept nowhere.</summary>
    public required string SecretHash { get; init; }

    /// <summary>Of which site.</summary>
    public required Guid SiteId { get; init; }

    /// <summary>Whom it was made for, in the lead's words.</summary>
    public required string MadeFor { get; init; }

    /// <summary>The lead who made it.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>When, UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }
}

/// <summary>An address of a bite plan no longer answers. Append-only; there is no way back, a new address is.</summary>
public sealed class BitePlanAddressEnd
{
    /// <summary>Which.</summary>
    public required Guid AddressId { get; init; }

    /// <summary>When, UTC.</summary>
    public required DateTimeOffset EndedAt { get; init; }

    /// <summary>The lead who ended it.</summary>
    public required Guid EndedById { get; init; }
}

internal sealed class BitePlanAddressConfiguration : IEntityTypeConfiguration<BitePlanAddress>
{
    public void Configure(EntityTypeBuilder<BitePlanAddress> builder)
    {
        builder.ToTable("BitePlanAddresses");
        builder.Property(address => address.Id).ValueGeneratedNever();
        builder.Property(address => address.SecretHash).HasMaxLength(Bounds.Hash);
        builder.Property(address => address.MadeFor).HasMaxLength(Bounds.Name);
        builder.HasOne<Site>().WithMany().HasForeignKey(address => address.SiteId);
        builder.HasOne<Person>().WithMany().HasForeignKey(address => address.LeadId);
        builder.HasIndex(address => address.SecretHash).IsUnique();
    }
}

internal sealed class BitePlanAddressEndConfiguration : IEntityTypeConfiguration<BitePlanAddressEnd>
{
    public void Configure(EntityTypeBuilder<BitePlanAddressEnd> builder)
    {
        builder.ToTable("BitePlanAddressEnds");
        builder.HasKey(end => end.AddressId);
        builder.HasOne<BitePlanAddress>().WithMany().HasForeignKey(end => end.AddressId);
        builder.HasOne<Person>().WithMany().HasForeignKey(end => end.EndedById);
    }
}
