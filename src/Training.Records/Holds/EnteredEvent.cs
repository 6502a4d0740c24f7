using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Certification;

namespace Training.Records;

/// <summary>Something that happened, as a lead entered it, because it asks for a review. Append-only.</summary>
public sealed class EnteredEvent
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>What kind of event.</summary>
    public required ReviewCause Cause { get; init; }

    /// <summary>At which site; null where it is about a person alone.</summary>
    public required Guid? SiteId { get; init; }

    /// <summary>About whom; null where it is about the handlers of a site.</summary>
    public required Guid? PersonId { get; init; }

    /// <summary>What happened.</summary>
    public required string Words { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>The day on which it was entered, in the zone of the site.</summary>
    public required DateOnly EnteredOn { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

/// <summary>A person reported something that may affect what they are able to do. Append-only; no medical detail is asked for.</summary>
public sealed class CapabilityReport
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Who, about themselves.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>What sort of thing changed.</summary>
    public required CapabilityMatter Matter { get; init; }

    /// <summary>What they want to say; empty for nothing.</summary>
    public required string Words { get; init; }

    /// <summary>The day, in the zone of their site.</summary>
    public required DateOnly ReportedOn { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

/// <summary>What sort of thing changed, as coarse as a review can do with.</summary>
public enum CapabilityMatter
{
    /// <summary>Body, eyes, ears, or a medicine: not told apart, so that nobody has to say which.</summary>
    Health,

    /// <summary>A permit or licence ended or was lost.</summary>
    Permit,

    /// <summary>Something else.</summary>
    Other,
}

internal sealed class EnteredEventConfiguration : IEntityTypeConfiguration<EnteredEvent>
{
    public void Configure(EntityTypeBuilder<EnteredEvent> builder)
    {
        builder.ToTable("EnteredEvents", table => table.HasCheckConstraint("CK_EnteredEvent_Subject", "\"SiteId\" IS NOT NULL OR \"PersonId\" IS NOT NULL"));
        builder.Property(entry => entry.Id).ValueGeneratedNever();
        builder.Property(entry => entry.Words).HasMaxLength(Bounds.Reason);
        builder.HasOne<Site>().WithMany().HasForeignKey(entry => entry.SiteId);
        builder.HasOne<Person>().WithMany().HasForeignKey(entry => entry.PersonId);
        builder.HasOne<Person>().WithMany().HasForeignKey(entry => entry.LeadId);
    }
}

internal sealed class CapabilityReportConfiguration : IEntityTypeConfiguration<CapabilityReport>
{
    public void Configure(EntityTypeBuilder<CapabilityReport> builder)
    {
        builder.ToTable("CapabilityReports");
        builder.Property(report => report.Id).ValueGeneratedNever();
        builder.Property(report => report.Words).HasMaxLength(Bounds.Reason);
        builder.HasOne<Person>().WithMany().HasForeignKey(report => report.PersonId);
        builder.HasIndex(report => new { report.PersonId, report.KeptAt });
    }
}
