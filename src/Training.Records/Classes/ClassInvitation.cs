using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Certification;

namespace Training.Records;

/// <summary>Somebody was told that they are expected at a class, or no longer: by mail, or by the crew's list. Append-only.</summary>
public sealed class ClassInvitation
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>Which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>Who was told.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>0 for the first, one more for each that follows: <see cref="Invitation.Sequence"/>.</summary>
    public required int Sequence { get; init; }

    /// <summary>They were told that they are no longer expected.</summary>
    public required bool IsCancellation { get; init; }

    /// <summary>The day that they were told, in the site's zone.</summary>
    public required DateOnly HeldOn { get; init; }

    /// <summary>The start that they were told, on the clocks of the site.</summary>
    public required TimeOnly StartsAt { get; init; }

    /// <summary>The length that they were told, in minutes.</summary>
    public required int LengthMinutes { get; init; }

    /// <summary>The place that they were told; empty where nothing was said.</summary>
    public required string MeetingPlace { get; init; }

    /// <summary>When it was made, UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>The mail; null where there was no address that mail reaches: then it stands on the crew's list.</summary>
    public required Guid? MailId { get; init; }

    /// <summary>What was told, for the rule.</summary>
    public Invitation ToInvitation() => new(Sequence, IsCancellation, new(HeldOn, StartsAt, LengthMinutes, MeetingPlace));
}

/// <summary>Somebody was reminded of a class. Append-only.</summary>
public sealed class ClassReminder
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>Which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>Who was reminded.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Of which invitation.</summary>
    public required int Sequence { get; init; }

    /// <summary>When it was made, UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>The mail; null where the invitation stands on the crew's list, which reminds by itself.</summary>
    public required Guid? MailId { get; init; }
}

internal sealed class ClassInvitationConfiguration : IEntityTypeConfiguration<ClassInvitation>
{
    public void Configure(EntityTypeBuilder<ClassInvitation> builder)
    {
        builder.ToTable("ClassInvitations");
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.MeetingPlace).HasMaxLength(Bounds.MeetingPlace);
        builder.HasOne<ClassRecord>().WithMany().HasForeignKey(row => row.ClassId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.PersonId);
        builder.HasOne<OutgoingMail>().WithMany().HasForeignKey(row => row.MailId);
        // Each goes out once: of two servers that look at the same time, the second is refused here, and its mail with it.
        builder.HasIndex(row => new { row.ClassId, row.PersonId, row.Sequence }).IsUnique();
        builder.HasIndex(row => row.HeldOn);
    }
}

internal sealed class ClassReminderConfiguration : IEntityTypeConfiguration<ClassReminder>
{
    public void Configure(EntityTypeBuilder<ClassReminder> builder)
    {
        builder.ToTable("ClassReminders");
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.HasOne<ClassRecord>().WithMany().HasForeignKey(row => row.ClassId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.PersonId);
        builder.HasOne<OutgoingMail>().WithMany().HasForeignKey(row => row.MailId);
        builder.HasIndex(row => new { row.ClassId, row.PersonId, row.Sequence }).IsUnique();
    }
}
