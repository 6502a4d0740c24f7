using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A scheduled hands-on day with seats.</summary>
public sealed class ClassRecord : IVersioned
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>Where.</summary>
    public required Guid SiteId { get; init; }

    /// <summary>The day, in the site's zone.</summary>
    public required DateOnly HeldOn { get; set; }

    /// <summary>Of which course.</summary>
    public required string CourseId { get; init; }

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
        builder.ToTable(table => table.HasCheckConstraint("CK_Class_Capacity", "\"Capacity\" >= 1"));
    }
}
