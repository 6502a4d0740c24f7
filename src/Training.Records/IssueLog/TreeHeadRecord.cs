using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Documents.IssueLog;

namespace Training.Records;

/// <summary>A head of the log that the provider signed. Append-only: whoever holds one finds it here for ever.</summary>
public sealed class TreeHeadRecord
{
    /// <summary>Leaves.</summary>
    public required long Size { get; init; }

    /// <summary>When, UTC.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The tree's root over them.</summary>
    public required byte[] Root { get; init; }

    /// <summary>ES256: r and s, 32 bytes each.</summary>
    public required byte[] Signature { get; init; }

    /// <summary>Names the key that signed.</summary>
    public required string KeyId { get; init; }

    /// <summary>As strangers check it.</summary>
    public SignedTreeHead Read() => new(new(Size, new(Root), At), Signature);
}

internal sealed class TreeHeadRecordConfiguration : IEntityTypeConfiguration<TreeHeadRecord>
{
    private const int SignatureSize = 64;

    public void Configure(EntityTypeBuilder<TreeHeadRecord> builder)
    {
        builder.HasKey(head => new { head.Size, head.At });
        builder.Property(head => head.Root).HasMaxLength(LogHash.Size);
        builder.Property(head => head.Signature).HasMaxLength(SignatureSize);
        builder.Property(head => head.KeyId).HasMaxLength(Bounds.Hash);
        builder.HasIndex(head => head.At);
        builder.ToTable("TreeHeads");
    }
}
