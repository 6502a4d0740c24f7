using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A lead took an appeal up; the appeal is its key: of two at once, one does.</summary>
public sealed class AppealTakeUpRecord
{
    /// <summary>Which appeal.</summary>
    public required Guid AppealId { get; init; }

    /// <summary>The lead; never the appellant.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>The day, in the zone of the appeal.</summary>
    public required DateOnly TakenUpOn { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }

    /// <summary>The letter that says so; null where no mail reaches the appellant.</summary>
    public Guid? MailId { get; init; }
}

internal sealed class AppealTakeUpRecordConfiguration : IEntityTypeConfiguration<AppealTakeUpRecord>
{
    public void Configure(EntityTypeBuilder<AppealTakeUpRecord> builder)
    {
        builder.ToTable("AppealTakeUps");
        builder.HasKey(row => row.AppealId);
        builder.HasOne<AppealRecord>().WithOne().HasForeignKey<AppealTakeUpRecord>(row => row.AppealId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.LeadId);
        builder.HasOne<OutgoingMail>().WithMany().HasForeignKey(row => row.MailId);
    }
}
