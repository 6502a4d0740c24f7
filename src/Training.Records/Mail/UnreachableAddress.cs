using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>Mail does not reach this address of a person: refused by a mail server, or reported as returned. Another address is not meant.</summary>
public sealed class UnreachableAddress
{
    /// <summary>Made by the application or the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Whose.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>The address.</summary>
    public required string Address { get; init; }

    /// <summary>Since when it is known, UTC.</summary>
    public required DateTimeOffset FoundAt { get; init; }

    /// <summary>What the mail server said, or the lead who reported that mail came back.</summary>
    public required string Answer { get; init; }
}

internal sealed class UnreachableAddressConfiguration : IEntityTypeConfiguration<UnreachableAddress>
{
    public void Configure(EntityTypeBuilder<UnreachableAddress> builder)
    {
        builder.ToTable("UnreachableAddresses");
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.Address).HasMaxLength(Bounds.MailAddress);
        builder.Property(row => row.Answer).HasMaxLength(Bounds.Conditions);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.PersonId);
        builder.HasIndex(row => new { row.PersonId, row.Address }).IsUnique();
    }
}
