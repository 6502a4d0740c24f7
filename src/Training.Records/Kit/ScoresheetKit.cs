using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A piece of kit that a signed sheet was scored with.</summary>
public sealed class ScoresheetKit
{
    /// <summary>On which sheet.</summary>
    public required Guid ScoresheetId { get; init; }

    /// <summary>Place in the sheet's list, from 1.</summary>
    public required int Position { get; init; }

    /// <summary>Which piece.</summary>
    public required Guid PieceId { get; init; }

    /// <summary>The inspection that held on the day.</summary>
    public required Guid InspectionId { get; init; }
}

/// <summary>A piece of kit that a sheet was started with which is not signed yet.</summary>
public sealed class StartedKit
{
    /// <summary>On which sheet.</summary>
    public required Guid ScoresheetId { get; init; }

    /// <summary>Place in the sheet's list, from 1.</summary>
    public required int Position { get; init; }

    /// <summary>Which piece.</summary>
    public required Guid PieceId { get; init; }

    /// <summary>The inspection that held at the start.</summary>
    public required Guid InspectionId { get; init; }
}

internal sealed class ScoresheetKitConfiguration : IEntityTypeConfiguration<ScoresheetKit>
{
    public void Configure(EntityTypeBuilder<ScoresheetKit> builder)
    {
        builder.ToTable("ScoresheetKit");
        builder.HasKey(used => new { used.ScoresheetId, used.Position });
        builder.HasOne<KitPiece>().WithMany().HasForeignKey(used => used.PieceId);
        builder.HasOne<KitInspectionRecord>().WithMany().HasForeignKey(used => used.InspectionId);
    }
}

internal sealed class StartedKitConfiguration : IEntityTypeConfiguration<StartedKit>
{
    public void Configure(EntityTypeBuilder<StartedKit> builder)
    {
        builder.ToTable("StartedKit");
        builder.HasKey(used => new { used.ScoresheetId, used.Position });
        builder.HasOne<KitPiece>().WithMany().HasForeignKey(used => used.PieceId);
        builder.HasOne<KitInspectionRecord>().WithMany().HasForeignKey(used => used.InspectionId);
    }
}
