using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>Somebody who judges: a person of the records, or an outsider by name.</summary>
public sealed class PanelJudge
{
    /// <summary>Made by the form: the same twice is one judge.</summary>
    public required Guid Id { get; init; }

    /// <summary>Of which panel.</summary>
    public required Guid PanelId { get; init; }

    /// <summary>1 for the first judge of the panel, without gaps; files of ratings name judges by it.</summary>
    public required int Number { get; init; }

    /// <summary>The person; null for an outsider.</summary>
    public Guid? PersonId { get; init; }

    /// <summary>The outsider's name; null for a person.</summary>
    public string? OutsiderName { get; init; }

    /// <summary>Why they can judge.</summary>
    public required string Qualification { get; init; }

    /// <summary>The lead who asked them.</summary>
    public required Guid AddedById { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset AddedAt { get; init; }
}

internal sealed class PanelJudgeConfiguration : IEntityTypeConfiguration<PanelJudge>
{
    public void Configure(EntityTypeBuilder<PanelJudge> builder)
    {
        builder.ToTable("PanelJudges", table => table.HasCheckConstraint(
            "CK_PanelJudge_PersonOrOutsider", "(\"PersonId\" IS NULL AND \"OutsiderName\" IS NOT NULL) OR (\"PersonId\" IS NOT NULL AND \"OutsiderName\" IS NULL)"));
        builder.Property(judge => judge.Id).ValueGeneratedNever();
        builder.Property(judge => judge.OutsiderName).HasMaxLength(Bounds.Name);
        builder.Property(judge => judge.Qualification).HasMaxLength(Bounds.Reason);
        // The number is taken under this index: of two judges added at once one gets the next, so nobody judges twice.
        builder.HasIndex(judge => new { judge.PanelId, judge.Number }).IsUnique();
        builder.HasIndex(judge => judge.PersonId);
        builder.HasOne<Panel>().WithMany().HasForeignKey(judge => judge.PanelId);
        builder.HasOne<Person>().WithMany().HasForeignKey(judge => judge.PersonId);
        builder.HasOne<Person>().WithMany().HasForeignKey(judge => judge.AddedById);
    }
}
