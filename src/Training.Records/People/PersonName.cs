using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A person's name from a day on. Papers point to the row they printed, so erasing its text erases the name without touching evidence.</summary>
public sealed class PersonName : IVersioned
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>Whose.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>As they write it and as it is printed; null once erased.</summary>
    public required string? Text { get; set; }

    /// <summary>What lists are sorted and searched by: upper case without accents; null once erased.</summary>
    public string? TextOrder
    {
        get => Text is null ? null : KeyText.Plain(Text);
        private set => _ = value; // read back from the column, and the same: the name implies it
    }

    /// <summary>First day.</summary>
    public required DateOnly StartsOn { get; init; }

    /// <inheritdoc/>
    public int Version { get; set; }
}

internal sealed class PersonNameConfiguration : IEntityTypeConfiguration<PersonName>
{
    public void Configure(EntityTypeBuilder<PersonName> builder)
    {
        builder.Property(name => name.Id).ValueGeneratedNever();
        builder.Property(name => name.Text).HasMaxLength(Bounds.Name);
        builder.Property(name => name.TextOrder).HasMaxLength(Bounds.Name);
        builder.Property(name => name.Version).IsConcurrencyToken();
        builder.HasOne<Person>().WithMany().HasForeignKey(name => name.PersonId);
        builder.HasIndex(name => new { name.PersonId, name.StartsOn }).IsUnique();
    }
}
