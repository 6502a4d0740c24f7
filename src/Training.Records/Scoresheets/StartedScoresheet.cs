using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>
/// A scoresheet that was started and is not evidence yet. It is signed once a <see cref="ScoresheetRecord"/> has its id as form id; from
/// then on nothing about it changes.
/// </summary>
public sealed class StartedScoresheet : IVersioned
{
    /// <summary>Made by the form that started it: <c>Scoresheet.Id</c>.</summary>
    public required Guid Id { get; init; }

    /// <summary>At which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>Who is assessed; attends the class.</summary>
    public required Guid CandidateId { get; init; }

    /// <summary>Who scores; a scorer of the class, never the candidate.</summary>
    public required Guid InstructorId { get; init; }

    /// <summary>Snapshot that the checklist comes from.</summary>
    public required string CourseHash { get; init; }

    /// <summary>Which checklist.</summary>
    public required string ChecklistId { get; init; }

    /// <summary>Its version.</summary>
    public required string ChecklistVersion { get; init; }

    /// <summary>Model or live snake.</summary>
    public required Subject Subject { get; init; }

    /// <summary>1 for the first try of the day.</summary>
    public required int Try { get; init; }

    /// <summary>The language in which the instructions are read.</summary>
    public required Language Language { get; init; }

    /// <summary>When, UTC.</summary>
    public required DateTimeOffset StartedAt { get; init; }

    /// <summary>When the instructor said that the instructions were read, UTC; null until then.</summary>
    public DateTimeOffset? InstructionsReadAt { get; set; }

    /// <summary>Whether the instructor looked at the candidate's identification.</summary>
    public required bool IsIdentityConfirmed { get; init; }

    /// <summary>Ground, light and weather.</summary>
    public required string Surroundings { get; init; }

    /// <summary>In whole °C, or null.</summary>
    public int? AirTemperature { get; init; }

    /// <summary>Which kit is used.</summary>
    public required string Kit { get; init; }


    /// <summary>Live only.</summary>
    public string? PermitNumber { get; init; }

    /// <summary>Live only.</summary>
    public DateOnly? BitePlanCheckedOn { get; init; }

    /// <summary>Live only, UTC.</summary>
    public DateTimeOffset? CommunicationsTestedAt { get; init; }

    /// <summary>Live only.</summary>
    public Guid? WatcherId { get; init; }

    /// <summary>Live only: the form id of the earlier pass on the model.</summary>
    public Guid? ModelPassId { get; init; }

    /// <summary>Why the instructor scores although they taught the candidate within two years; null where they did not.</summary>
    public string? SeparationReason { get; init; }

    /// <summary>The step at which it was stopped, or null.</summary>
    public string? StoppedAtStep { get; set; }

    /// <inheritdoc/>
    public int Version { get; set; }

    /// <summary>What was seen so far, in no order.</summary>
    public IList<StartedObservation> Observations { get; init; } = [];

    /// <summary>The pieces of kit with the inspections that held at the start.</summary>
    public IList<StartedKit> UsedKit { get; init; } = [];

    /// <summary>The pieces of kit as the pure sheet has them.</summary>
    public IReadOnlyList<UsedKit> ReadKit() => [.. UsedKit.OrderBy(used => used.Position).Select(used => new UsedKit(used.PieceId, used.InspectionId))];

    /// <summary>The live conditions, or null on a model.</summary>
    public LiveConditions? ReadLive() =>
        Subject == Subject.Live
        && this is { PermitNumber: { } permit, BitePlanCheckedOn: { } plan, CommunicationsTestedAt: { } call, WatcherId: { } watcher, ModelPassId: { } pass }
            ? new(permit, plan, call, watcher, pass)
            : null;

    // Everything that the form said, so that the same post is known again; instants of the server are left out.
    internal bool IsStartedAs(StartedScoresheet other) =>
        (ClassId, CandidateId, InstructorId, ChecklistId, Subject, Language, IsIdentityConfirmed)
            == (other.ClassId, other.CandidateId, other.InstructorId, other.ChecklistId, other.Subject, other.Language, other.IsIdentityConfirmed)
        && (Surroundings, AirTemperature, Kit, SeparationReason) == (other.Surroundings, other.AirTemperature, other.Kit, other.SeparationReason)
        && ReadLive() == other.ReadLive();
}

internal sealed class StartedScoresheetConfiguration : IEntityTypeConfiguration<StartedScoresheet>
{
    public void Configure(EntityTypeBuilder<StartedScoresheet> builder)
    {
        builder.Property(sheet => sheet.Id).ValueGeneratedNever();
        builder.Property(sheet => sheet.Version).IsConcurrencyToken();
        builder.Property(sheet => sheet.CourseHash).HasMaxLength(Bounds.Hash);
        builder.Property(sheet => sheet.ChecklistId).HasMaxLength(Bounds.Id);
        builder.Property(sheet => sheet.ChecklistVersion).HasMaxLength(Bounds.Hash);
        builder.Property(sheet => sheet.Surroundings).HasMaxLength(Bounds.Conditions);
        builder.Property(sheet => sheet.Kit).HasMaxLength(Bounds.Conditions);
        builder.Property(sheet => sheet.PermitNumber).HasMaxLength(Bounds.Number);
        builder.Property(sheet => sheet.SeparationReason).HasMaxLength(Bounds.Reason);
        builder.Property(sheet => sheet.StoppedAtStep).HasMaxLength(Bounds.Id);
        builder.HasIndex(sheet => new { sheet.InstructorId, sheet.StartedAt });
        builder.HasOne<ClassRecord>().WithMany().HasForeignKey(sheet => sheet.ClassId);
        builder.HasOne<Person>().WithMany().HasForeignKey(sheet => sheet.CandidateId);
        builder.HasOne<Person>().WithMany().HasForeignKey(sheet => sheet.InstructorId);
        builder.HasOne<Person>().WithMany().HasForeignKey(sheet => sheet.WatcherId);
        builder.HasOne<CourseSnapshotRecord>().WithMany().HasForeignKey(sheet => sheet.CourseHash);
        builder.HasMany(sheet => sheet.UsedKit).WithOne().HasForeignKey(used => used.ScoresheetId);
        builder.HasMany(sheet => sheet.Observations).WithOne().HasForeignKey(observation => observation.ScoresheetId);
        builder.ToTable(table => table.HasCheckConstraint("CK_StartedScoresheet_NeverOneself", "\"InstructorId\" <> \"CandidateId\""));
    }
}
