using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>Somebody was told about a review. Append-only.</summary>
public sealed class ReviewNotice
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>Which review.</summary>
    public required Guid ReviewId { get; init; }

    /// <summary>Who was told.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>What.</summary>
    public required ReviewNews News { get; init; }

    /// <summary>When, UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>The mail; null where there was no address that mail reaches: then it stands on their page and, for a hold, on the crew's list.</summary>
    public required Guid? MailId { get; init; }
}

/// <summary>What somebody is told about a review.</summary>
public enum ReviewNews
{
    /// <summary>To whoever is on hold: do not handle until reviewed.</summary>
    HoldSet,

    /// <summary>To whoever was on hold: what was concluded.</summary>
    HoldEnded,

    /// <summary>To a lead: it is open.</summary>
    Opened,

    /// <summary>To a lead: it is overdue.</summary>
    Overdue,
}

/// <summary>Somebody was told that guidance changed since they trained. Append-only.</summary>
public sealed class GuidanceNotice
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>Who.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>First day of the new values: all that changed that day is told at once.</summary>
    public required DateOnly ChangedOn { get; init; }

    /// <summary>When, UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>The mail; null where there was no address that mail reaches: then it stands on their page.</summary>
    public required Guid? MailId { get; init; }
}

internal sealed class ReviewNoticeConfiguration : IEntityTypeConfiguration<ReviewNotice>
{
    public void Configure(EntityTypeBuilder<ReviewNotice> builder)
    {
        builder.ToTable("ReviewNotices");
        builder.Property(notice => notice.Id).ValueGeneratedNever();
        builder.HasOne<ReviewRecord>().WithMany().HasForeignKey(notice => notice.ReviewId);
        builder.HasOne<Person>().WithMany().HasForeignKey(notice => notice.PersonId);
        builder.HasOne<OutgoingMail>().WithMany().HasForeignKey(notice => notice.MailId);
        // Each piece of news goes to each of them once, however many servers look.
        builder.HasIndex(notice => new { notice.ReviewId, notice.PersonId, notice.News }).IsUnique();
    }
}

internal sealed class GuidanceNoticeConfiguration : IEntityTypeConfiguration<GuidanceNotice>
{
    public void Configure(EntityTypeBuilder<GuidanceNotice> builder)
    {
        builder.ToTable("GuidanceNotices");
        builder.Property(notice => notice.Id).ValueGeneratedNever();
        builder.HasOne<Person>().WithMany().HasForeignKey(notice => notice.PersonId);
        builder.HasOne<OutgoingMail>().WithMany().HasForeignKey(notice => notice.MailId);
        // Once for each day of changes, however many servers look.
        builder.HasIndex(notice => new { notice.PersonId, notice.ChangedOn }).IsUnique();
    }
}
