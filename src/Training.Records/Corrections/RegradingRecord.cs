using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A result that was added because a question turned out wrong.</summary>
public sealed class RegradingRecord
{
    /// <summary>The new result.</summary>
    public required Guid ResultId { get; init; }

    /// <summary>Which correction.</summary>
    public required Guid CorrectionId { get; init; }
}

internal sealed class RegradingRecordConfiguration : IEntityTypeConfiguration<RegradingRecord>
{
    public void Configure(EntityTypeBuilder<RegradingRecord> builder)
    {
        builder.ToTable("Regradings");
        builder.HasKey(regrading => regrading.ResultId);
        builder.HasOne<KeyCorrectionRecord>().WithMany().HasForeignKey(regrading => regrading.CorrectionId);
    }
}
