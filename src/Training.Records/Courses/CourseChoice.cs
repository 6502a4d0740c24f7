using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>The courses that the provider uses, from an instant on. The newest row serves; before the first one every course does.</summary>
public sealed class CourseChoice
{
    /// <summary>Made by the form: the same twice is one row.</summary>
    public required Guid Id { get; init; }

    /// <summary>The lead who chose.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset SinceAt { get; init; }

    /// <summary>Ids; at least one.</summary>
    public required IReadOnlyList<string> CourseIds { get; init; }
}

internal sealed class CourseChoiceConfiguration : IEntityTypeConfiguration<CourseChoice>
{
    public void Configure(EntityTypeBuilder<CourseChoice> builder)
    {
        builder.ToTable("CourseChoices");
        builder.Property(row => row.Id).ValueGeneratedNever();
        // Stored JSON: its length follows from the number of courses.
        builder.Property(row => row.CourseIds).HasConversion(new TextListConverter(), new TextListComparer());
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.LeadId);
        builder.HasIndex(row => row.SinceAt);
    }
}
