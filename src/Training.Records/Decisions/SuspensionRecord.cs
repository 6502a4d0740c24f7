using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A suspension by a named lead.</summary>
public sealed class SuspensionRecord
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Whose certification.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Under which scheme.</summary>
    public required string SchemeId { get; init; }

    /// <summary>The last period of the certification at that time: nothing is suspended that was never held.</summary>
    public required int PeriodNumber { get; init; }

    /// <summary>1 for the certification's first suspension, without gaps.</summary>
    public required int Number { get; init; }

    /// <summary>First day suspended.</summary>
    public required DateOnly StartsOn { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <summary>By when it is to be settled.</summary>
    public required DateOnly DeadlineOn { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class SuspensionRecordConfiguration : IEntityTypeConfiguration<SuspensionRecord>
{
    public void Configure(EntityTypeBuilder<SuspensionRecord> builder)
    {
        builder.Property(suspension => suspension.Id).ValueGeneratedNever();
        builder.Property(suspension => suspension.SchemeId).HasMaxLength(Bounds.Id);
        builder.Property(suspension => suspension.Reason).HasMaxLength(Bounds.Reason);
        // Two leads who suspend at once: one gets the number, the other is told that it is suspended already.
        builder.HasIndex(suspension => new { suspension.PersonId, suspension.SchemeId, suspension.Number }).IsUnique();
        builder.HasOne<PeriodRecord>().WithMany()
            .HasForeignKey(suspension => new { suspension.PersonId, suspension.SchemeId, suspension.PeriodNumber })
            .HasPrincipalKey(period => new { period.PersonId, period.SchemeId, period.Number });
        builder.HasOne<Person>().WithMany().HasForeignKey(suspension => suspension.LeadId);
        builder.ToTable(table => table.HasCheckConstraint("CK_Suspension_Deadline", "\"DeadlineOn\" >= \"StartsOn\""));
    }
}
