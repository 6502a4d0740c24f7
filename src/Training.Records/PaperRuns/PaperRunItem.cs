using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>One paper of a run: done once the paper of this decision and revision exists, whoever made it.</summary>
public sealed class PaperRunItem
{
    /// <summary>Of which run.</summary>
    public required Guid RunId { get; init; }

    /// <summary>From 1, the order of making and of printing.</summary>
    public required int Position { get; init; }

    /// <summary>Whose paper.</summary>
    public required Guid DecisionId { get; init; }

    /// <summary>Which revision of it.</summary>
    public required int Revision { get; init; }
}

/// <summary>A paper of a run that cannot be made. A new run tries again.</summary>
public sealed class PaperRunFailure
{
    /// <summary>Of which run.</summary>
    public required Guid RunId { get; init; }

    /// <summary>Of its items.</summary>
    public required int Position { get; init; }

    /// <summary>The first problem's code.</summary>
    public required string Code { get; init; }

    /// <summary>The field that it is about; empty for none.</summary>
    public required string Field { get; init; }

    /// <summary>What the problem's words are filled with.</summary>
    public required IReadOnlyList<string> Arguments { get; init; }

    /// <summary>When, UTC.</summary>
    public required DateTimeOffset At { get; init; }
}

internal sealed class PaperRunItemConfiguration : IEntityTypeConfiguration<PaperRunItem>
{
    public void Configure(EntityTypeBuilder<PaperRunItem> builder)
    {
        builder.ToTable("PaperRunItems");
        builder.HasKey(item => new { item.RunId, item.Position });
        builder.HasIndex(item => new { item.RunId, item.DecisionId }).IsUnique();
        builder.HasOne<PaperRun>().WithMany().HasForeignKey(item => item.RunId);
        builder.HasOne<PeriodRecord>().WithMany().HasForeignKey(item => item.DecisionId);
    }
}

internal sealed class PaperRunFailureConfiguration : IEntityTypeConfiguration<PaperRunFailure>
{
    public void Configure(EntityTypeBuilder<PaperRunFailure> builder)
    {
        builder.ToTable("PaperRunFailures");
        builder.HasKey(failure => new { failure.RunId, failure.Position });
        builder.Property(failure => failure.Code).HasMaxLength(Bounds.Id);
        builder.Property(failure => failure.Field).HasMaxLength(Bounds.Id);
        builder.Property(failure => failure.Arguments).HasConversion(new TextListConverter(), new TextListComparer());
        builder.HasOne<PaperRunItem>().WithOne().HasForeignKey<PaperRunFailure>(failure => new { failure.RunId, failure.Position });
    }
}
