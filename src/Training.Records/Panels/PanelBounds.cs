using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>What one judge would accept as cut and as failures, in whole percent 0–100; append-only, the newest counts.</summary>
public sealed class PanelBounds
{
    /// <summary>Made by the form: the same twice is one row.</summary>
    public required Guid Id { get; init; }

    /// <summary>Who judged.</summary>
    public required Guid JudgeId { get; init; }

    /// <summary>Lowest cut, even if everybody passes.</summary>
    public required int LeastCut { get; init; }

    /// <summary>Highest cut, even if nobody passes.</summary>
    public required int GreatestCut { get; init; }

    /// <summary>Lowest share that may fail.</summary>
    public required int LeastFail { get; init; }

    /// <summary>Highest share that may fail.</summary>
    public required int GreatestFail { get; init; }

    /// <summary>Who typed it: the judge, or a lead for an outsider.</summary>
    public required Guid KeptById { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class PanelBoundsConfiguration : IEntityTypeConfiguration<PanelBounds>
{
    public void Configure(EntityTypeBuilder<PanelBounds> builder)
    {
        builder.ToTable("PanelBounds");
        builder.Property(bounds => bounds.Id).ValueGeneratedNever();
        builder.HasOne<PanelJudge>().WithMany().HasForeignKey(bounds => bounds.JudgeId);
        builder.HasOne<Person>().WithMany().HasForeignKey(bounds => bounds.KeptById);
        builder.HasIndex(bounds => new { bounds.JudgeId, bounds.KeptAt });
    }
}
