using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>An exception from the separation of hats that a decision relied on, with the reason as it stood then.</summary>
public sealed class DecisionExceptionRecord
{
    /// <summary>Which decision.</summary>
    public required Guid DecisionId { get; init; }

    /// <summary>Which result.</summary>
    public required Guid ScoresheetResultId { get; init; }

    /// <summary>Who scored although they taught.</summary>
    public required Guid ScorerId { get; init; }

    /// <summary>The written reason.</summary>
    public required string Reason { get; init; }
}

internal sealed class DecisionExceptionRecordConfiguration : IEntityTypeConfiguration<DecisionExceptionRecord>
{
    public void Configure(EntityTypeBuilder<DecisionExceptionRecord> builder)
    {
        builder.ToTable("DecisionExceptions");
        builder.HasKey(exception => new { exception.DecisionId, exception.ScoresheetResultId });
        builder.Property(exception => exception.Reason).HasMaxLength(Bounds.Reason);
        builder.HasOne<ScoresheetResultRecord>().WithMany().HasForeignKey(exception => exception.ScoresheetResultId);
        builder.HasOne<Person>().WithMany().HasForeignKey(exception => exception.ScorerId);
    }
}
