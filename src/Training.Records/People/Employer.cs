using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A company or range that people work for.</summary>
public sealed class Employer
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>Its name.</summary>
    public required string Name
    {
        get;
        init
        {
            field = value;
            NameKey = KeyText.Of(value);
        }
    }

    /// <summary>What the name is compared by.</summary>
    public string NameKey { get; private set; } = "";
}

internal sealed class EmployerConfiguration : IEntityTypeConfiguration<Employer>
{
    public void Configure(EntityTypeBuilder<Employer> builder)
    {
        builder.Property(employer => employer.Id).ValueGeneratedNever();
        builder.Property(employer => employer.Name).HasMaxLength(Bounds.Name);
        builder.Property(employer => employer.NameKey).HasMaxLength(Bounds.Name);
        builder.HasIndex(employer => employer.NameKey).IsUnique();
    }
}
