using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;

namespace Training.Records;

/// <summary>
/// Somebody said at a site that they have read a part that is about that site, such as its plan. It counts there alone: whoever moves to
/// another site reads that one's.
/// </summary>
public sealed class SiteReading
{
    /// <summary>Who.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>The site of the person on that day.</summary>
    public required Guid SiteId { get; init; }

    /// <summary>The text that was on the page.</summary>
    public required string CourseHash { get; init; }

    /// <summary>Which part.</summary>
    public required string ModuleId { get; init; }

    /// <summary>Of which course.</summary>
    public required string CourseId { get; init; }

    /// <summary>In which language.</summary>
    public required Language Language { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset ReadAt { get; init; }
}

internal sealed class SiteReadingConfiguration : IEntityTypeConfiguration<SiteReading>
{
    public void Configure(EntityTypeBuilder<SiteReading> builder)
    {
        builder.ToTable("SiteReadings");
        // The key is the rule: the same part of the same text once for each site.
        builder.HasKey(reading => new { reading.PersonId, reading.SiteId, reading.CourseHash, reading.ModuleId });
        builder.Property(reading => reading.CourseHash).HasMaxLength(Bounds.Hash);
        builder.Property(reading => reading.ModuleId).HasMaxLength(Bounds.Id);
        builder.Property(reading => reading.CourseId).HasMaxLength(Bounds.Id);
        builder.HasOne<Person>().WithMany().HasForeignKey(reading => reading.PersonId);
        builder.HasOne<Site>().WithMany().HasForeignKey(reading => reading.SiteId);
        builder.HasOne<CourseSnapshotRecord>().WithMany().HasForeignKey(reading => reading.CourseHash);
    }
}
