using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>
/// What the people of a site need after a bite, as a lead checked it on a day: where it is, the way in, hospitals. Whom to call stands in
/// <see cref="Records.EmergencyNumbers"/>, kept with it. The newest row serves; nothing is overwritten.
/// </summary>
public sealed class BitePlan
{
    /// <summary>Made by the form: the same twice is one row.</summary>
    public required Guid Id { get; init; }

    /// <summary>Which site.</summary>
    public required Guid SiteId { get; init; }

    /// <summary>Where the ambulance is sent: degrees north on WGS 84.</summary>
    public required decimal Latitude { get; init; }

    /// <summary>Degrees east on WGS 84.</summary>
    public required decimal Longitude { get; init; }

    /// <summary>What the ambulance is told: road, gate, key, who meets it.</summary>
    public required string AccessWords { get; init; }

    /// <summary>In the order in which they were entered; emergency services decide where to go.</summary>
    public required IReadOnlyList<PlannedHospital> Hospitals { get; init; }

    /// <summary>Day of the check, in the site's zone.</summary>
    public required DateOnly CheckedOn { get; init; }

    /// <summary>Through which day the check holds.</summary>
    public required DateOnly ReviewOn { get; init; }

    /// <summary>The lead who checked.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

/// <summary>A hospital of a bite plan.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Contact">Address and telephone, one line.</param>
/// <param name="DriveMinutes">As somebody entered it.</param>
/// <param name="Antivenom">What somebody said of its antivenom; null where nobody asked.</param>
public sealed record PlannedHospital(string Name, string Contact, int DriveMinutes, ToldOfAntivenom? Antivenom);

/// <summary>What somebody said of a stock of antivenom: hearsay of that day.</summary>
/// <param name="Said">What was said.</param>
/// <param name="ToldBy">Who said it.</param>
/// <param name="ToldOn">When.</param>
public sealed record ToldOfAntivenom(string Said, string ToldBy, DateOnly ToldOn);

internal sealed class BitePlanConfiguration : IEntityTypeConfiguration<BitePlan>
{
    public void Configure(EntityTypeBuilder<BitePlan> builder)
    {
        builder.ToTable("BitePlans");
        builder.Property(plan => plan.Id).ValueGeneratedNever();
        builder.Property(plan => plan.Latitude).HasConversion<NumberTextConverter>().HasMaxLength(Bounds.Number);
        builder.Property(plan => plan.Longitude).HasConversion<NumberTextConverter>().HasMaxLength(Bounds.Number);
        builder.Property(plan => plan.AccessWords).HasMaxLength(Bounds.Conditions);
        // Stored JSON: a page has room for few.
        builder.Property(plan => plan.Hospitals).HasConversion(new PlannedHospitalsConverter(), new PlannedHospitalsComparer());
        builder.HasOne<Site>().WithMany().HasForeignKey(plan => plan.SiteId);
        builder.HasOne<Person>().WithMany().HasForeignKey(plan => plan.LeadId);
        builder.HasIndex(plan => new { plan.SiteId, plan.KeptAt });
    }
}
