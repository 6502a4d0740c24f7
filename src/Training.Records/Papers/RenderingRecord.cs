using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;

namespace Training.Records;

/// <summary>What a paper was rendered as.</summary>
public enum RenderingFormat
{
    /// <summary>The certificate page as PDF.</summary>
    CertificatePdf,
}

/// <summary>The file of a paper in one language and format. Its bytes cannot be made again alike, so they are kept.</summary>
public sealed class RenderingRecord
{
    /// <summary>Of which paper.</summary>
    public required Guid PaperId { get; init; }

    /// <summary>In which language.</summary>
    public required Language Language { get; init; }

    /// <summary>As what.</summary>
    public required RenderingFormat Format { get; init; }

    /// <summary>The file.</summary>
    public required byte[] Bytes { get; init; }

    /// <summary>Of the bytes, lower-case hex.</summary>
    public required string Sha256 { get; init; }
}

internal sealed class RenderingRecordConfiguration : IEntityTypeConfiguration<RenderingRecord>
{
    public void Configure(EntityTypeBuilder<RenderingRecord> builder)
    {
        // The key is the rule: one file per paper, language and format.
        builder.HasKey(rendering => new { rendering.PaperId, rendering.Language, rendering.Format });
        builder.Property(rendering => rendering.Sha256).HasMaxLength(Bounds.Hash);
        builder.HasIndex(rendering => rendering.Sha256);
        builder.HasOne<PaperRecord>().WithMany().HasForeignKey(rendering => rendering.PaperId);
    }
}
