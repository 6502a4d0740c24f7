using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>An instructor taught at a class.</summary>
public sealed class ClassTeaching
{
    /// <summary>Which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>Who taught.</summary>
    public required Guid InstructorId { get; init; }
}

internal sealed class ClassTeachingConfiguration : IEntityTypeConfiguration<ClassTeaching>
{
    public void Configure(EntityTypeBuilder<ClassTeaching> builder)
    {
        builder.HasKey(teaching => new { teaching.ClassId, teaching.InstructorId });
        builder.HasOne<ClassRecord>().WithMany().HasForeignKey(teaching => teaching.ClassId);
        builder.HasOne<Person>().WithMany().HasForeignKey(teaching => teaching.InstructorId);
    }
}
