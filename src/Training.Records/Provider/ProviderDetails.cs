using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>What the body that trains and certifies is called and where it sits, from an instant on. The newest row serves; papers keep what they printed.</summary>
public sealed class ProviderDetails
{
    /// <summary>Made by the form: the same twice is one row.</summary>
    public required Guid Id { get; init; }

    /// <summary>The lead who wrote it.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset SinceAt { get; init; }

    /// <summary>As pages and papers print it.</summary>
    public required string Name { get; init; }

    /// <summary>Postal address on one line.</summary>
    public required string Address { get; init; }

    /// <summary>IANA zone whose calendar counts where no site is involved.</summary>
    public required string Zone { get; init; }

    /// <summary>Region whose guidance public pages show, such as <c>US</c>.</summary>
    public required string Region { get; init; }
}

internal sealed class ProviderDetailsConfiguration : IEntityTypeConfiguration<ProviderDetails>
{
    public void Configure(EntityTypeBuilder<ProviderDetails> builder)
    {
        builder.ToTable("ProviderDetails");
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.Name).HasMaxLength(Bounds.ProviderName);
        builder.Property(row => row.Address).HasMaxLength(Bounds.ProviderAddress);
        builder.Property(row => row.Zone).HasMaxLength(Bounds.Zone);
        builder.Property(row => row.Region).HasMaxLength(Bounds.Zone);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.LeadId);
        builder.HasIndex(row => row.SinceAt);
    }
}
