using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A scoresheet no longer counts, as evidence or as a try. Who, when and why stand in the decision of its appeal; past decisions stay.</summary>
public sealed class ScoresheetSetAside
{
    /// <summary>Which sheet (the row, not the form).</summary>
    public required Guid ScoresheetId { get; init; }

    /// <summary>By which appeal.</summary>
    public required Guid AppealId { get; init; }
}

/// <summary>A sitting no longer counts; as <see cref="ScoresheetSetAside"/>.</summary>
public sealed class SittingSetAside
{
    /// <summary>Which sitting (the row, not the form).</summary>
    public required Guid SittingId { get; init; }

    /// <summary>By which appeal.</summary>
    public required Guid AppealId { get; init; }
}

/// <summary>A lead looked at what had rested on a result that was set aside, and wrote what they found; the appeal is its key.</summary>
public sealed class SetAsideLookRecord
{
    /// <summary>The appeal that set it aside.</summary>
    public required Guid AppealId { get; init; }

    /// <summary>The lead; never about themselves.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>What they found, and what they did.</summary>
    public required string Finding { get; init; }

    /// <summary>The day, in the provider's zone.</summary>
    public required DateOnly LookedOn { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class ScoresheetSetAsideConfiguration : IEntityTypeConfiguration<ScoresheetSetAside>
{
    public void Configure(EntityTypeBuilder<ScoresheetSetAside> builder)
    {
        builder.ToTable("ScoresheetSetAsides");
        builder.HasKey(row => row.ScoresheetId);
        builder.HasOne<ScoresheetRecord>().WithOne().HasForeignKey<ScoresheetSetAside>(row => row.ScoresheetId);
        builder.HasOne<AppealDecisionRecord>().WithOne().HasForeignKey<ScoresheetSetAside>(row => row.AppealId);
    }
}

internal sealed class SittingSetAsideConfiguration : IEntityTypeConfiguration<SittingSetAside>
{
    public void Configure(EntityTypeBuilder<SittingSetAside> builder)
    {
        builder.ToTable("SittingSetAsides");
        builder.HasKey(row => row.SittingId);
        builder.HasOne<SittingRecord>().WithOne().HasForeignKey<SittingSetAside>(row => row.SittingId);
        builder.HasOne<AppealDecisionRecord>().WithOne().HasForeignKey<SittingSetAside>(row => row.AppealId);
    }
}

internal sealed class SetAsideLookRecordConfiguration : IEntityTypeConfiguration<SetAsideLookRecord>
{
    public void Configure(EntityTypeBuilder<SetAsideLookRecord> builder)
    {
        builder.ToTable("SetAsideLooks");
        builder.HasKey(row => row.AppealId);
        builder.Property(row => row.Finding).HasMaxLength(Bounds.Reason);
        builder.HasOne<AppealDecisionRecord>().WithOne().HasForeignKey<SetAsideLookRecord>(row => row.AppealId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.LeadId);
    }
}
