using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>What the machine-readable forms of a paper need besides it. Drawn once, never reused.</summary>
public sealed class PaperCredential
{
    /// <summary>Of which paper.</summary>
    public required Guid PaperId { get; init; }

    /// <summary>Its place in the status lists.</summary>
    public required int StatusIndex { get; init; }

    /// <summary>Names the holder in this credential alone.</summary>
    public required Guid SubjectId { get; init; }
}

internal sealed class PaperCredentialConfiguration : IEntityTypeConfiguration<PaperCredential>
{
    public void Configure(EntityTypeBuilder<PaperCredential> builder)
    {
        builder.HasKey(credential => credential.PaperId);
        // A place that two papers shared would withdraw both.
        builder.HasIndex(credential => credential.StatusIndex).IsUnique();
        builder.HasOne<PaperRecord>().WithOne().HasForeignKey<PaperCredential>(credential => credential.PaperId);
        builder.ToTable("PaperCredentials", table => table.HasCheckConstraint("CK_PaperCredential_StatusIndex", "\"StatusIndex\" >= 0"));
    }
}
