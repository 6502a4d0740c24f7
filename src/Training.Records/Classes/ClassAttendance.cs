using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>
/// A seat that a person got at a class. It stays when it is given back (<see cref="SeatReturn"/>): who has a seat is asked of
/// <see cref="SeatQueries.SeatsHeld"/>, who was taught of <see cref="SeatQueries.SeatsTaught"/>.
/// </summary>
public sealed class ClassAttendance
{
    /// <summary>Which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>Whose seat.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>1 for the first seat of the person at the class, one more after each that was given back.</summary>
    public int Turn { get; init; } = 1;
}

internal sealed class ClassAttendanceConfiguration : IEntityTypeConfiguration<ClassAttendance>
{
    public void Configure(EntityTypeBuilder<ClassAttendance> builder)
    {
        // Of two at once who seat one person again, the second is refused here.
        builder.HasKey(attendance => new { attendance.ClassId, attendance.PersonId, attendance.Turn });
        builder.Property(attendance => attendance.Turn).ValueGeneratedNever();
        builder.HasIndex(attendance => attendance.PersonId);
        builder.HasOne<ClassRecord>().WithMany().HasForeignKey(attendance => attendance.ClassId);
        builder.HasOne<Person>().WithMany().HasForeignKey(attendance => attendance.PersonId);
    }
}
