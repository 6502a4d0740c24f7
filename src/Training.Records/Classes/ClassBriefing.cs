using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>What the people of a class are to know before it: where they meet, what kit is needed, what the weather asks. The newest row counts.</summary>
public sealed class ClassBriefing
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>1 for the first, one more for each that follows.</summary>
    public required int Number { get; init; }

    /// <summary>Where people meet; empty where nothing is said.</summary>
    public required string MeetingPlace { get; init; }

    /// <summary>Kit that is needed, a piece or kind a line; empty where nothing is said.</summary>
    public required string Kit { get; init; }

    /// <summary>Heat, storm, light: what is planned for; empty where nothing is said.</summary>
    public required string Weather { get; init; }

    /// <summary>When it was written, UTC.</summary>
    public required DateTimeOffset WrittenAt { get; init; }

    /// <summary>By whom: a programme lead, or an instructor of the class.</summary>
    public required Guid WrittenById { get; init; }
}

internal sealed class ClassBriefingConfiguration : IEntityTypeConfiguration<ClassBriefing>
{
    public void Configure(EntityTypeBuilder<ClassBriefing> builder)
    {
        builder.ToTable("ClassBriefings");
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.MeetingPlace).HasMaxLength(Bounds.MeetingPlace);
        builder.Property(row => row.Kit).HasMaxLength(Bounds.Reason);
        builder.Property(row => row.Weather).HasMaxLength(Bounds.Reason);
        builder.HasOne<ClassRecord>().WithMany().HasForeignKey(row => row.ClassId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.WrittenById);
        builder.HasIndex(row => new { row.ClassId, row.Number }).IsUnique();
    }
}
