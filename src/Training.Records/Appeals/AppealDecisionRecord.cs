using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Certification;

namespace Training.Records;

/// <summary>What an appeal came to; the appeal is its key, so that it is decided once.</summary>
public sealed class AppealDecisionRecord
{
    /// <summary>Which appeal.</summary>
    public required Guid AppealId { get; init; }

    /// <summary>What it came to.</summary>
    public required AppealOutcome Outcome { get; init; }

    /// <summary>What follows; null where it was not upheld.</summary>
    public required AppealRemedy? Remedy { get; init; }

    /// <summary>Why, as the appellant reads it.</summary>
    public required string Reason { get; init; }

    /// <summary>The lead; independent by docs/rules.md, "Appeals".</summary>
    public required Guid LeadId { get; init; }

    /// <summary>The day, in the zone of the appeal.</summary>
    public required DateOnly DecidedOn { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }

    /// <summary>The closing letter; null where no mail reaches the appellant.</summary>
    public Guid? MailId { get; init; }
}

internal sealed class AppealDecisionRecordConfiguration : IEntityTypeConfiguration<AppealDecisionRecord>
{
    public void Configure(EntityTypeBuilder<AppealDecisionRecord> builder)
    {
        builder.ToTable("AppealDecisions", table => table.HasCheckConstraint(
            "CK_AppealDecision_Remedy", "(\"Outcome\" = 'NotUpheld' AND \"Remedy\" IS NULL) OR (\"Outcome\" <> 'NotUpheld' AND \"Remedy\" IS NOT NULL)"));
        builder.HasKey(row => row.AppealId);
        builder.Property(row => row.Reason).HasMaxLength(Bounds.Reason);
        builder.HasOne<AppealTakeUpRecord>().WithOne().HasForeignKey<AppealDecisionRecord>(row => row.AppealId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.LeadId);
        builder.HasOne<OutgoingMail>().WithMany().HasForeignKey(row => row.MailId);
    }
}
