using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A person works for an employer; at one employer never twice at once.</summary>
public sealed class Employment : DatedRow
{
    /// <summary>For whom.</summary>
    public required Guid EmployerId { get; init; }
}

internal sealed class EmploymentConfiguration : IEntityTypeConfiguration<Employment>
{
    public void Configure(EntityTypeBuilder<Employment> builder)
    {
        builder.ConfigureDates();
        builder.HasOne<Employer>().WithMany().HasForeignKey(employment => employment.EmployerId);
        builder.HasIndex(employment => new { employment.PersonId, employment.EmployerId, employment.StartsOn }).IsUnique();
    }
}
