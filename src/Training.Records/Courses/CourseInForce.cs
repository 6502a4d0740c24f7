using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>From then on this text of the course served. The last one goes on serving, across restarts, while a newer one is broken.</summary>
public sealed class CourseInForce
{
    /// <summary>Which course.</summary>
    public required string CourseId { get; init; }

    /// <summary>1 for the first text, without gaps; the highest serves.</summary>
    public required int Number { get; init; }

    /// <summary>Which snapshot.</summary>
    public required string Hash { get; init; }

    /// <summary>Since when.</summary>
    public required DateTimeOffset SinceAt { get; init; }
}

internal sealed class CourseInForceConfiguration : IEntityTypeConfiguration<CourseInForce>
{
    public void Configure(EntityTypeBuilder<CourseInForce> builder)
    {
        // The key is the rule: two nodes that load a new text at once append it once.
        builder.HasKey(row => new { row.CourseId, row.Number });
        builder.Property(row => row.CourseId).HasMaxLength(Bounds.Id);
        builder.Property(row => row.Hash).HasMaxLength(Bounds.Hash);
        builder.HasOne<CourseSnapshotRecord>().WithMany().HasForeignKey(row => row.Hash);
    }
}
