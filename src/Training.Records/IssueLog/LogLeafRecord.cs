using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Documents.IssueLog;

namespace Training.Records;

/// <summary>One leaf of the log of what was issued, with the hashes that it completed. Append-only; it says nothing about anybody.</summary>
public sealed class LogLeafRecord
{
    /// <summary>From 0, without gaps.</summary>
    public required long Index { get; init; }

    /// <summary>The leaf: <see cref="IssueEntry.LeafSize"/> bytes.</summary>
    public required byte[] Leaf { get; init; }

    /// <summary>Of the subtrees that it completed, its own first, one behind the other (<see cref="LogNode"/>).</summary>
    public required byte[] Hashes { get; init; }
}

internal sealed class LogLeafRecordConfiguration : IEntityTypeConfiguration<LogLeafRecord>
{
    // 2^40 leaves complete 41 subtrees at most.
    private const int MostHashes = 41 * LogHash.Size;

    public void Configure(EntityTypeBuilder<LogLeafRecord> builder)
    {
        // The key is the order: two writers who append at once meet on it, and one reads the edge again.
        builder.HasKey(leaf => leaf.Index);
        builder.Property(leaf => leaf.Index).ValueGeneratedNever();
        builder.Property(leaf => leaf.Leaf).HasMaxLength(IssueEntry.LeafSize);
        builder.Property(leaf => leaf.Hashes).HasMaxLength(MostHashes);
        builder.ToTable("LogLeaves", table => table.HasCheckConstraint("CK_LogLeaf_Index", "\"Index\" >= 0"));
    }
}
