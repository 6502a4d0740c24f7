using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>Which papers a run makes.</summary>
public enum PaperRunKind
{
    /// <summary>The first paper of each granted decision that has none.</summary>
    Missing,

    /// <summary>The next revision of each latest paper whose last day is not over.</summary>
    Anew,
}

/// <summary>Many papers that a lead asked for at once. What of it is done follows from the papers that exist.</summary>
public sealed class PaperRun
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Which papers.</summary>
    public required PaperRunKind Kind { get; init; }

    /// <summary>Of people whom this employer employed on the day it began; null for all.</summary>
    public required Guid? EmployerId { get; init; }

    /// <summary>Under this scheme; null for all.</summary>
    public required string? SchemeId { get; init; }

    /// <summary>Why, in the lead's words.</summary>
    public required string Reason { get; init; }

    /// <summary>Who asked.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset StartedAt { get; init; }
}

internal sealed class PaperRunConfiguration : IEntityTypeConfiguration<PaperRun>
{
    public void Configure(EntityTypeBuilder<PaperRun> builder)
    {
        builder.ToTable("PaperRuns");
        builder.Property(run => run.Id).ValueGeneratedNever();
        builder.Property(run => run.SchemeId).HasMaxLength(Bounds.Id);
        builder.Property(run => run.Reason).HasMaxLength(Bounds.Reason);
        builder.HasIndex(run => run.StartedAt);
        builder.HasOne<Employer>().WithMany().HasForeignKey(run => run.EmployerId);
        builder.HasOne<Person>().WithMany().HasForeignKey(run => run.LeadId);
    }
}
