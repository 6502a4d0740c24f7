using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A withdrawal by two leads.</summary>
public sealed class WithdrawalRecord
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Whose certification.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Under which scheme.</summary>
    public required string SchemeId { get; init; }

    /// <summary>The last period of the certification at that time; a withdrawal counts for periods up to it.</summary>
    public required int PeriodNumber { get; init; }

    /// <summary>First day withdrawn.</summary>
    public required DateOnly WithdrawnOn { get; init; }

    /// <summary>The lead who proposed it.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>Another lead.</summary>
    public required Guid ConfirmedById { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class WithdrawalRecordConfiguration : IEntityTypeConfiguration<WithdrawalRecord>
{
    public void Configure(EntityTypeBuilder<WithdrawalRecord> builder)
    {
        builder.Property(withdrawal => withdrawal.Id).ValueGeneratedNever();
        builder.Property(withdrawal => withdrawal.SchemeId).HasMaxLength(Bounds.Id);
        builder.Property(withdrawal => withdrawal.Reason).HasMaxLength(Bounds.Reason);
        // A certification is withdrawn once; a later grant opens a later period.
        builder.HasIndex(withdrawal => new { withdrawal.PersonId, withdrawal.SchemeId, withdrawal.PeriodNumber }).IsUnique();
        builder.HasOne<PeriodRecord>().WithMany()
            .HasForeignKey(withdrawal => new { withdrawal.PersonId, withdrawal.SchemeId, withdrawal.PeriodNumber })
            .HasPrincipalKey(period => new { period.PersonId, period.SchemeId, period.Number });
        builder.HasOne<Person>().WithMany().HasForeignKey(withdrawal => withdrawal.LeadId);
        builder.HasOne<Person>().WithMany().HasForeignKey(withdrawal => withdrawal.ConfirmedById);
        builder.ToTable(table => table.HasCheckConstraint("CK_Withdrawal_TwoLeads", "\"LeadId\" <> \"ConfirmedById\""));
    }
}
