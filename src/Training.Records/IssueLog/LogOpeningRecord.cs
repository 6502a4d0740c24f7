using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Documents.IssueLog;

namespace Training.Records;

/// <summary>What a leaf is about. Deleting this row, salt and all, leaves the log whole and the leaf without a meaning.</summary>
public sealed class LogOpeningRecord
{
    /// <summary>Of which leaf.</summary>
    public required long LeafIndex { get; init; }

    /// <summary>About which paper.</summary>
    public required Guid PaperId { get; init; }

    /// <summary>What happened to it.</summary>
    public required IssueEvent Event { get; init; }

    /// <summary>When that was entered, UTC.</summary>
    public required DateTimeOffset HappenedAt { get; init; }

    /// <summary>What keeps the leaf from being guessed: <see cref="IssueEntry.SaltSize"/> random bytes.</summary>
    public required byte[] Salt { get; init; }
}

internal sealed class LogOpeningRecordConfiguration : IEntityTypeConfiguration<LogOpeningRecord>
{
    public void Configure(EntityTypeBuilder<LogOpeningRecord> builder)
    {
        builder.HasKey(opening => opening.LeafIndex);
        builder.Property(opening => opening.LeafIndex).ValueGeneratedNever();
        builder.Property(opening => opening.Salt).HasMaxLength(IssueEntry.SaltSize);
        builder.HasIndex(opening => opening.PaperId);
        builder.HasOne<LogLeafRecord>().WithOne().HasForeignKey<LogOpeningRecord>(opening => opening.LeafIndex);
        builder.HasOne<PaperRecord>().WithMany().HasForeignKey(opening => opening.PaperId);
        builder.ToTable("LogOpenings");
    }
}
