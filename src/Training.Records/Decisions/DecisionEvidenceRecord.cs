using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>One result that a decision rests on: of a sitting or of a scoresheet, exactly one of the two.</summary>
public sealed class DecisionEvidenceRecord
{
    /// <summary>Which decision.</summary>
    public required Guid DecisionId { get; init; }

    /// <summary>Place among the scheme's requirements, from 1.</summary>
    public required int Position { get; init; }

    /// <summary>A sitting's result, or null.</summary>
    public required Guid? SittingResultId { get; init; }

    /// <summary>A scoresheet's result, or null.</summary>
    public required Guid? ScoresheetResultId { get; init; }
}

internal sealed class DecisionEvidenceRecordConfiguration : IEntityTypeConfiguration<DecisionEvidenceRecord>
{
    public void Configure(EntityTypeBuilder<DecisionEvidenceRecord> builder)
    {
        builder.ToTable("DecisionEvidence", table => table.HasCheckConstraint(
            "CK_DecisionEvidence_OneResult",
            "(\"SittingResultId\" IS NULL AND \"ScoresheetResultId\" IS NOT NULL) OR (\"SittingResultId\" IS NOT NULL AND \"ScoresheetResultId\" IS NULL)"));
        builder.HasKey(evidence => new { evidence.DecisionId, evidence.Position });
        builder.HasOne<SittingResultRecord>().WithMany().HasForeignKey(evidence => evidence.SittingResultId);
        builder.HasOne<ScoresheetResultRecord>().WithMany().HasForeignKey(evidence => evidence.ScoresheetResultId);
    }
}
