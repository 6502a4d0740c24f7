using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A person sees an employer's people for that employer: its site safety lead.</summary>
public sealed class Representative : DatedRow
{
    /// <summary>For whom.</summary>
    public required Guid EmployerId { get; init; }
}

internal sealed class RepresentativeConfiguration : IEntityTypeConfiguration<Representative>
{
    public void Configure(EntityTypeBuilder<Representative> builder)
    {
        builder.ToTable("Representatives");
        builder.ConfigureDates();
        builder.HasOne<Employer>().WithMany().HasForeignKey(representative => representative.EmployerId);
        builder.HasIndex(representative => new { representative.PersonId, representative.EmployerId, representative.StartsOn }).IsUnique();
    }
}
