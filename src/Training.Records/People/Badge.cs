using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A badge number of an employer. It never names a second person: rosters and evidence would point to the wrong one.</summary>
public sealed class Badge : DatedRow
{
    /// <summary>Whose number it is.</summary>
    public required Guid EmployerId { get; init; }

    /// <summary>As printed on the badge.</summary>
    public required string Number
    {
        get;
        init
        {
            field = value;
            NumberKey = KeyText.Of(value);
        }
    }

    /// <summary>What the number is compared by.</summary>
    public string NumberKey { get; private set; } = "";
}

internal sealed class BadgeConfiguration : IEntityTypeConfiguration<Badge>
{
    public void Configure(EntityTypeBuilder<Badge> builder)
    {
        builder.ConfigureDates();
        builder.Property(badge => badge.Number).HasMaxLength(Bounds.Number);
        builder.Property(badge => badge.NumberKey).HasMaxLength(Bounds.Number);
        builder.HasOne<Employer>().WithMany().HasForeignKey(badge => badge.EmployerId);
        builder.HasIndex(badge => new { badge.EmployerId, badge.NumberKey }).IsUnique();
        builder.HasIndex(badge => new { badge.PersonId, badge.EmployerId, badge.StartsOn }).IsUnique();
    }
}
