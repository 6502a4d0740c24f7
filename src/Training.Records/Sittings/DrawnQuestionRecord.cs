using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>One question as it was shown.</summary>
public sealed class DrawnQuestionRecord
{
    /// <summary>In which sitting.</summary>
    public required Guid SittingId { get; init; }

    /// <summary>Place in the order shown, from 1.</summary>
    public required int Position { get; init; }

    /// <summary>Which question; once a sitting.</summary>
    public required string QuestionId { get; init; }

    /// <summary>Its version at the draw.</summary>
    public required string QuestionVersion { get; init; }

    /// <summary>Options in the order shown, for pairs followed by the matches in theirs; empty for a number.</summary>
    public required IReadOnlyList<string> OptionIds { get; init; }
}

internal sealed class DrawnQuestionRecordConfiguration : IEntityTypeConfiguration<DrawnQuestionRecord>
{
    public void Configure(EntityTypeBuilder<DrawnQuestionRecord> builder)
    {
        builder.ToTable("DrawnQuestions");
        builder.HasKey(question => new { question.SittingId, question.QuestionId });
        builder.HasIndex(question => new { question.SittingId, question.Position }).IsUnique();
        builder.Property(question => question.QuestionId).HasMaxLength(Bounds.Id);
        builder.Property(question => question.QuestionVersion).HasMaxLength(Bounds.Hash);
        builder.Property(question => question.OptionIds).HasConversion(new TextListConverter(), new TextListComparer());
    }
}
