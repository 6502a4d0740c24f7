using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Scoring;

namespace Training.Records;

/// <summary>What was seen at one step of a scoresheet that is not signed yet.</summary>
public sealed class StartedObservation
{
    /// <summary>On which sheet.</summary>
    public required Guid ScoresheetId { get; init; }

    /// <summary>Which step; once a sheet.</summary>
    public required string StepId { get; init; }

    /// <summary>Place in the checklist, from 1.</summary>
    public required int Position { get; init; }

    /// <summary>What was seen.</summary>
    public required Observation Observation { get; set; }

    /// <summary>When it was saved, UTC.</summary>
    public required DateTimeOffset SavedAt { get; set; }
}

internal sealed class StartedObservationConfiguration : IEntityTypeConfiguration<StartedObservation>
{
    public void Configure(EntityTypeBuilder<StartedObservation> builder)
    {
        builder.ToTable("StartedObservations");
        builder.HasKey(observation => new { observation.ScoresheetId, observation.StepId });
        builder.Property(observation => observation.StepId).HasMaxLength(Bounds.Id);
    }
}
