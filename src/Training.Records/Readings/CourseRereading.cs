using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>Somebody said that they read a whole course again, as failed quizzes ask (docs/rules.md, "Trying again"); append-only.</summary>
public sealed class CourseRereading
{
    /// <summary>Made by the form: the same twice is one row.</summary>
    public required Guid Id { get; init; }

    /// <summary>Who.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Which course.</summary>
    public required string CourseId { get; init; }

    /// <summary>The text that it was in.</summary>
    public required string CourseHash { get; init; }

    /// <summary>The day, on the calendar of the person's site.</summary>
    public required DateOnly ReadOn { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class CourseRereadingConfiguration : IEntityTypeConfiguration<CourseRereading>
{
    public void Configure(EntityTypeBuilder<CourseRereading> builder)
    {
        builder.ToTable("CourseRereadings");
        builder.Property(reading => reading.Id).ValueGeneratedNever();
        builder.Property(reading => reading.CourseId).HasMaxLength(Bounds.Id);
        builder.Property(reading => reading.CourseHash).HasMaxLength(Bounds.Hash);
        builder.HasIndex(reading => new { reading.PersonId, reading.CourseId, reading.ReadOn });
        builder.HasOne<Person>().WithMany().HasForeignKey(reading => reading.PersonId);
        builder.HasOne<CourseSnapshotRecord>().WithMany().HasForeignKey(reading => reading.CourseHash);
    }
}
