using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Scoring;

namespace Training.Records;

/// <summary>What one instructor marked about a recorded demonstration; never changed.</summary>
public sealed class CalibrationSheet
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Of which round.</summary>
    public required Guid RoundId { get; init; }

    /// <summary>Who.</summary>
    public required Guid InstructorId { get; init; }

    /// <summary>What it comes to.</summary>
    public required PracticalOutcome Outcome { get; init; }

    /// <summary>UTC.</summary>
    public required DateTimeOffset SentAt { get; init; }

    /// <summary>One a step that the checklist has.</summary>
    public IList<CalibrationMark> Marks { get; init; } = [];
}

/// <summary>What was seen at one step of a recorded demonstration.</summary>
public sealed class CalibrationMark
{
    /// <summary>On which sheet.</summary>
    public required Guid SheetId { get; init; }

    /// <summary>Which step; once a sheet.</summary>
    public required string StepId { get; init; }

    /// <summary>What was seen.</summary>
    public required Observation Observation { get; init; }
}

internal sealed class CalibrationSheetConfiguration : IEntityTypeConfiguration<CalibrationSheet>
{
    public void Configure(EntityTypeBuilder<CalibrationSheet> builder)
    {
        builder.ToTable("CalibrationSheets");
        builder.Property(sheet => sheet.Id).ValueGeneratedNever();
        // The first marks count: whoever saw the others' could otherwise bring a second opinion.
        builder.HasIndex(sheet => new { sheet.RoundId, sheet.InstructorId }).IsUnique();
        builder.HasOne<CalibrationRound>().WithMany().HasForeignKey(sheet => sheet.RoundId);
        builder.HasOne<Person>().WithMany().HasForeignKey(sheet => sheet.InstructorId);
        builder.HasMany(sheet => sheet.Marks).WithOne().HasForeignKey(mark => mark.SheetId);
    }
}

internal sealed class CalibrationMarkConfiguration : IEntityTypeConfiguration<CalibrationMark>
{
    public void Configure(EntityTypeBuilder<CalibrationMark> builder)
    {
        builder.ToTable("CalibrationMarks");
        builder.HasKey(mark => new { mark.SheetId, mark.StepId });
        builder.Property(mark => mark.StepId).HasMaxLength(Bounds.Id);
    }
}
