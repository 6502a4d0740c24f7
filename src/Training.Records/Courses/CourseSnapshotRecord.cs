using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>The whole text of a course as it was once, kept for ever: what a sitting or sheet was shown, graded and decided by.</summary>
public sealed class CourseSnapshotRecord
{
    /// <summary>SHA-256 in lower-case hex; the address.</summary>
    public required string Hash { get; init; }

    /// <summary>Which course.</summary>
    public required string CourseId { get; init; }

    /// <summary>The snapshot as the course engine writes it.</summary>
    public required string Content { get; init; }

    /// <summary>When it was loaded for the first time.</summary>
    public required DateTimeOffset FirstLoadedAt { get; init; }
}

internal sealed class CourseSnapshotRecordConfiguration : IEntityTypeConfiguration<CourseSnapshotRecord>
{
    public void Configure(EntityTypeBuilder<CourseSnapshotRecord> builder)
    {
        builder.HasKey(snapshot => snapshot.Hash);
        builder.Property(snapshot => snapshot.Hash).HasMaxLength(Bounds.Hash);
        builder.Property(snapshot => snapshot.CourseId).HasMaxLength(Bounds.Id);
        builder.HasIndex(snapshot => snapshot.CourseId);
    }
}
