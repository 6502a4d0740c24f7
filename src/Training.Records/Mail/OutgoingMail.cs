using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;

namespace Training.Records;

/// <summary>One mail to one person: written once, then tried until it is accepted or given up.</summary>
public sealed class OutgoingMail : IVersioned
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>To whom.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Their address when it was written.</summary>
    public required string Address { get; init; }

    /// <summary>The language it is written in.</summary>
    public required Language Language { get; init; }

    /// <summary>Subject line.</summary>
    public required string Subject { get; init; }

    /// <summary>Plain text.</summary>
    public required string Text { get; init; }

    /// <summary>A calendar file that goes with it (RFC 5545), or null.</summary>
    public string? Calendar { get; init; }

    /// <summary>When it was written, UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>Not tried before this instant, UTC.</summary>
    public required DateTimeOffset NextTryAt { get; set; }

    /// <summary>A server is at it, or was killed at it, until this instant, UTC; null while none is.</summary>
    public DateTimeOffset? LeaseEndsAt { get; set; }

    /// <summary>How often it was tried and not accepted.</summary>
    public int FailedTries { get; set; }

    /// <summary>When the mail server accepted it, UTC; null until then.</summary>
    public DateTimeOffset? SentAt { get; set; }

    /// <summary>When no further try was planned, UTC; null while it is tried.</summary>
    public DateTimeOffset? GivenUpAt { get; set; }

    /// <summary>What the mail server said to the last try that it did not accept; null before one.</summary>
    public string? LastAnswer { get; set; }

    /// <inheritdoc/>
    public int Version { get; set; }
}

internal sealed class OutgoingMailConfiguration : IEntityTypeConfiguration<OutgoingMail>
{
    public void Configure(EntityTypeBuilder<OutgoingMail> builder)
    {
        builder.ToTable("OutgoingMails");
        builder.Property(mail => mail.Id).ValueGeneratedNever();
        builder.Property(mail => mail.Address).HasMaxLength(Bounds.MailAddress);
        builder.Property(mail => mail.Subject).HasMaxLength(Bounds.Name);
        builder.Property(mail => mail.Text).HasMaxLength(Bounds.MailText);
        builder.Property(mail => mail.Calendar).HasMaxLength(Bounds.Calendar);
        builder.Property(mail => mail.LastAnswer).HasMaxLength(Bounds.Conditions);
        builder.Property(mail => mail.Version).IsConcurrencyToken();
        builder.HasOne<Person>().WithMany().HasForeignKey(mail => mail.PersonId);
        builder.HasIndex(mail => mail.NextTryAt);
    }
}
