using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>The one-time code that an empty database prints on its console: whoever types it becomes the first programme lead.</summary>
public sealed class FirstLeadCode
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>SHA-256 of the code, lower-case hex: the code itself is printed once and kept nowhere.</summary>
    public required string CodeHash { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>UTC; refused from this instant on.</summary>
    public required DateTimeOffset EndsAt { get; init; }

    /// <summary>When it was used, UTC, or replaced by a newer one; null while it works.</summary>
    public DateTimeOffset? SpentAt { get; init; }
}

internal sealed class FirstLeadCodeConfiguration : IEntityTypeConfiguration<FirstLeadCode>
{
    public void Configure(EntityTypeBuilder<FirstLeadCode> builder)
    {
        builder.ToTable("FirstLeadCodes");
        builder.Property(code => code.Id).ValueGeneratedNever();
        builder.Property(code => code.CodeHash).HasMaxLength(Bounds.Hash);
        builder.HasIndex(code => code.CodeHash).IsUnique();
    }
}
