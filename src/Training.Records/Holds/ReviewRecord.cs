using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Certification;

namespace Training.Records;

/// <summary>A review that was opened after an event, about a person or about a site. Append-only; its conclusion is a row of its own.</summary>
public sealed class ReviewRecord
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>What kind of event it was.</summary>
    public required ReviewCause Cause { get; init; }

    /// <summary>The encounter, report or entry that it was opened after.</summary>
    public required Guid EventId { get; init; }

    /// <summary>Whom it is about; null where it is about a site alone.</summary>
    public required Guid? PersonId { get; init; }

    /// <summary>Where the event was; null where it belongs to no site.</summary>
    public required Guid? SiteId { get; init; }

    /// <summary>The person whom it is about, else the site: an event opens one review of each.</summary>
    public required Guid SubjectId { get; init; }

    /// <summary>The day on which the event became known, in the zone of the site.</summary>
    public required DateOnly OpenedOn { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }

    /// <summary>A review of a person.</summary>
    public static ReviewRecord OfPerson(ReviewCause cause, Guid eventId, Guid personId, Guid? siteId, DateOnly openedOn, DateTimeOffset now) => new()
    {
        Id = Guid.CreateVersion7(), Cause = cause, EventId = eventId, PersonId = personId, SiteId = siteId, SubjectId = personId,
        OpenedOn = openedOn, KeptAt = now,
    };

    /// <summary>A review of a site.</summary>
    public static ReviewRecord OfSite(ReviewCause cause, Guid eventId, Guid siteId, DateOnly openedOn, DateTimeOffset now) => new()
    {
        Id = Guid.CreateVersion7(), Cause = cause, EventId = eventId, PersonId = null, SiteId = siteId, SubjectId = siteId,
        OpenedOn = openedOn, KeptAt = now,
    };
}

/// <summary>The hold that a review set: "do not handle until reviewed". Append-only; the conclusion of the review ends it.</summary>
public sealed class HoldRecord
{
    /// <summary>The review that it waits for.</summary>
    public required Guid ReviewId { get; init; }

    /// <summary>Who does not handle.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>First day.</summary>
    public required DateOnly StartsOn { get; init; }
}

/// <summary>The end of a review, by a named lead.</summary>
public sealed class ReviewConclusionRecord
{
    /// <summary>Which review; it has one end.</summary>
    public required Guid ReviewId { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>Day of the conclusion.</summary>
    public required DateOnly ConcludedOn { get; init; }

    /// <summary>What was concluded.</summary>
    public required string Words { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class ReviewRecordConfiguration : IEntityTypeConfiguration<ReviewRecord>
{
    public void Configure(EntityTypeBuilder<ReviewRecord> builder)
    {
        builder.ToTable("Reviews", table => table.HasCheckConstraint(
            "CK_Review_Subject", "\"SubjectId\" = \"PersonId\" OR (\"PersonId\" IS NULL AND \"SubjectId\" = \"SiteId\")"));
        builder.Property(review => review.Id).ValueGeneratedNever();
        builder.HasOne<Person>().WithMany().HasForeignKey(review => review.PersonId);
        builder.HasOne<Site>().WithMany().HasForeignKey(review => review.SiteId);
        // However often a form is sent: an event opens one review of each person and one of the site.
        builder.HasIndex(review => new { review.EventId, review.SubjectId }).IsUnique();
        builder.HasIndex(review => review.OpenedOn);
    }
}

internal sealed class HoldRecordConfiguration : IEntityTypeConfiguration<HoldRecord>
{
    public void Configure(EntityTypeBuilder<HoldRecord> builder)
    {
        builder.ToTable("Holds");
        // A review sets one hold.
        builder.HasKey(hold => hold.ReviewId);
        builder.HasOne<ReviewRecord>().WithOne().HasForeignKey<HoldRecord>(hold => hold.ReviewId);
        builder.HasOne<Person>().WithMany().HasForeignKey(hold => hold.PersonId);
    }
}

internal sealed class ReviewConclusionRecordConfiguration : IEntityTypeConfiguration<ReviewConclusionRecord>
{
    public void Configure(EntityTypeBuilder<ReviewConclusionRecord> builder)
    {
        builder.ToTable("ReviewConclusions");
        // Two leads who conclude at once: the first one's words stand.
        builder.HasKey(conclusion => conclusion.ReviewId);
        builder.Property(conclusion => conclusion.Words).HasMaxLength(Bounds.Reason);
        builder.HasOne<ReviewRecord>().WithOne().HasForeignKey<ReviewConclusionRecord>(conclusion => conclusion.ReviewId);
        builder.HasOne<Person>().WithMany().HasForeignKey(conclusion => conclusion.LeadId);
    }
}
