using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>How a proposal was settled.</summary>
public enum ProposalEnd
{
    /// <summary>Another lead confirmed it; the withdrawal carries its id.</summary>
    Confirmed,

    /// <summary>Whoever proposed it took it back.</summary>
    TakenBack,
}

/// <summary>The end of a proposal; the proposal is its key: of a confirmation and a taking back at once, one gets through.</summary>
public sealed class WithdrawalProposalEndRecord
{
    /// <summary>Which proposal.</summary>
    public required Guid ProposalId { get; init; }

    /// <summary>How it ended.</summary>
    public required ProposalEnd End { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly EndedOn { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class WithdrawalProposalEndRecordConfiguration : IEntityTypeConfiguration<WithdrawalProposalEndRecord>
{
    public void Configure(EntityTypeBuilder<WithdrawalProposalEndRecord> builder)
    {
        builder.ToTable("WithdrawalProposalEnds");
        builder.HasKey(end => end.ProposalId);
        builder.HasOne<WithdrawalProposalRecord>().WithOne().HasForeignKey<WithdrawalProposalEndRecord>(end => end.ProposalId);
        builder.HasOne<Person>().WithMany().HasForeignKey(end => end.LeadId);
    }
}
