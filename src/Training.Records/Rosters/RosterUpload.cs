using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A roster file as an employer sent it. It changes nobody until it is applied, once.</summary>
public sealed class RosterUpload : IVersioned
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>Made by the form that sent the file: the same file from the same form is one upload.</summary>
    public required Guid FormId { get; init; }

    /// <summary>Whose roster.</summary>
    public required Guid EmployerId { get; init; }

    /// <summary>Who sent it.</summary>
    public required Guid SentById { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset SentAt { get; init; }

    /// <summary>As the sender's machine names it.</summary>
    public required string FileName { get; init; }

    /// <summary>The file, byte for byte.</summary>
    public required byte[] Content { get; init; }

    /// <summary>SHA-256 of the content, lower-case hex.</summary>
    public required string Sha256 { get; init; }

    /// <summary>Who applied it; null until then.</summary>
    public Guid? AppliedById { get; set; }

    /// <summary>When, UTC; null until then.</summary>
    public DateTimeOffset? AppliedAt { get; set; }

    /// <summary>How many people were new; 0 until it is applied.</summary>
    public int NewCount { get; set; }

    /// <summary>How many came back.</summary>
    public int ReturningCount { get; set; }

    /// <summary>How many changed.</summary>
    public int ChangedCount { get; set; }

    /// <summary>How many were not in the file and left with it.</summary>
    public int LeavingCount { get; set; }

    /// <inheritdoc/>
    public int Version { get; set; }
}

internal sealed class RosterUploadConfiguration : IEntityTypeConfiguration<RosterUpload>
{
    public void Configure(EntityTypeBuilder<RosterUpload> builder)
    {
        builder.ToTable("RosterUploads");
        builder.Property(upload => upload.Id).ValueGeneratedNever();
        builder.Property(upload => upload.FileName).HasMaxLength(Bounds.Name);
        builder.Property(upload => upload.Sha256).HasMaxLength(Bounds.Hash);
        builder.Property(upload => upload.Version).IsConcurrencyToken();
        builder.HasOne<Employer>().WithMany().HasForeignKey(upload => upload.EmployerId);
        builder.HasOne<Person>().WithMany().HasForeignKey(upload => upload.SentById);
        builder.HasOne<Person>().WithMany().HasForeignKey(upload => upload.AppliedById);
        // The index is the rule: a form that is sent twice keeps its file once, another file from the same page is another upload.
        builder.HasIndex(upload => new { upload.EmployerId, upload.FormId, upload.Sha256 }).IsUnique();
    }
}
