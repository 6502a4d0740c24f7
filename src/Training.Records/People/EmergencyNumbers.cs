using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>Whom to call from a site, as somebody checked it on a day. The newest row serves; nothing is overwritten.</summary>
public sealed class EmergencyNumbers
{
    /// <summary>Made by the form: the same twice is one row.</summary>
    public required Guid Id { get; init; }

    /// <summary>Which site.</summary>
    public required Guid SiteId { get; init; }

    /// <summary>Emergency services, called first.</summary>
    public required string EmergencyServices { get; init; }

    /// <summary>Poison control.</summary>
    public required string PoisonControl { get; init; }

    /// <summary>Who on site must know at once: name or role, with telephone or radio channel.</summary>
    public required string OnSite { get; init; }

    /// <summary>How to call where the telephone has no signal.</summary>
    public required string WithoutSignal { get; init; }

    /// <summary>Day of the check, in the site's zone.</summary>
    public required DateOnly CheckedOn { get; init; }

    /// <summary>The lead who checked.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class EmergencyNumbersConfiguration : IEntityTypeConfiguration<EmergencyNumbers>
{
    public void Configure(EntityTypeBuilder<EmergencyNumbers> builder)
    {
        builder.ToTable("EmergencyNumbers");
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.EmergencyServices).HasMaxLength(Bounds.Number);
        builder.Property(row => row.PoisonControl).HasMaxLength(Bounds.Number);
        builder.Property(row => row.OnSite).HasMaxLength(Bounds.Name);
        builder.Property(row => row.WithoutSignal).HasMaxLength(Bounds.Conditions);
        builder.HasOne<Site>().WithMany().HasForeignKey(row => row.SiteId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.LeadId);
        builder.HasIndex(row => new { row.SiteId, row.KeptAt });
    }
}
