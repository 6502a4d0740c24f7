using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Scoring;

namespace Training.Records;

/// <summary>What was seen at one step.</summary>
public sealed class StepObservationRecord
{
    /// <summary>On which sheet.</summary>
    public required Guid ScoresheetId { get; init; }

    /// <summary>Which step; once a sheet.</summary>
    public required string StepId { get; init; }

    /// <summary>Place in the checklist, from 1.</summary>
    public required int Position { get; init; }

    /// <summary>What was seen.</summary>
    public required Observation Observation { get; init; }
}

internal sealed class StepObservationRecordConfiguration : IEntityTypeConfiguration<StepObservationRecord>
{
    public void Configure(EntityTypeBuilder<StepObservationRecord> builder)
    {
        builder.ToTable("StepObservations");
        builder.HasKey(observation => new { observation.ScoresheetId, observation.StepId });
        builder.HasIndex(observation => new { observation.ScoresheetId, observation.Position }).IsUnique();
        builder.Property(observation => observation.StepId).HasMaxLength(Bounds.Id);
    }
}
