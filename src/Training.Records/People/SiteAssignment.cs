using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A person works on a site; on one at a time, since zone and region follow it.</summary>
public sealed class SiteAssignment : DatedRow
{
    /// <summary>Where.</summary>
    public required Guid SiteId { get; init; }
}

internal sealed class SiteAssignmentConfiguration : IEntityTypeConfiguration<SiteAssignment>
{
    public void Configure(EntityTypeBuilder<SiteAssignment> builder)
    {
        builder.ConfigureDates();
        builder.HasOne<Site>().WithMany().HasForeignKey(assignment => assignment.SiteId);
        builder.HasIndex(assignment => new { assignment.PersonId, assignment.StartsOn }).IsUnique();
    }
}
