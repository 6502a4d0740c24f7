using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>
/// From a day on, a site (or a crew or shift of it) needs so many current handlers under a scheme, as somebody said. Nothing is overwritten: a later
/// row for the same first day takes the place of the earlier one.
/// </summary>
public sealed class CoverNeed
{
    /// <summary>Made by the form: the same twice is one row.</summary>
    public required Guid Id { get; init; }

    /// <summary>Where.</summary>
    public required Guid SiteId { get; init; }

    /// <summary>Which crew or shift of the site; null for the whole site.</summary>
    public Guid? CrewId { get; init; }

    /// <summary>Under which scheme.</summary>
    public required string SchemeId { get; init; }

    /// <summary>How many, 0 to <see cref="Most"/>; 0 ends the need.</summary>
    public required int Handlers { get; init; }

    /// <summary>First day, included.</summary>
    public required DateOnly StartsOn { get; init; }

    /// <summary>Who said so: who represents the employer, or a lead.</summary>
    public required Guid SetById { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }

    /// <summary>Most handlers that anybody may ask for.</summary>
    public const int Most = 500;
}

internal sealed class CoverNeedConfiguration : IEntityTypeConfiguration<CoverNeed>
{
    public void Configure(EntityTypeBuilder<CoverNeed> builder)
    {
        builder.Property(need => need.Id).ValueGeneratedNever();
        builder.Property(need => need.SchemeId).HasMaxLength(Bounds.Id);
        builder.HasOne<Site>().WithMany().HasForeignKey(need => need.SiteId);
        builder.HasOne<Crew>().WithMany().HasForeignKey(need => need.CrewId);
        builder.HasOne<Person>().WithMany().HasForeignKey(need => need.SetById);
        builder.HasIndex(need => new { need.SiteId, need.StartsOn });
        builder.ToTable(table => table.HasCheckConstraint("CK_CoverNeed_Handlers", "\"Handlers\" >= 0 AND \"Handlers\" <= 500"));
    }
}
