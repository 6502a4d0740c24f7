using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A person was taught at a class.</summary>
public sealed class ClassAttendance
{
    /// <summary>Which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>Who was taught.</summary>
    public required Guid PersonId { get; init; }
}

internal sealed class ClassAttendanceConfiguration : IEntityTypeConfiguration<ClassAttendance>
{
    public void Configure(EntityTypeBuilder<ClassAttendance> builder)
    {
        builder.HasKey(attendance => new { attendance.ClassId, attendance.PersonId });
        builder.HasOne<ClassRecord>().WithMany().HasForeignKey(attendance => attendance.ClassId);
        builder.HasOne<Person>().WithMany().HasForeignKey(attendance => attendance.PersonId);
    }
}
