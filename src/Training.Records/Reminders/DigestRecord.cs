using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>The summary of one week to one representative of an employer. Append-only.</summary>
public sealed class DigestRecord
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>About whose people.</summary>
    public required Guid EmployerId { get; init; }

    /// <summary>Monday of the week.</summary>
    public required DateOnly WeekStartsOn { get; init; }

    /// <summary>To whom.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>When it was made, UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>The mail; null where the representative has no address that mail reaches.</summary>
    public required Guid? MailId { get; init; }
}

internal sealed class DigestRecordConfiguration : IEntityTypeConfiguration<DigestRecord>
{
    public void Configure(EntityTypeBuilder<DigestRecord> builder)
    {
        builder.ToTable("Digests");
        builder.Property(digest => digest.Id).ValueGeneratedNever();
        builder.HasOne<Employer>().WithMany().HasForeignKey(digest => digest.EmployerId);
        builder.HasOne<Person>().WithMany().HasForeignKey(digest => digest.PersonId);
        builder.HasOne<OutgoingMail>().WithMany().HasForeignKey(digest => digest.MailId);
        // One a week and representative, however many servers look.
        builder.HasIndex(digest => new { digest.EmployerId, digest.WeekStartsOn, digest.PersonId }).IsUnique();
    }
}
