using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;

namespace Training.Records;

/// <summary>An address at which a calendar program reads, without a sign-in, what its maker may see. Append-only.</summary>
public sealed class CalendarFeed
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>SHA-256 of the secret part of the address, in lower-case hex: the secret itself was shown once and is kept nowhere.</summary>
    public required string SecretHash { get; init; }

    /// <summary>Who made it, and what it may show: it answers only while they may see that themselves.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Whose people and sites; null for an instructor's own classes.</summary>
    public required Guid? EmployerId { get; init; }

    /// <summary>The language of its words.</summary>
    public required Language Language { get; init; }

    /// <summary>When it was made, UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }
}

/// <summary>An address of a calendar no longer answers. Append-only; there is no way back, a new address is.</summary>
public sealed class CalendarFeedEnd
{
    /// <summary>Which.</summary>
    public required Guid FeedId { get; init; }

    /// <summary>When, UTC.</summary>
    public required DateTimeOffset EndedAt { get; init; }

    /// <summary>Who ended it.</summary>
    public required Guid EndedById { get; init; }
}

internal sealed class CalendarFeedConfiguration : IEntityTypeConfiguration<CalendarFeed>
{
    public void Configure(EntityTypeBuilder<CalendarFeed> builder)
    {
        builder.ToTable("CalendarFeeds");
        builder.Property(feed => feed.Id).ValueGeneratedNever();
        builder.Property(feed => feed.SecretHash).HasMaxLength(Bounds.Hash);
        builder.HasOne<Person>().WithMany().HasForeignKey(feed => feed.PersonId);
        builder.HasOne<Employer>().WithMany().HasForeignKey(feed => feed.EmployerId);
        builder.HasIndex(feed => feed.SecretHash).IsUnique();
    }
}

internal sealed class CalendarFeedEndConfiguration : IEntityTypeConfiguration<CalendarFeedEnd>
{
    public void Configure(EntityTypeBuilder<CalendarFeedEnd> builder)
    {
        builder.ToTable("CalendarFeedEnds");
        builder.HasKey(end => end.FeedId);
        builder.HasOne<CalendarFeed>().WithMany().HasForeignKey(end => end.FeedId);
        builder.HasOne<Person>().WithMany().HasForeignKey(end => end.EndedById);
    }
}
