using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A lead proposes that a certification be withdrawn. By itself it changes nothing: another lead confirms it.</summary>
public sealed class WithdrawalProposalRecord
{
    /// <summary>Made by the form; the withdrawal that confirms it carries the same id.</summary>
    public required Guid Id { get; init; }

    /// <summary>Whose certification.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Under which scheme.</summary>
    public required string SchemeId { get; init; }

    /// <summary>The last period of the certification at that time; the proposal is about no later one.</summary>
    public required int PeriodNumber { get; init; }

    /// <summary>1 for the first proposal about that period, without gaps.</summary>
    public required int Number { get; init; }

    /// <summary>Day of the proposal.</summary>
    public required DateOnly ProposedOn { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class WithdrawalProposalRecordConfiguration : IEntityTypeConfiguration<WithdrawalProposalRecord>
{
    public void Configure(EntityTypeBuilder<WithdrawalProposalRecord> builder)
    {
        builder.Property(proposal => proposal.Id).ValueGeneratedNever();
        builder.Property(proposal => proposal.SchemeId).HasMaxLength(Bounds.Id);
        builder.Property(proposal => proposal.Reason).HasMaxLength(Bounds.Reason);
        // One is open at a time: the next number is given only once the last proposal was settled, and of two at once one gets it.
        builder.HasIndex(proposal => new { proposal.PersonId, proposal.SchemeId, proposal.PeriodNumber, proposal.Number }).IsUnique();
        builder.HasOne<PeriodRecord>().WithMany()
            .HasForeignKey(proposal => new { proposal.PersonId, proposal.SchemeId, proposal.PeriodNumber })
            .HasPrincipalKey(period => new { period.PersonId, period.SchemeId, period.Number });
        builder.HasOne<Person>().WithMany().HasForeignKey(proposal => proposal.LeadId);
        builder.ToTable("WithdrawalProposals", table => table.HasCheckConstraint("CK_WithdrawalProposal_NeverOneself", "\"LeadId\" <> \"PersonId\""));
    }
}
