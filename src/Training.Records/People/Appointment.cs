using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;

namespace Training.Records;

/// <summary>What somebody may be appointed to.</summary>
public enum AppointedRole
{
    /// <summary>Teaches classes and scores practicals.</summary>
    Instructor,

    /// <summary>Decides, suspends and withdraws for the provider.</summary>
    ProgrammeLead,
}

/// <summary>A person is appointed to a role; to the same role never twice at once.</summary>
public sealed class Appointment : DatedRow
{
    /// <summary>To what.</summary>
    public required AppointedRole Role { get; init; }

    /// <summary>The languages in which they may do it.</summary>
    public required IReadOnlyList<Language> Languages { get; init; }
}

internal sealed class AppointmentConfiguration : IEntityTypeConfiguration<Appointment>
{
    public void Configure(EntityTypeBuilder<Appointment> builder)
    {
        builder.ConfigureDates();
        builder.Property(appointment => appointment.Languages)
            .HasConversion(new LanguageListConverter(), new LanguageListComparer()).HasMaxLength(Bounds.Number);
        builder.HasIndex(appointment => new { appointment.PersonId, appointment.Role, appointment.StartsOn }).IsUnique();
    }
}
