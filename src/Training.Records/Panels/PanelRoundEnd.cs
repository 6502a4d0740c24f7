using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A lead ended a round: its ratings stand, and judges see their spread.</summary>
public sealed class PanelRoundEnd
{
    /// <summary>Of which panel.</summary>
    public required Guid PanelId { get; init; }

    /// <summary>1 or 2.</summary>
    public required int Round { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC; what is kept later does not count in this round.</summary>
    public required DateTimeOffset EndedAt { get; init; }
}

internal sealed class PanelRoundEndConfiguration : IEntityTypeConfiguration<PanelRoundEnd>
{
    public void Configure(EntityTypeBuilder<PanelRoundEnd> builder)
    {
        builder.ToTable("PanelRoundEnds");
        // The key is the rule: a round ends once.
        builder.HasKey(end => new { end.PanelId, end.Round });
        builder.HasOne<Panel>().WithMany().HasForeignKey(end => end.PanelId);
        builder.HasOne<Person>().WithMany().HasForeignKey(end => end.LeadId);
    }
}
