using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A lead read the public address that papers print in their codes, and said that it is right.</summary>
public sealed class AddressConfirmation
{
    /// <summary>The address as it was set, such as <c>https://training.example.org/</c>. Once confirmed is confirmed.</summary>
    public required string Address { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset ConfirmedAt { get; init; }
}

internal sealed class AddressConfirmationConfiguration : IEntityTypeConfiguration<AddressConfirmation>
{
    public void Configure(EntityTypeBuilder<AddressConfirmation> builder)
    {
        builder.ToTable("AddressConfirmations");
        builder.HasKey(row => row.Address);
        builder.Property(row => row.Address).HasMaxLength(Bounds.PublicAddress);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.LeadId);
    }
}
