using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;

namespace Training.Records;

/// <summary>An answer of a started sitting, kept when it was given. A later one takes its place, but a late one never that of one in time.</summary>
public sealed class StartedAnswer
{
    /// <summary>In which sitting.</summary>
    public required Guid SittingId { get; init; }

    /// <summary>To which question; it was drawn.</summary>
    public required string QuestionId { get; init; }

    /// <summary>Whether it came after the time limit: kept beside the one in time, which counts where there is one.</summary>
    public required bool IsLate { get; init; }

    /// <summary>Chosen options, in the order given, for pairs each as <c>option=match</c>; empty for a number.</summary>
    public required IReadOnlyList<string> OptionIds { get; init; }

    /// <summary>The number typed, digit for digit; null otherwise.</summary>
    public required decimal? Number { get; init; }

    /// <summary>The language shown.</summary>
    public required Language Language { get; init; }

    /// <summary>UTC, to the millisecond.</summary>
    public required DateTimeOffset SavedAt { get; init; }
}

internal sealed class StartedAnswerConfiguration : IEntityTypeConfiguration<StartedAnswer>
{
    public void Configure(EntityTypeBuilder<StartedAnswer> builder)
    {
        builder.HasKey(answer => new { answer.SittingId, answer.QuestionId, answer.IsLate });
        builder.Property(answer => answer.QuestionId).HasMaxLength(Bounds.Id);
        builder.Property(answer => answer.OptionIds).HasConversion(new TextListConverter(), new TextListComparer());
        builder.Property(answer => answer.Number).HasConversion<NumberTextConverter>().HasMaxLength(Bounds.Number);
        builder.HasOne<StartedSitting>().WithMany().HasForeignKey(answer => answer.SittingId);
    }
}
