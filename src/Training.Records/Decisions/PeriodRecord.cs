using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;

namespace Training.Records;

/// <summary>A period that a decision opened, with the terms of that day. Its decision is its key: one decision opens one period.</summary>
public sealed class PeriodRecord
{
    /// <summary>The decision that opened it.</summary>
    public required Guid DecisionId { get; init; }

    /// <summary>Whose.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Under which scheme.</summary>
    public required string SchemeId { get; init; }

    /// <summary>1 for the first, without gaps.</summary>
    public required int Number { get; init; }

    /// <summary>Day of the decision.</summary>
    public required DateOnly DecidedOn { get; init; }

    /// <summary>First day.</summary>
    public required DateOnly StartsOn { get; init; }

    /// <summary>Last day, included.</summary>
    public required DateOnly ExpiresOn { get; init; }

    /// <summary>Validity at the decision.</summary>
    public required Duration Validity { get; init; }

    /// <summary>Renewal window at the decision.</summary>
    public required Duration Window { get; init; }

    /// <summary>Grace at the decision.</summary>
    public required Duration Grace { get; init; }

    /// <summary>First day of the renewal window. A column of its own, so that no query counts months: engines clamp them differently.</summary>
    public DateOnly WindowOpensOn
    {
        get => Window.Before(ExpiresOn);
        private set => _ = value; // read back from the column, and the same: a fixed period implies it
    }

    /// <summary>Last day of grace; a column for the same reason.</summary>
    public DateOnly GraceEndsOn
    {
        get => Grace.After(ExpiresOn);
        private set => _ = value;
    }
}

internal sealed class PeriodRecordConfiguration : IEntityTypeConfiguration<PeriodRecord>
{
    public void Configure(EntityTypeBuilder<PeriodRecord> builder)
    {
        builder.HasKey(period => period.DecisionId);
        // Two decisions that read the same case cannot both open the next period. Never "one current": early renewals overlap.
        builder.HasAlternateKey(period => new { period.PersonId, period.SchemeId, period.Number });
        builder.Property(period => period.SchemeId).HasMaxLength(Bounds.Id);
        // Who is to be reminded is looked for by scheme and last day, in this order.
        builder.HasIndex(period => new { period.SchemeId, period.ExpiresOn, period.PersonId, period.Number });
        builder.HasOne<DecisionRecord>().WithOne().HasForeignKey<PeriodRecord>(period => period.DecisionId);
        builder.HasOne<Person>().WithMany().HasForeignKey(period => period.PersonId);
        builder.ToTable(table => table.HasCheckConstraint("CK_Period_Dates", "\"Number\" >= 1 AND \"ExpiresOn\" >= \"StartsOn\""));
    }
}
