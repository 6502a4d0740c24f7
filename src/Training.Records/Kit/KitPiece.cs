using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Scoring;

namespace Training.Records;

/// <summary>A piece of kit in the provider's register; never changed.</summary>
public sealed class KitPiece
{
    /// <summary>Made by the form that registered it.</summary>
    public required Guid Id { get; init; }

    /// <summary>As it is marked, such as <c>H-03</c>.</summary>
    public required string Label
    {
        get;
        init
        {
            field = value;
            LabelKey = KeyText.Of(value);
        }
    }

    /// <summary>What labels are compared by.</summary>
    public string LabelKey { get; private set; } = "";

    /// <summary>What it is.</summary>
    public required KitKind Kind { get; init; }

    /// <summary>The lead or instructor who registered it.</summary>
    public required Guid RegisteredById { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset RegisteredAt { get; init; }
}

/// <summary>One inspection of a piece of kit; append-only.</summary>
public sealed class KitInspectionRecord
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Of which piece.</summary>
    public required Guid PieceId { get; init; }

    /// <summary>Who inspected.</summary>
    public required Guid InspectorId { get; init; }

    /// <summary>On which day.</summary>
    public required DateOnly InspectedOn { get; init; }

    /// <summary>It may be used.</summary>
    public required bool IsFit { get; init; }

    /// <summary>Why it may not; null where it is fit.</summary>
    public required string? Reason { get; init; }

    /// <summary>The last day through which the inspection holds; null where it is not fit.</summary>
    public required DateOnly? NextDueOn { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

/// <summary>A piece of kit was taken out of use, for good.</summary>
public sealed class KitRetirementRecord
{
    /// <summary>Which piece.</summary>
    public required Guid PieceId { get; init; }

    /// <summary>Who took it out of use.</summary>
    public required Guid TakenById { get; init; }

    /// <summary>The first day on which it may not be used.</summary>
    public required DateOnly RetiredOn { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class KitPieceConfiguration : IEntityTypeConfiguration<KitPiece>
{
    public void Configure(EntityTypeBuilder<KitPiece> builder)
    {
        builder.ToTable("KitPieces");
        builder.Property(piece => piece.Id).ValueGeneratedNever();
        builder.Property(piece => piece.Label).HasMaxLength(Bounds.Number);
        builder.Property(piece => piece.LabelKey).HasMaxLength(Bounds.Number);
        // Two pieces with one label would make every sheet that names it worthless.
        builder.HasIndex(piece => piece.LabelKey).IsUnique();
        builder.HasOne<Person>().WithMany().HasForeignKey(piece => piece.RegisteredById);
    }
}

internal sealed class KitInspectionRecordConfiguration : IEntityTypeConfiguration<KitInspectionRecord>
{
    public void Configure(EntityTypeBuilder<KitInspectionRecord> builder)
    {
        builder.ToTable("KitInspections");
        builder.Property(inspection => inspection.Id).ValueGeneratedNever();
        builder.Property(inspection => inspection.Reason).HasMaxLength(Bounds.Reason);
        builder.HasIndex(inspection => new { inspection.PieceId, inspection.InspectedOn });
        builder.HasOne<KitPiece>().WithMany().HasForeignKey(inspection => inspection.PieceId);
        builder.HasOne<Person>().WithMany().HasForeignKey(inspection => inspection.InspectorId);
    }
}

internal sealed class KitRetirementRecordConfiguration : IEntityTypeConfiguration<KitRetirementRecord>
{
    public void Configure(EntityTypeBuilder<KitRetirementRecord> builder)
    {
        builder.ToTable("KitRetirements");
        builder.HasKey(retirement => retirement.PieceId);
        builder.Property(retirement => retirement.Reason).HasMaxLength(Bounds.Reason);
        builder.HasOne<KitPiece>().WithMany().HasForeignKey(retirement => retirement.PieceId);
        builder.HasOne<Person>().WithMany().HasForeignKey(retirement => retirement.TakenById);
    }
}
