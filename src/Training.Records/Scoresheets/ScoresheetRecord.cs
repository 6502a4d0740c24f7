using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>One signed scoresheet with every observation; never changed.</summary>
public sealed class ScoresheetRecord
{
    /// <summary>Our own key, since two contents may come under one form id.</summary>
    public required Guid Id { get; init; }

    /// <summary>The id that the form made: <c>Scoresheet.Id</c>.</summary>
    public required Guid FormId { get; init; }

    /// <summary>1 for the sheet that counts; 2 and more for other content under the same form id, or a second sheet of the same try (disputed).</summary>
    public required int Copy { get; init; }

    /// <summary>Of what the instructor wrote.</summary>
    public required string ContentHash { get; init; }

    /// <summary>At which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>Who was assessed.</summary>
    public required Guid CandidateId { get; init; }

    /// <summary>Who scored; never the candidate.</summary>
    public required Guid InstructorId { get; init; }

    /// <summary>Snapshot that the checklist comes from.</summary>
    public required string CourseHash { get; init; }

    /// <summary>Which checklist.</summary>
    public required string ChecklistId { get; init; }

    /// <summary>Its version as scored against.</summary>
    public required string ChecklistVersion { get; init; }

    /// <summary>Model or live snake.</summary>
    public required Subject Subject { get; init; }

    /// <summary>1 for the first try of the day.</summary>
    public required int Try { get; init; }

    /// <summary>The step at which it was stopped, or null.</summary>
    public required string? StoppedAtStep { get; init; }

    /// <summary>The language in which the instructions were read.</summary>
    public required Language Language { get; init; }

    /// <summary>Whether the instructor looked at the candidate's identification.</summary>
    public required bool IsIdentityConfirmed { get; init; }

    /// <summary>Ground, light and weather.</summary>
    public required string Surroundings { get; init; }

    /// <summary>In whole °C, or null.</summary>
    public required int? AirTemperature { get; init; }

    /// <summary>Which kit was used.</summary>
    public required string Kit { get; init; }


    /// <summary>UTC, to the millisecond.</summary>
    public required DateTimeOffset SignedAt { get; init; }

    /// <summary>The name typed to sign.</summary>
    public required string SignedName { get; init; }

    /// <summary>The calendar day of the sheet in <see cref="Zone"/>.</summary>
    public required DateOnly ScoredOn { get; init; }

    /// <summary>IANA time zone of the class's site.</summary>
    public required string Zone { get; init; }

    /// <summary>Free text.</summary>
    public required string Remarks { get; init; }

    /// <summary>Of the performance as a whole; null where it was not seen whole, and on sheets from before it was asked.</summary>
    public Impression? Impression { get; init; }

    /// <summary>When the instructor said that the instructions were read, UTC; null on sheets from before it was asked.</summary>
    public DateTimeOffset? InstructionsReadAt { get; init; }

    /// <summary>How long a drill with a time limit took; null where nothing is timed, and where it was not seen whole.</summary>
    public int? Seconds { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }

    /// <summary>One a step, in the checklist's order.</summary>
    public IList<StepObservationRecord> Observations { get; init; } = [];

    /// <summary>The pieces of kit; none on sheets from before there was a register.</summary>
    public IList<ScoresheetKit> UsedKit { get; init; } = [];

    /// <summary>What a live sheet has besides; null on a model.</summary>
    public LiveConditionsRecord? Live { get; init; }
}

internal sealed class ScoresheetRecordConfiguration : IEntityTypeConfiguration<ScoresheetRecord>
{
    public void Configure(EntityTypeBuilder<ScoresheetRecord> builder)
    {
        builder.Property(sheet => sheet.Id).ValueGeneratedNever();
        builder.Property(sheet => sheet.ContentHash).HasMaxLength(Bounds.Hash);
        builder.Property(sheet => sheet.CourseHash).HasMaxLength(Bounds.Hash);
        builder.Property(sheet => sheet.ChecklistId).HasMaxLength(Bounds.Id);
        builder.Property(sheet => sheet.ChecklistVersion).HasMaxLength(Bounds.Hash);
        builder.Property(sheet => sheet.StoppedAtStep).HasMaxLength(Bounds.Id);
        builder.Property(sheet => sheet.Zone).HasMaxLength(Bounds.Zone);
        builder.Property(sheet => sheet.Surroundings).HasMaxLength(Bounds.Conditions);
        builder.Property(sheet => sheet.Kit).HasMaxLength(Bounds.Conditions);
        builder.Property(sheet => sheet.SignedName).HasMaxLength(Bounds.Name);
        builder.Property(sheet => sheet.Remarks).HasMaxLength(Bounds.Reason);
        // The form makes its id before there is signal: the same post again hits the first index. Copy 1 exists once a form, and once a try.
        builder.HasIndex(sheet => new { sheet.FormId, sheet.ContentHash }).IsUnique();
        builder.HasIndex(sheet => new { sheet.FormId, sheet.Copy }).IsUnique();
        builder.HasIndex(sheet => new
        {
            sheet.ClassId, sheet.CandidateId, sheet.ChecklistId, sheet.Subject, sheet.Try, sheet.InstructorId, sheet.Copy,
        }).IsUnique();
        builder.HasIndex(sheet => new { sheet.CandidateId, sheet.ScoredOn });
        builder.HasOne<ClassRecord>().WithMany().HasForeignKey(sheet => sheet.ClassId);
        builder.HasOne<Person>().WithMany().HasForeignKey(sheet => sheet.CandidateId);
        builder.HasOne<Person>().WithMany().HasForeignKey(sheet => sheet.InstructorId);
        builder.HasOne<CourseSnapshotRecord>().WithMany().HasForeignKey(sheet => sheet.CourseHash);
        builder.HasMany(sheet => sheet.Observations).WithOne().HasForeignKey(observation => observation.ScoresheetId);
        builder.HasMany(sheet => sheet.UsedKit).WithOne().HasForeignKey(used => used.ScoresheetId);
        builder.HasOne(sheet => sheet.Live).WithOne().HasForeignKey<LiveConditionsRecord>(live => live.ScoresheetId);
        builder.ToTable(table => table.HasCheckConstraint("CK_Scoresheet_NeverOneself", "\"InstructorId\" <> \"CandidateId\""));
    }
}
