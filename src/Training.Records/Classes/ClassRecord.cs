using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A scheduled hands-on day with seats.</summary>
public sealed class ClassRecord : IVersioned
{
    /// <summary>The start where none is kept, and what a form of a new class offers.</summary>
    public static readonly TimeOnly UsualStart = new(8, 0);

    /// <summary>The length where none is kept, and what a form of a new class offers.</summary>
    public const int UsualMinutes = 8 * 60;

    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>Where.</summary>
    public required Guid SiteId { get; init; }

    /// <summary>The day, in the site's zone.</summary>
    public required DateOnly HeldOn { get; set; }

    /// <summary>Of which course.</summary>
    public required string CourseId { get; init; }

    /// <summary>The start, on the clocks of the site. Classes of before this was kept start at 8:00.</summary>
    public TimeOnly StartsAt { get; set; } = UsualStart;

    /// <summary>How long it lasts, in minutes that pass, at least 1. Classes of before this was kept last eight hours.</summary>
    public int LengthMinutes { get; set; } = UsualMinutes;

    /// <summary>Seats, at least 1.</summary>
    public required int Capacity { get; set; }

    /// <inheritdoc/>
    public int Version { get; set; }
}

internal sealed class ClassRecordConfiguration : IEntityTypeConfiguration<ClassRecord>
{
    public void Configure(EntityTypeBuilder<ClassRecord> builder)
    {
        builder.Property(day => day.Id).ValueGeneratedNever();
        builder.Property(day => day.CourseId).HasMaxLength(Bounds.Id);
        builder.Property(day => day.Version).IsConcurrencyToken();
        builder.HasOne<Site>().WithMany().HasForeignKey(day => day.SiteId);
        builder.HasIndex(day => day.HeldOn);
        builder.ToTable(table =>
        {
            table.HasCheckConstraint("CK_Class_Capacity", "\"Capacity\" >= 1");
            table.HasCheckConstraint("CK_Class_Length", "\"LengthMinutes\" >= 1");
        });
    }
}
