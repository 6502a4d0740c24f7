using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>Judges who say what a quiz or a checklist should be passed with. Never changed; what they say are rows of their own.</summary>
public sealed class Panel
{
    /// <summary>Made by the form: the same twice is one panel.</summary>
    public required Guid Id { get; init; }

    /// <summary>Which course.</summary>
    public required string CourseId { get; init; }

    /// <summary>The text of it that is judged.</summary>
    public required string CourseHash { get; init; }

    /// <summary>The quiz or checklist.</summary>
    public required string TargetId { get; init; }

    /// <summary>The questions that may be drawn when the panel was opened, or the steps; at least one.</summary>
    public required IReadOnlyList<string> ItemIds { get; init; }

    /// <summary>What the panel is for.</summary>
    public required string Purpose { get; init; }

    /// <summary>Who is only just competent, in the words that judges are given.</summary>
    public required string JustCompetent { get; init; }

    /// <summary>How the judges stand for those who know the work.</summary>
    public required string Balance { get; init; }

    /// <summary>The lead who opened it.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset OpenedAt { get; init; }
}

internal sealed class PanelConfiguration : IEntityTypeConfiguration<Panel>
{
    public void Configure(EntityTypeBuilder<Panel> builder)
    {
        builder.ToTable("Panels");
        builder.Property(panel => panel.Id).ValueGeneratedNever();
        builder.Property(panel => panel.CourseId).HasMaxLength(Bounds.Id);
        builder.Property(panel => panel.CourseHash).HasMaxLength(Bounds.Hash);
        builder.Property(panel => panel.TargetId).HasMaxLength(Bounds.Id);
        // Stored JSON: its length follows from the pool.
        builder.Property(panel => panel.ItemIds).HasConversion(new TextListConverter(), new TextListComparer());
        builder.Property(panel => panel.Purpose).HasMaxLength(Bounds.Reason);
        builder.Property(panel => panel.JustCompetent).HasMaxLength(Bounds.Reason);
        builder.Property(panel => panel.Balance).HasMaxLength(Bounds.Reason);
        builder.HasOne<CourseSnapshotRecord>().WithMany().HasForeignKey(panel => panel.CourseHash);
        builder.HasOne<Person>().WithMany().HasForeignKey(panel => panel.LeadId);
        builder.HasIndex(panel => panel.OpenedAt);
    }
}
