using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;

namespace Training.Records;

/// <summary>One answer as it was kept; late ones too.</summary>
public sealed class AnswerRecord
{
    /// <summary>In which sitting.</summary>
    public required Guid SittingId { get; init; }

    /// <summary>To which question; it was drawn.</summary>
    public required string QuestionId { get; init; }

    /// <summary>Chosen options, in the order given, for pairs each as <c>option=match</c>; empty for a number.</summary>
    public required IReadOnlyList<string> OptionIds { get; init; }

    /// <summary>The number typed, digit for digit; null otherwise.</summary>
    public required decimal? Number { get; init; }

    /// <summary>The language shown.</summary>
    public required Language Language { get; init; }

    /// <summary>UTC, to the millisecond.</summary>
    public required DateTimeOffset SavedAt { get; init; }
}

internal sealed class AnswerRecordConfiguration : IEntityTypeConfiguration<AnswerRecord>
{
    public void Configure(EntityTypeBuilder<AnswerRecord> builder)
    {
        builder.ToTable("Answers");
        builder.HasKey(answer => new { answer.SittingId, answer.QuestionId });
        builder.Property(answer => answer.QuestionId).HasMaxLength(Bounds.Id);
        builder.Property(answer => answer.OptionIds).HasConversion(new TextListConverter(), new TextListComparer());
        builder.Property(answer => answer.Number).HasConversion<NumberTextConverter>().HasMaxLength(Bounds.Number);
        // An answer to a question that was not drawn cannot be stored.
        builder.HasOne<DrawnQuestionRecord>().WithOne().HasForeignKey<AnswerRecord>(answer => new { answer.SittingId, answer.QuestionId });
    }
}
