using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Scoring;

namespace Training.Records;

/// <summary>What one grading found; append-only. Regrading adds a row, and decisions go on pointing to the row they rest on.</summary>
public sealed class SittingResultRecord
{
    /// <summary>Made by the application; decisions point here.</summary>
    public required Guid Id { get; init; }

    /// <summary>Of which sitting.</summary>
    public required Guid SittingId { get; init; }

    /// <summary>1 for the first grading, without gaps; the highest is the one that new decisions read.</summary>
    public required int Number { get; init; }

    /// <summary>The snapshot whose key it was graded with.</summary>
    public required string CourseHash { get; init; }

    /// <summary>Whether it was passed.</summary>
    public required bool IsPassed { get; init; }

    /// <summary>One for each right question.</summary>
    public required int Points { get; init; }

    /// <summary>One for each drawn question.</summary>
    public required int MaxPoints { get; init; }

    /// <summary>Why it is not passed, typed; stored as JSON.</summary>
    public required string Reasons { get; init; }

    /// <summary>When it was graded, UTC.</summary>
    public required DateTimeOffset GradedAt { get; init; }

    /// <summary>Why it was graded again; null for the first grading.</summary>
    public RegradingRecord? Regrading { get; init; }

    /// <summary>Points by topic, in blueprint order.</summary>
    public IList<TopicResultRecord> Topics { get; init; } = [];

    /// <summary>Marks by question, in the order shown.</summary>
    public IList<QuestionResultRecord> Questions { get; init; } = [];
}

internal sealed class SittingResultRecordConfiguration : IEntityTypeConfiguration<SittingResultRecord>
{
    public void Configure(EntityTypeBuilder<SittingResultRecord> builder)
    {
        builder.Property(result => result.Id).ValueGeneratedNever();
        builder.Property(result => result.CourseHash).HasMaxLength(Bounds.Hash);
        builder.HasIndex(result => new { result.SittingId, result.Number }).IsUnique();
        builder.HasOne<SittingRecord>().WithMany().HasForeignKey(result => result.SittingId);
        builder.HasOne<CourseSnapshotRecord>().WithMany().HasForeignKey(result => result.CourseHash);
        builder.HasOne(result => result.Regrading).WithOne().HasForeignKey<RegradingRecord>(regrading => regrading.ResultId);
        builder.HasMany(result => result.Topics).WithOne().HasForeignKey(topic => topic.ResultId);
        builder.HasMany(result => result.Questions).WithOne().HasForeignKey(question => question.ResultId);
    }
}

/// <summary>Points of one topic.</summary>
public sealed class TopicResultRecord
{
    /// <summary>Of which result.</summary>
    public required Guid ResultId { get; init; }

    /// <summary>Place in the blueprint, from 1.</summary>
    public required int Position { get; init; }

    /// <summary>Which topic.</summary>
    public required string Topic { get; init; }

    /// <summary>Right questions.</summary>
    public required int Points { get; init; }

    /// <summary>Drawn questions.</summary>
    public required int MaxPoints { get; init; }
}

internal sealed class TopicResultRecordConfiguration : IEntityTypeConfiguration<TopicResultRecord>
{
    public void Configure(EntityTypeBuilder<TopicResultRecord> builder)
    {
        builder.ToTable("TopicResults");
        builder.HasKey(topic => new { topic.ResultId, topic.Position });
        builder.Property(topic => topic.Topic).HasMaxLength(Bounds.Id);
    }
}

/// <summary>One question's mark.</summary>
public sealed class QuestionResultRecord
{
    /// <summary>Of which result.</summary>
    public required Guid ResultId { get; init; }

    /// <summary>Place in the order shown, from 1.</summary>
    public required int Position { get; init; }

    /// <summary>Which question.</summary>
    public required string QuestionId { get; init; }

    /// <summary>The version of the question whose key marked it.</summary>
    public required string QuestionVersion { get; init; }

    /// <summary>How it was answered.</summary>
    public required Mark Mark { get; init; }
}

internal sealed class QuestionResultRecordConfiguration : IEntityTypeConfiguration<QuestionResultRecord>
{
    public void Configure(EntityTypeBuilder<QuestionResultRecord> builder)
    {
        builder.ToTable("QuestionResults");
        builder.HasKey(question => new { question.ResultId, question.Position });
        builder.Property(question => question.QuestionId).HasMaxLength(Bounds.Id);
        builder.Property(question => question.QuestionVersion).HasMaxLength(Bounds.Hash);
        builder.HasIndex(question => new { question.QuestionId, question.QuestionVersion });
    }
}
