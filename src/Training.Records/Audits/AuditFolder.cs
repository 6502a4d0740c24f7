using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;

namespace Training.Records;

/// <summary>A folder that somebody made for an auditor: what it covers, and the hash by which it is known again. Append-only; the files are not kept.</summary>
public sealed class AuditFolder
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Who made it.</summary>
    public required Guid MadeById { get; init; }

    /// <summary>When, UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>Whether it has what only leads may read: questions, answers and keys.</summary>
    public required bool IsFull { get; init; }

    /// <summary>Of whose people; null for all.</summary>
    public required Guid? EmployerId { get; init; }

    /// <summary>Of which site; null for all.</summary>
    public required Guid? SiteId { get; init; }

    /// <summary>About whom alone; null for all.</summary>
    public required Guid? PersonId { get; init; }

    /// <summary>First day that it covers.</summary>
    public required DateOnly StartsOn { get; init; }

    /// <summary>Last day that it covers.</summary>
    public required DateOnly EndsOn { get; init; }

    /// <summary>In which language its pages are.</summary>
    public required Language Language { get; init; }

    /// <summary>People in it.</summary>
    public required int People { get; init; }

    /// <summary>Files in it that its index names.</summary>
    public required int Files { get; init; }

    /// <summary>Their bytes.</summary>
    public required long Bytes { get; init; }

    /// <summary>SHA-256 of its <c>index.csv</c>, which has the hash of every other file; lower-case hex.</summary>
    public required string IndexSha256 { get; init; }
}

internal sealed class AuditFolderConfiguration : IEntityTypeConfiguration<AuditFolder>
{
    public void Configure(EntityTypeBuilder<AuditFolder> builder)
    {
        builder.ToTable("AuditFolders");
        builder.Property(folder => folder.Id).ValueGeneratedNever();
        builder.Property(folder => folder.IndexSha256).HasMaxLength(Bounds.Hash);
        builder.HasIndex(folder => folder.MadeAt);
        builder.HasOne<Person>().WithMany().HasForeignKey(folder => folder.MadeById);
        builder.HasOne<Employer>().WithMany().HasForeignKey(folder => folder.EmployerId);
        builder.HasOne<Site>().WithMany().HasForeignKey(folder => folder.SiteId);
        builder.HasOne<Person>().WithMany().HasForeignKey(folder => folder.PersonId);
    }
}
