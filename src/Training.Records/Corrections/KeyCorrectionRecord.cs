using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>How a question that turned out wrong is graded from then on.</summary>
public enum CorrectionRemedy
{
    /// <summary>It is left out.</summary>
    LeaveOut,

    /// <summary>It is marked by the key of a later text.</summary>
    OtherKey,
}

/// <summary>
/// A lead found that one text of a question was wrong, and said how it is graded from then on. The newest row of a text counts. Rule:
/// docs/rules.md, "When a question turns out wrong".
/// </summary>
public sealed class KeyCorrectionRecord
{
    /// <summary>Made by the form: the same twice is one correction.</summary>
    public required Guid Id { get; init; }

    /// <summary>Of which course.</summary>
    public required string CourseId { get; init; }

    /// <summary>Of which quiz.</summary>
    public required string QuizId { get; init; }

    /// <summary>Which question.</summary>
    public required string QuestionId { get; init; }

    /// <summary>The text that was wrong.</summary>
    public required string QuestionVersion { get; init; }

    /// <summary>What is done.</summary>
    public required CorrectionRemedy Remedy { get; init; }

    /// <summary>The snapshot that holds the other key; null where it is left out.</summary>
    public required string? ByHash { get; init; }

    /// <summary>The text whose key marks from now on; null where it is left out.</summary>
    public required string? ByVersion { get; init; }

    /// <summary>Why; shown to everybody whose result it changes.</summary>
    public required string Reason { get; init; }

    /// <summary>Who.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>Whether both say the same about the same text, whenever they came.</summary>
    public bool IsAs(KeyCorrectionRecord other) =>
        (CourseId, QuestionId, QuestionVersion, Remedy, ByVersion, Reason, LeadId)
        == (other.CourseId, other.QuestionId, other.QuestionVersion, other.Remedy, other.ByVersion, other.Reason, other.LeadId);
}

internal sealed class KeyCorrectionRecordConfiguration : IEntityTypeConfiguration<KeyCorrectionRecord>
{
    public void Configure(EntityTypeBuilder<KeyCorrectionRecord> builder)
    {
        builder.ToTable("KeyCorrections");
        builder.Property(correction => correction.Id).ValueGeneratedNever();
        builder.Property(correction => correction.CourseId).HasMaxLength(Bounds.Id);
        builder.Property(correction => correction.QuizId).HasMaxLength(Bounds.Id);
        builder.Property(correction => correction.QuestionId).HasMaxLength(Bounds.Id);
        builder.Property(correction => correction.QuestionVersion).HasMaxLength(Bounds.Hash);
        builder.Property(correction => correction.ByHash).HasMaxLength(Bounds.Hash);
        builder.Property(correction => correction.ByVersion).HasMaxLength(Bounds.Hash);
        builder.Property(correction => correction.Reason).HasMaxLength(Bounds.Reason);
        builder.HasIndex(correction => new { correction.CourseId, correction.MadeAt });
        builder.HasOne<Person>().WithMany().HasForeignKey(correction => correction.LeadId);
        builder.HasOne<CourseSnapshotRecord>().WithMany().HasForeignKey(correction => correction.ByHash);
    }
}
