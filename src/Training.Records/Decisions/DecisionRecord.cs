using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Certification;

namespace Training.Records;

/// <summary>What a decision said.</summary>
public enum DecisionOutcome
{
    /// <summary>A period was opened.</summary>
    Granted,

    /// <summary>Not yet, with reasons.</summary>
    NotYet,

    /// <summary>Not yet, because a lead refused and wrote why; the reason stands last among the reasons.</summary>
    Refused,
}

/// <summary>One decision, append-only.</summary>
public sealed class DecisionRecord
{
    /// <summary>Made by the form or the job before the decision is kept, so that a repeat is recognised.</summary>
    public required Guid Id { get; init; }

    /// <summary>About whom.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Under which scheme.</summary>
    public required string SchemeId { get; init; }

    /// <summary>Snapshot whose rules decided.</summary>
    public required string CourseHash { get; init; }

    /// <summary>Which list of requirements was asked.</summary>
    public required Route Route { get; init; }

    /// <summary>What it said.</summary>
    public required DecisionOutcome Outcome { get; init; }

    /// <summary>The calendar day in <see cref="Zone"/>.</summary>
    public required DateOnly DecidedOn { get; init; }

    /// <summary>IANA time zone, fixed at the decision.</summary>
    public required string Zone { get; init; }

    /// <summary>The lead who decided; null where the published rule did.</summary>
    public required Guid? LeadId { get; init; }

    /// <summary>Why not yet, typed; stored as JSON. An empty list where granted.</summary>
    public required string Reasons { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }

    /// <summary>What it rests on, in the order of the requirements.</summary>
    public IList<DecisionEvidenceRecord> Evidence { get; init; } = [];

    /// <summary>Exceptions from the separation of hats that it relied on.</summary>
    public IList<DecisionExceptionRecord> Exceptions { get; init; } = [];
}

internal sealed class DecisionRecordConfiguration : IEntityTypeConfiguration<DecisionRecord>
{
    public void Configure(EntityTypeBuilder<DecisionRecord> builder)
    {
        builder.Property(decision => decision.Id).ValueGeneratedNever();
        builder.Property(decision => decision.SchemeId).HasMaxLength(Bounds.Id);
        builder.Property(decision => decision.CourseHash).HasMaxLength(Bounds.Hash);
        builder.Property(decision => decision.Zone).HasMaxLength(Bounds.Zone);
        builder.HasIndex(decision => new { decision.PersonId, decision.SchemeId, decision.DecidedOn });
        builder.HasOne<Person>().WithMany().HasForeignKey(decision => decision.PersonId);
        builder.HasOne<Person>().WithMany().HasForeignKey(decision => decision.LeadId);
        builder.HasOne<CourseSnapshotRecord>().WithMany().HasForeignKey(decision => decision.CourseHash);
        builder.HasMany(decision => decision.Evidence).WithOne().HasForeignKey(evidence => evidence.DecisionId);
        builder.HasMany(decision => decision.Exceptions).WithOne().HasForeignKey(exception => exception.DecisionId);
        builder.ToTable(table => table.HasCheckConstraint(
            "CK_Decision_NeverOneself", "\"LeadId\" IS NULL OR \"LeadId\" <> \"PersonId\""));
    }
}
