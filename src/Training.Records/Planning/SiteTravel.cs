using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>How long it takes between two sites of one employer, as a lead said. Nothing is overwritten: of the rows of a pair, the one kept last serves.</summary>
public sealed class SiteTravel
{
    /// <summary>Made by the form: the same twice is one row.</summary>
    public required Guid Id { get; init; }

    /// <summary>One site.</summary>
    public required Guid SiteId { get; init; }

    /// <summary>The other.</summary>
    public required Guid OtherSiteId { get; init; }

    /// <summary>One way, 0 to <see cref="MostMinutes"/>.</summary>
    public required int Minutes { get; init; }

    /// <summary>Who said so.</summary>
    public required Guid SetById { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }

    /// <summary>Longest way that is kept: a day.</summary>
    public const int MostMinutes = 1440;
}

internal sealed class SiteTravelConfiguration : IEntityTypeConfiguration<SiteTravel>
{
    public void Configure(EntityTypeBuilder<SiteTravel> builder)
    {
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.HasOne<Site>().WithMany().HasForeignKey(row => row.SiteId);
        builder.HasOne<Site>().WithMany().HasForeignKey(row => row.OtherSiteId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.SetById);
        builder.ToTable(table => table.HasCheckConstraint("CK_SiteTravel_Minutes", "\"Minutes\" >= 0 AND \"Minutes\" <= 1440"));
    }
}
