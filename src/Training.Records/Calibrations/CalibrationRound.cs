using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>All instructors score the same recorded demonstration, each without seeing the others' marks, until a lead closes the round.</summary>
public sealed class CalibrationRound
{
    /// <summary>Made by the form: the same twice is one round.</summary>
    public required Guid Id { get; init; }

    /// <summary>Of which course.</summary>
    public required string CourseId { get; init; }

    /// <summary>Snapshot that the checklist comes from.</summary>
    public required string CourseHash { get; init; }

    /// <summary>Which checklist.</summary>
    public required string ChecklistId { get; init; }

    /// <summary>What the demonstration is called.</summary>
    public required string Title { get; init; }

    /// <summary>Where the recording is found, in words.</summary>
    public required string Recording { get; init; }

    /// <summary>Who opened it.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset OpenedAt { get; init; }
}

/// <summary>A lead closed a round: from then on no sheet is taken, and everybody sees what all marked.</summary>
public sealed class CalibrationEnd
{
    /// <summary>Which round; closed once.</summary>
    public required Guid RoundId { get; init; }

    /// <summary>Who.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset ClosedAt { get; init; }
}

internal sealed class CalibrationRoundConfiguration : IEntityTypeConfiguration<CalibrationRound>
{
    public void Configure(EntityTypeBuilder<CalibrationRound> builder)
    {
        builder.ToTable("CalibrationRounds");
        builder.Property(round => round.Id).ValueGeneratedNever();
        builder.Property(round => round.CourseId).HasMaxLength(Bounds.Id);
        builder.Property(round => round.CourseHash).HasMaxLength(Bounds.Hash);
        builder.Property(round => round.ChecklistId).HasMaxLength(Bounds.Id);
        builder.Property(round => round.Title).HasMaxLength(Bounds.Name);
        builder.Property(round => round.Recording).HasMaxLength(Bounds.Conditions);
        builder.HasIndex(round => round.OpenedAt);
        builder.HasOne<Person>().WithMany().HasForeignKey(round => round.LeadId);
        builder.HasOne<CourseSnapshotRecord>().WithMany().HasForeignKey(round => round.CourseHash);
    }
}

internal sealed class CalibrationEndConfiguration : IEntityTypeConfiguration<CalibrationEnd>
{
    public void Configure(EntityTypeBuilder<CalibrationEnd> builder)
    {
        builder.ToTable("CalibrationEnds");
        builder.HasKey(end => end.RoundId);
        builder.HasOne<CalibrationRound>().WithOne().HasForeignKey<CalibrationEnd>(end => end.RoundId);
        builder.HasOne<Person>().WithMany().HasForeignKey(end => end.LeadId);
    }
}
