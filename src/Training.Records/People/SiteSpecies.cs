using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>
/// Which snakes live at a site, as a lead said on a day: what is taught and asked there follows it. The newest row serves; nothing is
/// overwritten, so that one can see which list a quiz of that time was drawn under.
/// </summary>
public sealed class SiteSpecies
{
    /// <summary>Made by the form: the same twice is one row.</summary>
    public required Guid Id { get; init; }

    /// <summary>Which site.</summary>
    public required Guid SiteId { get; init; }

    /// <summary>Ids of species sheets; empty: the lead took the list back, and everything is taught and asked again.</summary>
    public required IReadOnlyList<string> SpeciesIds { get; init; }

    /// <summary>Who said so.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class SiteSpeciesConfiguration : IEntityTypeConfiguration<SiteSpecies>
{
    public void Configure(EntityTypeBuilder<SiteSpecies> builder)
    {
        builder.ToTable("SiteSpecies");
        builder.Property(row => row.Id).ValueGeneratedNever();
        // Stored JSON: its length follows from the number of sheets.
        builder.Property(row => row.SpeciesIds).HasConversion(new TextListConverter(), new TextListComparer());
        builder.HasOne<Site>().WithMany().HasForeignKey(row => row.SiteId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.LeadId);
        builder.HasIndex(row => new { row.SiteId, row.KeptAt });
    }
}
