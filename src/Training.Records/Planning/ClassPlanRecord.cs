using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Certification;

namespace Training.Records;

/// <summary>What classes were planned for, and what the search said. Its classes are in its versions.</summary>
public sealed class ClassPlanRecord
{
    /// <summary>Made by the form: the same twice is one plan.</summary>
    public required Guid Id { get; init; }

    /// <summary>For whose people.</summary>
    public required Guid EmployerId { get; init; }

    /// <summary>Whose renewals.</summary>
    public required string SchemeId { get; init; }

    /// <summary>Classes of which course.</summary>
    public required string CourseId { get; init; }

    /// <summary>First day of the span, included.</summary>
    public required DateOnly StartsOn { get; init; }

    /// <summary>Last day of the span, included.</summary>
    public required DateOnly EndsOn { get; init; }

    /// <summary>On which weekdays classes may be: bit 0 is Sunday.</summary>
    public required int Weekdays { get; init; }

    /// <summary>Of every class.</summary>
    public required int Seats { get; init; }

    /// <summary>Classes a day at most, at all sites together.</summary>
    public required int MostClassesADay { get; init; }

    /// <summary>At how many classes of the plan an instructor is at most.</summary>
    public required int MostClassesEach { get; init; }

    /// <summary>Nobody travels longer, one way.</summary>
    public required int MostTravelMinutes { get; init; }

    /// <summary>So many days before a certification lapses are kept free for the decision.</summary>
    public required int MarginDays { get; init; }

    /// <summary>How many people were to be seated.</summary>
    public required int People { get; init; }

    /// <summary>The lower bound of the search: classes.</summary>
    public required int LeastClasses { get; init; }

    /// <summary>The lower bound of the search: people without a seat.</summary>
    public required int LeastUnmet { get; init; }

    /// <summary>Whether the search was ended by its budget.</summary>
    public required bool IsSearchCut { get; init; }

    /// <summary>Who asked for it.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

/// <summary>The classes of a plan: as proposed, then as somebody changed them.</summary>
public sealed class ClassPlanVersion
{
    /// <summary>Which plan.</summary>
    public required Guid PlanId { get; init; }

    /// <summary>1 as proposed; one more with each change.</summary>
    public required int Number { get; init; }

    /// <summary>Made by the form of the change: the same twice is one version. The plan's own id for the first.</summary>
    public required Guid FormId { get; init; }

    /// <summary>The classes.</summary>
    public required IReadOnlyList<PlannedClass> Classes { get; init; }

    /// <summary>Who proposed or changed it.</summary>
    public required Guid ById { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

/// <summary>A plan was accepted: its classes and seats were made.</summary>
public sealed class ClassPlanAcceptance
{
    /// <summary>Which plan.</summary>
    public required Guid PlanId { get; init; }

    /// <summary>Which version of it.</summary>
    public required int Number { get; init; }

    /// <summary>The lead.</summary>
    public required Guid LeadId { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset AcceptedAt { get; init; }
}

/// <summary>A class that an accepted plan made.</summary>
public sealed class AcceptedClass
{
    /// <summary>Which plan.</summary>
    public required Guid PlanId { get; init; }

    /// <summary>Which class.</summary>
    public required Guid ClassId { get; init; }
}

internal sealed class ClassPlanRecordConfiguration : IEntityTypeConfiguration<ClassPlanRecord>
{
    public void Configure(EntityTypeBuilder<ClassPlanRecord> builder)
    {
        builder.ToTable("ClassPlans");
        builder.Property(plan => plan.Id).ValueGeneratedNever();
        builder.Property(plan => plan.SchemeId).HasMaxLength(Bounds.Id);
        builder.Property(plan => plan.CourseId).HasMaxLength(Bounds.Id);
        builder.HasOne<Employer>().WithMany().HasForeignKey(plan => plan.EmployerId);
        builder.HasOne<Person>().WithMany().HasForeignKey(plan => plan.LeadId);
        builder.HasIndex(plan => new { plan.EmployerId, plan.KeptAt });
    }
}

internal sealed class ClassPlanVersionConfiguration : IEntityTypeConfiguration<ClassPlanVersion>
{
    public void Configure(EntityTypeBuilder<ClassPlanVersion> builder)
    {
        builder.ToTable("ClassPlanVersions");
        // Of two who change one version at once, the second is told.
        builder.HasKey(version => new { version.PlanId, version.Number });
        builder.HasIndex(version => version.FormId).IsUnique();
        builder.Property(version => version.Classes).HasConversion(new PlannedClassesConverter(), new PlannedClassesComparer());
        builder.HasOne<ClassPlanRecord>().WithMany().HasForeignKey(version => version.PlanId);
        builder.HasOne<Person>().WithMany().HasForeignKey(version => version.ById);
    }
}

internal sealed class ClassPlanAcceptanceConfiguration : IEntityTypeConfiguration<ClassPlanAcceptance>
{
    public void Configure(EntityTypeBuilder<ClassPlanAcceptance> builder)
    {
        builder.ToTable("ClassPlanAcceptances");
        // A plan is accepted once.
        builder.HasKey(row => row.PlanId);
        builder.HasOne<ClassPlanVersion>().WithMany().HasForeignKey(row => new { row.PlanId, row.Number });
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.LeadId);
    }
}

internal sealed class AcceptedClassConfiguration : IEntityTypeConfiguration<AcceptedClass>
{
    public void Configure(EntityTypeBuilder<AcceptedClass> builder)
    {
        builder.ToTable("AcceptedClasses");
        builder.HasKey(row => row.ClassId);
        builder.HasOne<ClassPlanAcceptance>().WithMany().HasForeignKey(row => row.PlanId);
        builder.HasOne<ClassRecord>().WithOne().HasForeignKey<AcceptedClass>(row => row.ClassId);
    }
}
