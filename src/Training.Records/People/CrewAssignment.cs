using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A person works in a crew; in one at a time.</summary>
public sealed class CrewAssignment : DatedRow
{
    /// <summary>In which.</summary>
    public required Guid CrewId { get; init; }
}

internal sealed class CrewAssignmentConfiguration : IEntityTypeConfiguration<CrewAssignment>
{
    public void Configure(EntityTypeBuilder<CrewAssignment> builder)
    {
        builder.ConfigureDates();
        builder.HasOne<Crew>().WithMany().HasForeignKey(assignment => assignment.CrewId);
        builder.HasIndex(assignment => new { assignment.PersonId, assignment.StartsOn }).IsUnique();
    }
}
