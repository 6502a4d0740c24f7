using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>
/// The written reason why a scorer may count although they taught the candidate within two years. It belongs to the sheet, not to
/// one of its results, so that regrading does not lose it.
/// </summary>
public sealed class SeparationReasonRecord
{
    /// <summary>Which sheet; one reason each.</summary>
    public required Guid ScoresheetId { get; init; }

    /// <summary>The scorer, who wrote it before scoring, or a lead.</summary>
    public required Guid WriterId { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <summary>When it was written, UTC.</summary>
    public required DateTimeOffset WrittenAt { get; init; }
}

internal sealed class SeparationReasonRecordConfiguration : IEntityTypeConfiguration<SeparationReasonRecord>
{
    public void Configure(EntityTypeBuilder<SeparationReasonRecord> builder)
    {
        builder.HasKey(reason => reason.ScoresheetId);
        builder.Property(reason => reason.Reason).HasMaxLength(Bounds.Reason);
        builder.HasOne<ScoresheetRecord>().WithOne().HasForeignKey<SeparationReasonRecord>(reason => reason.ScoresheetId);
        builder.HasOne<Person>().WithMany().HasForeignKey(reason => reason.WriterId);
    }
}
