using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A seat was given back. Append-only.</summary>
public sealed class SeatReturn
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>At which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>Whose seat.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Which of their seats at the class: <see cref="ClassAttendance.Turn"/>.</summary>
    public required int Turn { get; init; }

    /// <summary>When, UTC.</summary>
    public required DateTimeOffset ReturnedAt { get; init; }

    /// <summary>Who gave it back: the person, who represents their employer, or a programme lead.</summary>
    public required Guid ReturnedById { get; init; }

    /// <summary>Why, in their words; null where nothing was said. Nobody has to say why they cannot come.</summary>
    public required string? Reason { get; init; }
}

internal sealed class SeatReturnConfiguration : IEntityTypeConfiguration<SeatReturn>
{
    public void Configure(EntityTypeBuilder<SeatReturn> builder)
    {
        builder.ToTable("SeatReturns");
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.Reason).HasMaxLength(Bounds.Conditions);
        builder.HasOne<ClassAttendance>().WithMany().HasForeignKey(row => new { row.ClassId, row.PersonId, row.Turn });
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.ReturnedById);
        // A seat is given back once.
        builder.HasIndex(row => new { row.ClassId, row.PersonId, row.Turn }).IsUnique();
    }
}
