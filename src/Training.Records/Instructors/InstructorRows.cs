using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Certification;
using Training.Courses;

namespace Training.Records;

/// <summary>A lead wrote down that an instructor is competent for something; never changed.</summary>
public sealed class InstructorCompetence
{
    /// <summary>Made by the application.</summary>
    public required Guid Id { get; init; }

    /// <summary>Made by the form; one form may write several.</summary>
    public required Guid EntryId { get; init; }

    /// <summary>Whose.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>For which course.</summary>
    public required string CourseId { get; init; }

    /// <summary>To teach or to score.</summary>
    public required Duty Duty { get; init; }

    /// <summary>On a model or on a live snake.</summary>
    public required Subject Subject { get; init; }

    /// <summary>First day.</summary>
    public required DateOnly StartsOn { get; init; }

    /// <summary>Last day, included.</summary>
    public required DateOnly EndsOn { get; init; }

    /// <summary>What shows it.</summary>
    public required string Evidence { get; init; }

    /// <summary>The lead; never about themselves.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

/// <summary>A lead ended a competence early; the competence is the key.</summary>
public sealed class InstructorCompetenceEnd
{
    /// <summary>Which.</summary>
    public required Guid CompetenceId { get; init; }

    /// <summary>Its last day, included.</summary>
    public required DateOnly EndsOn { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

/// <summary>Something stands between an instructor and a person, or an employer's people; never changed.</summary>
public sealed class InstructorConflict
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Of which instructor.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Between them and this person; null where it is an employer.</summary>
    public required Guid? OtherPersonId { get; init; }

    /// <summary>Between them and this employer's people; null where it is a person.</summary>
    public required Guid? EmployerId { get; init; }

    /// <summary>What it is.</summary>
    public required string Words { get; init; }

    /// <summary>First day.</summary>
    public required DateOnly StartsOn { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

/// <summary>A conflict ended; the conflict is the key.</summary>
public sealed class InstructorConflictEnd
{
    /// <summary>Which.</summary>
    public required Guid ConflictId { get; init; }

    /// <summary>Its last day, included.</summary>
    public required DateOnly EndsOn { get; init; }

    /// <summary>Why.</summary>
    public required string Reason { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

/// <summary>An instructor stated that nothing else stands in the way of their work.</summary>
public sealed class InstructorStatement
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Who.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly StatedOn { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class InstructorCompetenceConfiguration : IEntityTypeConfiguration<InstructorCompetence>
{
    public void Configure(EntityTypeBuilder<InstructorCompetence> builder)
    {
        builder.ToTable("InstructorCompetences", table =>
        {
            table.HasCheckConstraint("CK_InstructorCompetence_Dates", "\"EndsOn\" >= \"StartsOn\"");
            table.HasCheckConstraint("CK_InstructorCompetence_NeverOneself", "\"LeadId\" <> \"PersonId\"");
        });
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.CourseId).HasMaxLength(Bounds.Id);
        builder.Property(row => row.Evidence).HasMaxLength(Bounds.Reason);
        // The same form again is one entry.
        builder.HasIndex(row => new { row.EntryId, row.Duty, row.Subject }).IsUnique();
        builder.HasIndex(row => new { row.PersonId, row.CourseId });
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.PersonId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.LeadId);
    }
}

internal sealed class InstructorCompetenceEndConfiguration : IEntityTypeConfiguration<InstructorCompetenceEnd>
{
    public void Configure(EntityTypeBuilder<InstructorCompetenceEnd> builder)
    {
        builder.ToTable("InstructorCompetenceEnds");
        builder.HasKey(row => row.CompetenceId);
        builder.Property(row => row.Reason).HasMaxLength(Bounds.Reason);
        builder.HasOne<InstructorCompetence>().WithOne().HasForeignKey<InstructorCompetenceEnd>(row => row.CompetenceId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.LeadId);
    }
}

internal sealed class InstructorConflictConfiguration : IEntityTypeConfiguration<InstructorConflict>
{
    public void Configure(EntityTypeBuilder<InstructorConflict> builder)
    {
        builder.ToTable("InstructorConflicts", table =>
        {
            table.HasCheckConstraint(
                "CK_InstructorConflict_One",
                "(\"OtherPersonId\" IS NULL AND \"EmployerId\" IS NOT NULL) OR (\"OtherPersonId\" IS NOT NULL AND \"EmployerId\" IS NULL)");
            table.HasCheckConstraint("CK_InstructorConflict_NeverOneself", "\"LeadId\" <> \"PersonId\"");
        });
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.Property(row => row.Words).HasMaxLength(Bounds.Reason);
        builder.HasIndex(row => row.PersonId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.PersonId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.OtherPersonId);
        builder.HasOne<Employer>().WithMany().HasForeignKey(row => row.EmployerId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.LeadId);
    }
}

internal sealed class InstructorConflictEndConfiguration : IEntityTypeConfiguration<InstructorConflictEnd>
{
    public void Configure(EntityTypeBuilder<InstructorConflictEnd> builder)
    {
        builder.ToTable("InstructorConflictEnds");
        builder.HasKey(row => row.ConflictId);
        builder.Property(row => row.Reason).HasMaxLength(Bounds.Reason);
        builder.HasOne<InstructorConflict>().WithOne().HasForeignKey<InstructorConflictEnd>(row => row.ConflictId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.LeadId);
    }
}

internal sealed class InstructorStatementConfiguration : IEntityTypeConfiguration<InstructorStatement>
{
    public void Configure(EntityTypeBuilder<InstructorStatement> builder)
    {
        builder.ToTable("InstructorStatements");
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.HasIndex(row => new { row.PersonId, row.StatedOn });
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.PersonId);
    }
}
