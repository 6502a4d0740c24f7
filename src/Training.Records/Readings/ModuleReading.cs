using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;

namespace Training.Records;

/// <summary>Somebody said that they have read a part of a course. It is a bookmark and no evidence: no decision rests on it.</summary>
public sealed class ModuleReading
{
    /// <summary>Who.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>The text that it was in.</summary>
    public required string CourseHash { get; init; }

    /// <summary>Which part.</summary>
    public required string ModuleId { get; init; }

    /// <summary>Of which course.</summary>
    public required string CourseId { get; init; }

    /// <summary>The language shown.</summary>
    public required Language Language { get; init; }

    /// <summary>UTC, to the millisecond.</summary>
    public required DateTimeOffset ReadAt { get; init; }
}

internal sealed class ModuleReadingConfiguration : IEntityTypeConfiguration<ModuleReading>
{
    public void Configure(EntityTypeBuilder<ModuleReading> builder)
    {
        // The first reading of a text stays, in whatever language; a new text of the course can be read anew, and both rows stay.
        builder.HasKey(reading => new { reading.PersonId, reading.CourseHash, reading.ModuleId });
        builder.HasIndex(reading => new { reading.PersonId, reading.CourseId });
        builder.Property(reading => reading.CourseHash).HasMaxLength(Bounds.Hash);
        builder.Property(reading => reading.ModuleId).HasMaxLength(Bounds.Id);
        builder.Property(reading => reading.CourseId).HasMaxLength(Bounds.Id);
        builder.HasOne<Person>().WithMany().HasForeignKey(reading => reading.PersonId);
        builder.HasOne<CourseSnapshotRecord>().WithMany().HasForeignKey(reading => reading.CourseHash);
    }
}
