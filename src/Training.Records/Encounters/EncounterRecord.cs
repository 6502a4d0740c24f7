using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Certification;

namespace Training.Records;

/// <summary>A meeting with a snake at work, as somebody reported it. Never changed: what is to be said later is an <see cref="EncounterAddition"/>.</summary>
public sealed class EncounterRecord
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Where.</summary>
    public required Guid SiteId { get; init; }

    /// <summary>Who reported it; shown to leads alone.</summary>
    public required Guid ReporterId { get; init; }

    /// <summary>What it came to.</summary>
    public required EncounterKind Kind { get; init; }

    /// <summary>The day, in the zone of the site.</summary>
    public required DateOnly MetOn { get; init; }

    /// <summary>The time of day there; null where it is not known.</summary>
    public required TimeOnly? MetAt { get; init; }

    /// <summary>The place on the site, in words.</summary>
    public required string Place { get; init; }

    /// <summary>Degrees north, WGS 84; null where no coordinates were given.</summary>
    public required decimal? Latitude { get; init; }

    /// <summary>Degrees east, WGS 84; null with the latitude.</summary>
    public required decimal? Longitude { get; init; }

    /// <summary>A species sheet; null: not known.</summary>
    public required string? SpeciesId { get; init; }

    /// <summary>What was done; empty where nothing was said.</summary>
    public required string Done { get; init; }

    /// <summary>Who handled the snake.</summary>
    public required EncounterHandling Handling { get; init; }

    /// <summary>Whoever handled it, where they are named; null otherwise.</summary>
    public required Guid? HandlerId { get; init; }

    /// <summary>What is still to be done; empty for nothing.</summary>
    public required string FollowUp { get; init; }

    /// <summary>A course that should be looked at after this; null for none.</summary>
    public required string? CourseId { get; init; }

    /// <summary>The day on which it became known, in the zone of the site.</summary>
    public required DateOnly ReportedOn { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

/// <summary>Who handled a snake that was met.</summary>
public enum EncounterHandling
{
    /// <summary>Nobody.</summary>
    Nobody,

    /// <summary>Somebody of the site, who is named.</summary>
    Named,

    /// <summary>Somebody else.</summary>
    Other,
}

/// <summary>What was written down about a snake that was moved. All of it is optional.</summary>
public sealed class RelocationRecord
{
    /// <summary>Of which encounter.</summary>
    public required Guid EncounterId { get; init; }

    /// <summary>How far it was moved, metres; 0–100,000.</summary>
    public required int? DistanceMetres { get; init; }

    /// <summary>Tools used, in words; empty where nothing was said.</summary>
    public required string Tools { get; init; }

    /// <summary>The container's number or words; empty where nothing was said.</summary>
    public required string Container { get; init; }

    /// <summary>Minutes in the container; 0–1,440.</summary>
    public required int? MinutesHeld { get; init; }

    /// <summary>Degrees Celsius; −40 to 60.</summary>
    public required int? AirTemperature { get; init; }

    /// <summary>Cover at the place of release, in words; empty where nothing was said.</summary>
    public required string ReleaseCover { get; init; }

    /// <summary>Number of the permit; empty where nothing was said.</summary>
    public required string PermitNumber { get; init; }
}

/// <summary>Something said later about an encounter: what was wrong in the report, or what came of it. Append-only.</summary>
public sealed class EncounterAddition
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>About which.</summary>
    public required Guid EncounterId { get; init; }

    /// <summary>Who said it.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>In words.</summary>
    public required string Words { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

/// <summary>A lead looked at what an encounter asks for beyond its review: a species that is not on the site's list, a course.</summary>
public sealed class EncounterLook
{
    /// <summary>At which; once.</summary>
    public required Guid EncounterId { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>On which day.</summary>
    public required DateOnly LookedOn { get; init; }

    /// <summary>What they found and did.</summary>
    public required string Words { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class EncounterRecordConfiguration : IEntityTypeConfiguration<EncounterRecord>
{
    public void Configure(EntityTypeBuilder<EncounterRecord> builder)
    {
        builder.ToTable("Encounters", table => table.HasCheckConstraint(
            "CK_Encounter_Handler", "(\"Handling\" = 'Named' AND \"HandlerId\" IS NOT NULL) OR (\"Handling\" <> 'Named' AND \"HandlerId\" IS NULL)"));
        builder.Property(encounter => encounter.Id).ValueGeneratedNever();
        builder.Property(encounter => encounter.Place).HasMaxLength(Bounds.Conditions);
        builder.Property(encounter => encounter.Latitude).HasPrecision(8, 5);
        builder.Property(encounter => encounter.Longitude).HasPrecision(8, 5);
        builder.Property(encounter => encounter.SpeciesId).HasMaxLength(Bounds.Id);
        builder.Property(encounter => encounter.Done).HasMaxLength(Bounds.Reason);
        builder.Property(encounter => encounter.FollowUp).HasMaxLength(Bounds.Reason);
        builder.Property(encounter => encounter.CourseId).HasMaxLength(Bounds.Id);
        builder.HasOne<Site>().WithMany().HasForeignKey(encounter => encounter.SiteId);
        builder.HasOne<Person>().WithMany().HasForeignKey(encounter => encounter.ReporterId);
        builder.HasOne<Person>().WithMany().HasForeignKey(encounter => encounter.HandlerId);
        builder.HasIndex(encounter => new { encounter.SiteId, encounter.MetOn });
        builder.HasIndex(encounter => encounter.MetOn);
    }
}

internal sealed class RelocationRecordConfiguration : IEntityTypeConfiguration<RelocationRecord>
{
    public void Configure(EntityTypeBuilder<RelocationRecord> builder)
    {
        builder.ToTable("Relocations");
        builder.HasKey(relocation => relocation.EncounterId);
        builder.Property(relocation => relocation.Tools).HasMaxLength(Bounds.Conditions);
        builder.Property(relocation => relocation.Container).HasMaxLength(Bounds.Number);
        builder.Property(relocation => relocation.ReleaseCover).HasMaxLength(Bounds.Conditions);
        builder.Property(relocation => relocation.PermitNumber).HasMaxLength(Bounds.Number);
        builder.HasOne<EncounterRecord>().WithOne().HasForeignKey<RelocationRecord>(relocation => relocation.EncounterId);
    }
}

internal sealed class EncounterAdditionConfiguration : IEntityTypeConfiguration<EncounterAddition>
{
    public void Configure(EntityTypeBuilder<EncounterAddition> builder)
    {
        builder.ToTable("EncounterAdditions");
        builder.Property(addition => addition.Id).ValueGeneratedNever();
        builder.Property(addition => addition.Words).HasMaxLength(Bounds.Reason);
        builder.HasOne<EncounterRecord>().WithMany().HasForeignKey(addition => addition.EncounterId);
        builder.HasOne<Person>().WithMany().HasForeignKey(addition => addition.PersonId);
    }
}

internal sealed class EncounterLookConfiguration : IEntityTypeConfiguration<EncounterLook>
{
    public void Configure(EntityTypeBuilder<EncounterLook> builder)
    {
        builder.ToTable("EncounterLooks");
        // Two leads who look at once: the first one's words stand.
        builder.HasKey(look => look.EncounterId);
        builder.Property(look => look.Words).HasMaxLength(Bounds.Reason);
        builder.HasOne<EncounterRecord>().WithOne().HasForeignKey<EncounterLook>(look => look.EncounterId);
        builder.HasOne<Person>().WithMany().HasForeignKey(look => look.LeadId);
    }
}
