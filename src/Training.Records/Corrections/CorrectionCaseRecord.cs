using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>
/// A lead looked at a certification that rests on a result which no longer passes, and wrote what follows. The machine takes none away.
/// </summary>
public sealed class CorrectionCaseRecord
{
    /// <summary>Which correction brought it up.</summary>
    public required Guid CorrectionId { get; init; }

    /// <summary>The decision that rests on the result.</summary>
    public required Guid DecisionId { get; init; }

    /// <summary>Who looked.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>What follows, and why.</summary>
    public required string Conclusion { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset ConcludedAt { get; init; }
}

internal sealed class CorrectionCaseRecordConfiguration : IEntityTypeConfiguration<CorrectionCaseRecord>
{
    public void Configure(EntityTypeBuilder<CorrectionCaseRecord> builder)
    {
        builder.ToTable("CorrectionCases");
        // A case is concluded once; what is done about the certification later stands in its own rows.
        builder.HasKey(one => new { one.CorrectionId, one.DecisionId });
        builder.Property(one => one.Conclusion).HasMaxLength(Bounds.Reason);
        builder.HasOne<KeyCorrectionRecord>().WithMany().HasForeignKey(one => one.CorrectionId);
        builder.HasOne<DecisionRecord>().WithMany().HasForeignKey(one => one.DecisionId);
        builder.HasOne<Person>().WithMany().HasForeignKey(one => one.LeadId);
    }
}
