using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>People of a site who work together.</summary>
public sealed class Crew
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>Where.</summary>
    public required Guid SiteId { get; init; }

    /// <summary>Its name, unique on its site.</summary>
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
}

internal sealed class CrewConfiguration : IEntityTypeConfiguration<Crew>
{
    public void Configure(EntityTypeBuilder<Crew> builder)
    {
        builder.Property(crew => crew.Id).ValueGeneratedNever();
        builder.Property(crew => crew.Name).HasMaxLength(Bounds.Name);
        builder.Property(crew => crew.NameKey).HasMaxLength(Bounds.Name);
        builder.HasOne<Site>().WithMany().HasForeignKey(crew => crew.SiteId);
        builder.HasIndex(crew => new { crew.SiteId, crew.NameKey }).IsUnique();
    }
}
