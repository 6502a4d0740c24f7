using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>The end of a suspension; the suspension is its key: it ends once.</summary>
public sealed class ReinstatementRecord
{
    /// <summary>Which suspension.</summary>
    public required Guid SuspensionId { get; init; }

    /// <summary>The day; still suspended.</summary>
    public required DateOnly ReinstatedOn { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class ReinstatementRecordConfiguration : IEntityTypeConfiguration<ReinstatementRecord>
{
    public void Configure(EntityTypeBuilder<ReinstatementRecord> builder)
    {
        builder.HasKey(reinstatement => reinstatement.SuspensionId);
        builder.Property(reinstatement => reinstatement.Reason).HasMaxLength(Bounds.Reason);
        builder.HasOne<SuspensionRecord>().WithOne().HasForeignKey<ReinstatementRecord>(reinstatement => reinstatement.SuspensionId);
        builder.HasOne<Person>().WithMany().HasForeignKey(reinstatement => reinstatement.LeadId);
    }
}
