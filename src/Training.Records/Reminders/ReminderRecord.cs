using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A reminder that was made: written as a mail, or put on the crew's list of a site. Append-only.</summary>
public sealed class ReminderRecord
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>Whose certification.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Under which scheme.</summary>
    public required string SchemeId { get; init; }

    /// <summary>Of which period.</summary>
    public required int PeriodNumber { get; init; }

    /// <summary>For which day of the scheme: <c>P60D</c> before the last day, or <c>after</c>.</summary>
    public required string Milestone { get; init; }

    /// <summary>That day.</summary>
    public required DateOnly DueOn { get; init; }

    /// <summary>The last day that it reminds of.</summary>
    public required DateOnly ExpiresOn { get; init; }

    /// <summary>When it was made, UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>The mail; null where there was no address that mail reaches: then it stands on the crew's list.</summary>
    public required Guid? MailId { get; init; }

    /// <summary>The site of the holder when it was made; null where they worked on none.</summary>
    public required Guid? SiteId { get; init; }
}

internal sealed class ReminderRecordConfiguration : IEntityTypeConfiguration<ReminderRecord>
{
    public void Configure(EntityTypeBuilder<ReminderRecord> builder)
    {
        builder.ToTable("Reminders");
        builder.Property(reminder => reminder.Id).ValueGeneratedNever();
        builder.Property(reminder => reminder.SchemeId).HasMaxLength(Bounds.Id);
        builder.Property(reminder => reminder.Milestone).HasMaxLength(Bounds.Milestone);
        builder.HasOne<PeriodRecord>().WithMany()
            .HasForeignKey(reminder => new { reminder.PersonId, reminder.SchemeId, reminder.PeriodNumber })
            .HasPrincipalKey(period => new { period.PersonId, period.SchemeId, period.Number });
        builder.HasOne<OutgoingMail>().WithMany().HasForeignKey(reminder => reminder.MailId);
        builder.HasOne<Site>().WithMany().HasForeignKey(reminder => reminder.SiteId);
        // Each goes out once: of two servers that look at the same time, the second is refused here, and its mail with it.
        builder.HasIndex(reminder => new { reminder.PersonId, reminder.SchemeId, reminder.PeriodNumber, reminder.Milestone }).IsUnique();
        builder.HasIndex(reminder => reminder.MadeAt);
    }
}
