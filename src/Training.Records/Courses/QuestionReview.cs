using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>What a review came to.</summary>
public enum ReviewOutcome
{
    /// <summary>Read, and right: it may be drawn.</summary>
    Accepted,

    /// <summary>Something is to be mended: not drawn until its text was changed and accepted.</summary>
    SetAside,

    /// <summary>Right, and not drawn for a while: too many know it, or its season is over.</summary>
    Resting,

    /// <summary>Not to be drawn again; kept for the sittings that asked it.</summary>
    Withdrawn,
}

/// <summary>
/// A lead read one version of a question in every language and judged it. The newest review of a version counts. A question whose text,
/// key or guidance changes has another version, and waits for a review of its own.
/// </summary>
public sealed class QuestionReview
{
    /// <summary>Made by the form that judged several questions at once.</summary>
    public required Guid FormId { get; init; }

    /// <summary>Of which course.</summary>
    public required string CourseId { get; init; }

    /// <summary>Which question.</summary>
    public required string QuestionId { get; init; }

    /// <summary>Which version of it: SHA-256, lower-case hex.</summary>
    public required string QuestionVersion { get; init; }

    /// <summary>What it came to.</summary>
    public required ReviewOutcome Outcome { get; init; }

    /// <summary>Who read it.</summary>
    public required Guid ReviewerId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset ReviewedAt { get; init; }
}

internal sealed class QuestionReviewConfiguration : IEntityTypeConfiguration<QuestionReview>
{
    public void Configure(EntityTypeBuilder<QuestionReview> builder)
    {
        builder.ToTable("QuestionReviews");
        // The key is the rule: a form that is sent twice judges once.
        builder.HasKey(review => new { review.FormId, review.CourseId, review.QuestionId });
        builder.Property(review => review.CourseId).HasMaxLength(Bounds.Id);
        builder.Property(review => review.QuestionId).HasMaxLength(Bounds.Id);
        builder.Property(review => review.QuestionVersion).HasMaxLength(Bounds.Hash);
        builder.HasOne<Person>().WithMany().HasForeignKey(review => review.ReviewerId);
        builder.HasIndex(review => new { review.CourseId, review.ReviewedAt });
    }
}
