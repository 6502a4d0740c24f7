using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>Whether somebody with a seat came.</summary>
public enum Presence
{
    /// <summary>Was there.</summary>
    Came,

    /// <summary>Was not there: a seat without teaching, and nobody's fault.</summary>
    DidNotCome,
}

/// <summary>An instructor's word on whether somebody came to a class. The newest counts. Append-only.</summary>
public sealed class ClassPresence
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>At which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>Who.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>1 for the first word about this person at this class, one more for each that follows.</summary>
    public required int Number { get; init; }

    /// <summary>What was seen.</summary>
    public required Presence Presence { get; init; }

    /// <summary>What is known of why; null where nothing was said.</summary>
    public required string? Reason { get; init; }

    /// <summary>When it was marked, UTC.</summary>
    public required DateTimeOffset MarkedAt { get; init; }

    /// <summary>By which instructor or lead.</summary>
    public required Guid MarkedById { get; init; }
}

internal sealed class ClassPresenceConfiguration : IEntityTypeConfiguration<ClassPresence>
{
    public void Configure(EntityTypeBuilder<ClassPresence> builder)
    {
        builder.ToTable("ClassPresences");
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.Reason).HasMaxLength(Bounds.Conditions);
        builder.HasOne<ClassRecord>().WithMany().HasForeignKey(row => row.ClassId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.PersonId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.MarkedById);
        builder.HasIndex(row => new { row.ClassId, row.PersonId, row.Number }).IsUnique();
    }
}
