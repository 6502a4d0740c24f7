using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>What stood before a live snake was used.</summary>
public sealed class LiveConditionsRecord
{
    /// <summary>On which sheet.</summary>
    public required Guid ScoresheetId { get; init; }

    /// <summary>The permit under which the animal is held or caught.</summary>
    public required string PermitNumber { get; init; }

    /// <summary>When the site's bite plan was last checked.</summary>
    public required DateOnly BitePlanCheckedOn { get; init; }

    /// <summary>When the call for help was tried, UTC.</summary>
    public required DateTimeOffset CommunicationsTestedAt { get; init; }

    /// <summary>Who watched.</summary>
    public required Guid WatcherId { get; init; }

    /// <summary>The earlier passed sheet on the model: its row, not its form id.</summary>
    public required Guid ModelPassId { get; init; }
}

internal sealed class LiveConditionsRecordConfiguration : IEntityTypeConfiguration<LiveConditionsRecord>
{
    public void Configure(EntityTypeBuilder<LiveConditionsRecord> builder)
    {
        builder.ToTable("LiveConditions");
        builder.HasKey(live => live.ScoresheetId);
        builder.Property(live => live.PermitNumber).HasMaxLength(Bounds.Number);
        builder.HasOne<Person>().WithMany().HasForeignKey(live => live.WatcherId);
        builder.HasOne<ScoresheetRecord>().WithMany().HasForeignKey(live => live.ModelPassId);
    }
}
