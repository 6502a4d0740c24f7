using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>
/// An instructor is free for classes on some weekdays of a span, or is not. Nothing is overwritten: of the rows that name a day, the one kept last serves.
/// A day that no row names is not free.
/// </summary>
public sealed class InstructorDays
{
    /// <summary>Made by the form: the same twice is one row.</summary>
    public required Guid Id { get; init; }

    /// <summary>Who.</summary>
    public required Guid InstructorId { get; init; }

    /// <summary>First day, included.</summary>
    public required DateOnly StartsOn { get; init; }

    /// <summary>Last day, included.</summary>
    public required DateOnly EndsOn { get; init; }

    /// <summary>On which weekdays: bit 0 is Sunday, bit 6 Saturday; at least one.</summary>
    public required int Weekdays { get; init; }

    /// <summary>Free on these days, or away.</summary>
    public required bool IsFree { get; init; }

    /// <summary>Who said so: the instructor, or a lead.</summary>
    public required Guid EnteredById { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }

    /// <summary>Whether the row says something about a day.</summary>
    public bool Names(DateOnly day) => StartsOn <= day && day <= EndsOn && (Weekdays & (1 << (int)day.DayOfWeek)) != 0;

    /// <summary>Whether the rows of one instructor leave a day free.</summary>
    public static bool IsFreeOn(IEnumerable<InstructorDays> rows, DateOnly day) =>
        rows.Where(row => row.Names(day)).OrderBy(row => row.KeptAt).ThenBy(row => row.Id).LastOrDefault()?.IsFree == true;
}

internal sealed class InstructorDaysConfiguration : IEntityTypeConfiguration<InstructorDays>
{
    public void Configure(EntityTypeBuilder<InstructorDays> builder)
    {
        builder.ToTable("InstructorDays", table => table.HasCheckConstraint("CK_InstructorDays_Dates", "\"EndsOn\" >= \"StartsOn\""));
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.InstructorId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.EnteredById);
        builder.HasIndex(row => new { row.InstructorId, row.EndsOn });
    }
}
