using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;

namespace Training.Records;

/// <summary>A lead adopted the cut of a panel, with the figures as they were; append-only. What serves is what the course's files say.</summary>
public sealed class CutAdoption
{
    /// <summary>Made by the form: the same twice is one adoption.</summary>
    public required Guid Id { get; init; }

    /// <summary>Of which panel; it names course and target.</summary>
    public required Guid PanelId { get; init; }

    /// <summary>How.</summary>
    public required CutMethod Method { get; init; }

    /// <summary>The cut in percent, two decimals.</summary>
    public required decimal Mean { get; init; }

    /// <summary>The pass mark that follows: the next whole percent.</summary>
    public required int PassPercent { get; init; }

    /// <summary>In percentage points, two decimals; null where the method gives none.</summary>
    public decimal? StandardError { get; init; }

    /// <summary>Standard deviation of the judges' percents, two decimals; null where the method gives none.</summary>
    public decimal? StandardDeviation { get; init; }

    /// <summary>How many judges it is the mean of.</summary>
    public required int Judges { get; init; }

    /// <summary>How many rounds they judged, 1 or 2.</summary>
    public required int Rounds { get; init; }

    /// <summary>Why, and by what evidence.</summary>
    public required string Reason { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>The lead's day.</summary>
    public required DateOnly AdoptedOn { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class CutAdoptionConfiguration : IEntityTypeConfiguration<CutAdoption>
{
    public void Configure(EntityTypeBuilder<CutAdoption> builder)
    {
        builder.ToTable("CutAdoptions");
        builder.Property(adoption => adoption.Id).ValueGeneratedNever();
        builder.Property(adoption => adoption.Mean).HasPrecision(5, 2);
        builder.Property(adoption => adoption.StandardError).HasPrecision(5, 2);
        builder.Property(adoption => adoption.StandardDeviation).HasPrecision(5, 2);
        builder.Property(adoption => adoption.Reason).HasMaxLength(Bounds.Reason);
        builder.HasOne<Panel>().WithMany().HasForeignKey(adoption => adoption.PanelId);
        builder.HasOne<Person>().WithMany().HasForeignKey(adoption => adoption.LeadId);
        builder.HasIndex(adoption => new { adoption.PanelId, adoption.KeptAt });
    }
}
