using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;

namespace Training.Records;

/// <summary>Somebody: worker, instructor or lead. Evidence points here; the name lies apart.</summary>
public sealed class Person : IVersioned
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>The language to write to them in.</summary>
    public required Language Language { get; set; }

    /// <summary>Where mail reaches them, or null: then what they are to be told goes onto the crew's list of their site.</summary>
    public string? MailAddress { get; set; }

    /// <inheritdoc/>
    public int Version { get; set; }
}

internal sealed class PersonConfiguration : IEntityTypeConfiguration<Person>
{
    public void Configure(EntityTypeBuilder<Person> builder)
    {
        builder.Property(person => person.Id).ValueGeneratedNever();
        builder.Property(person => person.MailAddress).HasMaxLength(Bounds.MailAddress);
        builder.Property(person => person.Version).IsConcurrencyToken();
    }
}
