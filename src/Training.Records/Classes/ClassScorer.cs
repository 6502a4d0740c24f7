using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>An instructor may score at a class. Who only teaches there sees the class and scores nobody.</summary>
public sealed class ClassScorer
{
    /// <summary>Which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>Who may score.</summary>
    public required Guid InstructorId { get; init; }
}

internal sealed class ClassScorerConfiguration : IEntityTypeConfiguration<ClassScorer>
{
    public void Configure(EntityTypeBuilder<ClassScorer> builder)
    {
        builder.HasKey(scorer => new { scorer.ClassId, scorer.InstructorId });
        builder.HasIndex(scorer => scorer.InstructorId);
        builder.HasOne<ClassRecord>().WithMany().HasForeignKey(scorer => scorer.ClassId);
        builder.HasOne<Person>().WithMany().HasForeignKey(scorer => scorer.InstructorId);
    }
}
