using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>One sitting as submitted, with the draw itself and every answer; never changed.</summary>
public sealed class SittingRecord
{
    /// <summary>Our own key, since two contents may come under one form id.</summary>
    public required Guid Id { get; init; }

    /// <summary>The id that the form made: <c>Sitting.Id</c>.</summary>
    public required Guid FormId { get; init; }

    /// <summary>1 for the sitting that counts; 2 and more for other content that came later under the same form id (disputed).</summary>
    public required int Copy { get; init; }

    /// <summary>Of what the person gave; see docs in <c>ContentHash</c>.</summary>
    public required string ContentHash { get; init; }

    /// <summary>Who.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Snapshot that the questions come from.</summary>
    public required string CourseHash { get; init; }

    /// <summary>Which quiz.</summary>
    public required string QuizId { get; init; }

    /// <summary>Seed of the draw.</summary>
    public required ulong Seed { get; init; }

    /// <summary>UTC, to the millisecond.</summary>
    public required DateTimeOffset StartedAt { get; init; }

    /// <summary>UTC, to the millisecond.</summary>
    public required DateTimeOffset SubmittedAt { get; init; }

    /// <summary>The calendar day of the sitting in <see cref="Zone"/>.</summary>
    public required DateOnly TakenOn { get; init; }

    /// <summary>IANA time zone of the person's site that day.</summary>
    public required string Zone { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }

    /// <summary>What was shown, in order.</summary>
    public IList<DrawnQuestionRecord> Questions { get; init; } = [];

    /// <summary>What was answered.</summary>
    public IList<AnswerRecord> Answers { get; init; } = [];
}

internal sealed class SittingRecordConfiguration : IEntityTypeConfiguration<SittingRecord>
{
    public void Configure(EntityTypeBuilder<SittingRecord> builder)
    {
        builder.Property(sitting => sitting.Id).ValueGeneratedNever();
        builder.Property(sitting => sitting.ContentHash).HasMaxLength(Bounds.Hash);
        builder.Property(sitting => sitting.CourseHash).HasMaxLength(Bounds.Hash);
        builder.Property(sitting => sitting.QuizId).HasMaxLength(Bounds.Id);
        builder.Property(sitting => sitting.Zone).HasMaxLength(Bounds.Zone);
        builder.Property(sitting => sitting.Seed).HasConversion<SeedConverter>();
        // The same post again hits the first index; of two contents under one form id only one gets copy 1, by the second.
        builder.HasIndex(sitting => new { sitting.FormId, sitting.ContentHash }).IsUnique();
        builder.HasIndex(sitting => new { sitting.FormId, sitting.Copy }).IsUnique();
        builder.HasIndex(sitting => new { sitting.PersonId, sitting.TakenOn });
        builder.HasOne<Person>().WithMany().HasForeignKey(sitting => sitting.PersonId);
        builder.HasOne<CourseSnapshotRecord>().WithMany().HasForeignKey(sitting => sitting.CourseHash);
        builder.HasMany(sitting => sitting.Questions).WithOne().HasForeignKey(question => question.SittingId);
        builder.HasMany(sitting => sitting.Answers).WithOne().HasForeignKey(answer => answer.SittingId);
    }
}
