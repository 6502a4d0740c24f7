using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>One paper that was issued.</summary>
public sealed class PaperRecord
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>The decision whose period it shows.</summary>
    public required Guid DecisionId { get; init; }

    /// <summary>1 for the first; a correction is a revision with a serial of its own.</summary>
    public required int Revision { get; init; }

    /// <summary>What a stranger types or scans, upper-case.</summary>
    public required string Serial { get; init; }

    /// <summary>The row that holds the name as printed.</summary>
    public required Guid PersonNameId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset IssuedAt { get; init; }
}

internal sealed class PaperRecordConfiguration : IEntityTypeConfiguration<PaperRecord>
{
    public void Configure(EntityTypeBuilder<PaperRecord> builder)
    {
        builder.Property(paper => paper.Id).ValueGeneratedNever();
        builder.Property(paper => paper.Serial).HasMaxLength(Bounds.Number);
        builder.HasIndex(paper => paper.Serial).IsUnique();
        // This index, not a check in code, forbids the second certificate.
        builder.HasIndex(paper => new { paper.DecisionId, paper.Revision }).IsUnique();
        // To the period, not the decision: what was not granted has no paper.
        builder.HasOne<PeriodRecord>().WithMany().HasForeignKey(paper => paper.DecisionId);
        builder.HasOne<PersonName>().WithMany().HasForeignKey(paper => paper.PersonNameId);
        builder.ToTable(table => table.HasCheckConstraint("CK_Paper_Revision", "\"Revision\" >= 1"));
    }
}
