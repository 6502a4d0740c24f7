using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>What one judge said of one question or step in one round; append-only, the newest counts.</summary>
public sealed class PanelRating
{
    /// <summary>Made by the form or file that said it.</summary>
    public required Guid FormId { get; init; }

    /// <summary>Who judged.</summary>
    public required Guid JudgeId { get; init; }

    /// <summary>Which question or step.</summary>
    public required string ItemId { get; init; }

    /// <summary>1 or 2.</summary>
    public required int Round { get; init; }

    /// <summary>How many in a hundred just competent people are right, or the share of points that they earn; 0–100.</summary>
    public required int Percent { get; init; }

    /// <summary>Who typed or sent it: the judge, or a lead for an outsider.</summary>
    public required Guid KeptById { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class PanelRatingConfiguration : IEntityTypeConfiguration<PanelRating>
{
    public void Configure(EntityTypeBuilder<PanelRating> builder)
    {
        builder.ToTable("PanelRatings", table => table.HasCheckConstraint(
            "CK_PanelRating_Range", "\"Percent\" >= 0 AND \"Percent\" <= 100 AND \"Round\" >= 1 AND \"Round\" <= 2"));
        // The key is the rule: a form that is sent twice rates once.
        builder.HasKey(rating => new { rating.FormId, rating.JudgeId, rating.ItemId, rating.Round });
        builder.Property(rating => rating.ItemId).HasMaxLength(Bounds.Id);
        builder.HasOne<PanelJudge>().WithMany().HasForeignKey(rating => rating.JudgeId);
        builder.HasOne<Person>().WithMany().HasForeignKey(rating => rating.KeptById);
        builder.HasIndex(rating => new { rating.JudgeId, rating.KeptAt });
    }
}
