using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A class was moved, or got more or fewer seats: what it was, what it is since, who, when and why. Append-only.</summary>
public sealed class ClassChange
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>1 for its first change, one more for each that follows.</summary>
    public required int Number { get; init; }

    /// <summary>The day before the change.</summary>
    public required DateOnly FromOn { get; init; }

    /// <summary>The start before the change.</summary>
    public required TimeOnly FromStartsAt { get; init; }

    /// <summary>The length before the change, in minutes.</summary>
    public required int FromMinutes { get; init; }

    /// <summary>The seats before the change.</summary>
    public required int FromSeats { get; init; }

    /// <summary>The day since.</summary>
    public required DateOnly ToOn { get; init; }

    /// <summary>The start since.</summary>
    public required TimeOnly ToStartsAt { get; init; }

    /// <summary>The length since, in minutes.</summary>
    public required int ToMinutes { get; init; }

    /// <summary>The seats since.</summary>
    public required int ToSeats { get; init; }

    /// <summary>When, UTC.</summary>
    public required DateTimeOffset ChangedAt { get; init; }

    /// <summary>Which programme lead.</summary>
    public required Guid ChangedById { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }
}

/// <summary>A class does not take place. Append-only; there is no way back, a new class is.</summary>
public sealed class ClassCancellation
{
    /// <summary>Which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>When, UTC.</summary>
    public required DateTimeOffset CancelledAt { get; init; }

    /// <summary>Which programme lead.</summary>
    public required Guid CancelledById { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }
}

internal sealed class ClassChangeConfiguration : IEntityTypeConfiguration<ClassChange>
{
    public void Configure(EntityTypeBuilder<ClassChange> builder)
    {
        builder.ToTable("ClassChanges");
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.Reason).HasMaxLength(Bounds.Conditions);
        builder.HasOne<ClassRecord>().WithMany().HasForeignKey(row => row.ClassId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.ChangedById);
        builder.HasIndex(row => new { row.ClassId, row.Number }).IsUnique();
    }
}

internal sealed class ClassCancellationConfiguration : IEntityTypeConfiguration<ClassCancellation>
{
    public void Configure(EntityTypeBuilder<ClassCancellation> builder)
    {
        builder.ToTable("ClassCancellations");
        // A class is cancelled once.
        builder.HasKey(row => row.ClassId);
        builder.Property(row => row.Reason).HasMaxLength(Bounds.Conditions);
        builder.HasOne<ClassRecord>().WithMany().HasForeignKey(row => row.ClassId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.CancelledById);
    }
}
