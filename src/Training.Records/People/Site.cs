using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A place where an employer's people work.</summary>
public sealed class Site
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>Whose.</summary>
    public required Guid EmployerId { get; init; }

    /// <summary>Its name, unique with its employer.</summary>
    public required string Name
    {
        get;
        init
        {
            field = value;
            NameKey = KeyText.Of(value);
        }
    }

    /// <summary>What the name is compared by.</summary>
    public string NameKey { get; private set; } = "";

    /// <summary>IANA time zone, such as <c>America/Phoenix</c>. Decisions keep the zone they were made in.</summary>
    public required string Zone { get; init; }

    /// <summary>Region of its guidance, such as <c>US</c>.</summary>
    public required string Region { get; init; }
}

internal sealed class SiteConfiguration : IEntityTypeConfiguration<Site>
{
    public void Configure(EntityTypeBuilder<Site> builder)
    {
        builder.Property(site => site.Id).ValueGeneratedNever();
        builder.Property(site => site.Name).HasMaxLength(Bounds.Name);
        builder.Property(site => site.NameKey).HasMaxLength(Bounds.Name);
        builder.Property(site => site.Zone).HasMaxLength(Bounds.Zone);
        builder.Property(site => site.Region).HasMaxLength(Bounds.Zone);
        builder.HasOne<Employer>().WithMany().HasForeignKey(site => site.EmployerId);
        builder.HasIndex(site => new { site.EmployerId, site.NameKey }).IsUnique();
    }
}
