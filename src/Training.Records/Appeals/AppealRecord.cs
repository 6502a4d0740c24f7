using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Certification;

namespace Training.Records;

/// <summary>Somebody contests a result or a decision about themselves, or complains of something else. Never changed; what follows is rows beside it.</summary>
public sealed class AppealRecord
{
    /// <summary>Made by the form; an objection on a scoresheet carries the id of the candidate's word.</summary>
    public required Guid Id { get; init; }

    /// <summary>Who appeals.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>What sort of thing is contested.</summary>
    public required AppealMatter Matter { get; init; }

    /// <summary>The form's id of the contested sitting or sheet, the contested decision, or the complaint's own id.</summary>
    public required Guid ContestedId { get; init; }

    /// <summary>The contested sitting (the row, not the form), or null.</summary>
    public Guid? SittingId { get; init; }

    /// <summary>The contested scoresheet (the row, not the form), or null.</summary>
    public Guid? ScoresheetId { get; init; }

    /// <summary>The contested decision, or null.</summary>
    public Guid? DecisionId { get; init; }

    /// <summary>Why, in their own words.</summary>
    public required string Words { get; init; }

    /// <summary>In whose session it was written: their own, or the instructor's whose device the candidate was handed.</summary>
    public required Guid EnteredById { get; init; }

    /// <summary>The calendar day in <see cref="Zone"/>; the clock counts from it.</summary>
    public required DateOnly ReceivedOn { get; init; }

    /// <summary>IANA zone of the provider on that day.</summary>
    public required string Zone { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }

    /// <summary>The receipt; null where no mail reaches them.</summary>
    public Guid? MailId { get; init; }
}

internal sealed class AppealRecordConfiguration : IEntityTypeConfiguration<AppealRecord>
{
    public void Configure(EntityTypeBuilder<AppealRecord> builder)
    {
        builder.ToTable("Appeals", table => table.HasCheckConstraint(
            "CK_Appeal_Contested",
            "(CASE WHEN \"SittingId\" IS NULL THEN 0 ELSE 1 END) + (CASE WHEN \"ScoresheetId\" IS NULL THEN 0 ELSE 1 END)"
            + " + (CASE WHEN \"DecisionId\" IS NULL THEN 0 ELSE 1 END) = (CASE WHEN \"Matter\" = 'Complaint' THEN 0 ELSE 1 END)"));
        builder.Property(appeal => appeal.Id).ValueGeneratedNever();
        builder.Property(appeal => appeal.Words).HasMaxLength(Bounds.Reason);
        builder.Property(appeal => appeal.Zone).HasMaxLength(Bounds.Zone);
        // What was decided on appeal is final: a result or decision is contested once, whichever way it comes first.
        builder.HasIndex(appeal => new { appeal.Matter, appeal.ContestedId }).IsUnique();
        builder.HasIndex(appeal => new { appeal.PersonId, appeal.ReceivedOn });
        builder.HasOne<Person>().WithMany().HasForeignKey(appeal => appeal.PersonId);
        builder.HasOne<Person>().WithMany().HasForeignKey(appeal => appeal.EnteredById);
        builder.HasOne<SittingRecord>().WithMany().HasForeignKey(appeal => appeal.SittingId);
        builder.HasOne<ScoresheetRecord>().WithMany().HasForeignKey(appeal => appeal.ScoresheetId);
        builder.HasOne<DecisionRecord>().WithMany().HasForeignKey(appeal => appeal.DecisionId);
        builder.HasOne<OutgoingMail>().WithMany().HasForeignKey(appeal => appeal.MailId);
    }
}
