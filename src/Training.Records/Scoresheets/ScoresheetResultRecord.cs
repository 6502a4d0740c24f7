using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Scoring;

namespace Training.Records;

/// <summary>What one grading of a scoresheet found; append-only.</summary>
public sealed class ScoresheetResultRecord
{
    /// <summary>Made by the application; decisions point here.</summary>
    public required Guid Id { get; init; }

    /// <summary>Of which sheet.</summary>
    public required Guid ScoresheetId { get; init; }

    /// <summary>1 for the first grading, without gaps; the highest is the one that new decisions read.</summary>
    public required int Number { get; init; }

    /// <summary>The checklist version that it was graded against.</summary>
    public required string ChecklistVersion { get; init; }

    /// <summary>What it came to.</summary>
    public required PracticalOutcome Outcome { get; init; }

    /// <summary>2 done, 1 prompted where allowed, 0 otherwise.</summary>
    public required int Points { get; init; }

    /// <summary>2 a step.</summary>
    public required int MaxPoints { get; init; }

    /// <summary>Why it is not passed, typed; stored as JSON.</summary>
    public required string Reasons { get; init; }

    /// <summary>When it was graded, UTC.</summary>
    public required DateTimeOffset GradedAt { get; init; }
}

internal sealed class ScoresheetResultRecordConfiguration : IEntityTypeConfiguration<ScoresheetResultRecord>
{
    public void Configure(EntityTypeBuilder<ScoresheetResultRecord> builder)
    {
        builder.Property(result => result.Id).ValueGeneratedNever();
        builder.Property(result => result.ChecklistVersion).HasMaxLength(Bounds.Hash);
        builder.HasIndex(result => new { result.ScoresheetId, result.Number }).IsUnique();
        builder.HasOne<ScoresheetRecord>().WithMany().HasForeignKey(result => result.ScoresheetId);
    }
}
