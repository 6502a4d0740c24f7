using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A key that protects cookies and forms. In the records, so that every web node reads what another wrote.</summary>
public sealed class ProtectionKey
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>As the framework names it.</summary>
    public required string Name { get; init; }

    /// <summary>As the framework wrote it.</summary>
    public required string Xml { get; init; }
}

internal sealed class ProtectionKeyConfiguration : IEntityTypeConfiguration<ProtectionKey>
{
    public void Configure(EntityTypeBuilder<ProtectionKey> builder)
    {
        builder.ToTable("ProtectionKeys");
        builder.Property(key => key.Id).ValueGeneratedNever();
        builder.Property(key => key.Name).HasMaxLength(Bounds.Name);
        builder.Property(key => key.Xml).HasMaxLength(Bounds.KeyXml);
    }
}
