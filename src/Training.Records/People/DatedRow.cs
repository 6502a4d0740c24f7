using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>Something that holds for a person from a day through a day.</summary>
public abstract class DatedRow : IVersioned
{
    /// <summary>Made by the application or the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Whose.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>First day.</summary>
    public required DateOnly StartsOn { get; init; }

    /// <summary>Last day, included; null while it lasts.</summary>
    public DateOnly? EndsOn { get; set; }

    /// <inheritdoc/>
    public int Version { get; set; }

    /// <summary>Whether it holds on that day.</summary>
    public bool Holds(DateOnly day) => StartsOn <= day && !(EndsOn < day);

    internal bool Overlaps(DatedRow other) => !(EndsOn < other.StartsOn) && !(other.EndsOn < StartsOn);
}

internal static class DatedRowConfiguration
{
    internal static void ConfigureDates<T>(this EntityTypeBuilder<T> builder)
        where T : DatedRow
    {
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.Version).IsConcurrencyToken();
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.PersonId);
        builder.ToTable(table => table.HasCheckConstraint(
            $"CK_{typeof(T).Name}_Dates", "\"EndsOn\" IS NULL OR \"EndsOn\" >= \"StartsOn\""));
    }
}
