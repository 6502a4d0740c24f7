using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Scoring;

namespace Training.Records;

/// <summary>Who read a quiz out to somebody who does not read it alone.</summary>
public enum ReadingAid
{
    /// <summary>Nobody: read alone.</summary>
    None,

    /// <summary>The voice of the person's own device.</summary>
    Device,

    /// <summary>A person.</summary>
    Person,
}

/// <summary>
/// A sitting from its start on, with the draw stored whole. It stays as it is after the submission: that one is a
/// <see cref="SittingRecord"/> with this id as its form id, and what says that a sitting was submitted is that such a row exists.
/// </summary>
public sealed class StartedSitting
{
    /// <summary>Made by the form that started it; the form id of the submission.</summary>
    public required Guid Id { get; init; }

    /// <summary>Whose.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>Snapshot that the questions come from; what it is shown and graded by, however long it takes.</summary>
    public required string CourseHash { get; init; }

    /// <summary>Which quiz.</summary>
    public required string QuizId { get; init; }

    /// <summary>One more than the person had submitted of this quiz: of two parallel starts only one can have it.</summary>
    public required int Number { get; init; }

    /// <summary>What is shown.</summary>
    public required Draw Draw { get; init; }

    /// <summary>UTC, to the millisecond.</summary>
    public required DateTimeOffset StartedAt { get; init; }

    /// <summary>IANA time zone of the person's site at the start.</summary>
    public required string Zone { get; init; }

    /// <summary>The calendar day of the start in <see cref="Zone"/>: the day that its result will be dated.</summary>
    public required DateOnly TakenOn { get; init; }

    /// <summary>Who read it out, as the person said at the start.</summary>
    public ReadingAid Aid { get; init; }

    /// <summary>Role of the person who reads it out, as typed; null unless <see cref="Aid"/> is a person.</summary>
    public string? ReadBy { get; init; }

    /// <summary>How often it was written to. Counting up holds the row, so that an answer and the submission cannot pass each other.</summary>
    public int Writes { get; init; }
}

/// <summary>Who reads a quiz out.</summary>
/// <param name="Aid">Device, person or nobody.</param>
/// <param name="By">Role of the person; null for the others.</param>
public sealed record ReadOut(ReadingAid Aid, string? By)
{
    /// <summary>Nobody.</summary>
    public static ReadOut Nobody { get; } = new(ReadingAid.None, null);
}

internal sealed class StartedSittingConfiguration : IEntityTypeConfiguration<StartedSitting>
{
    public void Configure(EntityTypeBuilder<StartedSitting> builder)
    {
        builder.Property(sitting => sitting.Id).ValueGeneratedNever();
        builder.Property(sitting => sitting.CourseHash).HasMaxLength(Bounds.Hash);
        builder.Property(sitting => sitting.QuizId).HasMaxLength(Bounds.Id);
        builder.Property(sitting => sitting.Zone).HasMaxLength(Bounds.Zone);
        builder.Property(sitting => sitting.ReadBy).HasMaxLength(Bounds.Name);
        builder.Property(sitting => sitting.Draw).HasConversion<DrawConverter>();
        // This index is the rule: nobody has two open sittings of one quiz.
        builder.HasIndex(sitting => new { sitting.PersonId, sitting.QuizId, sitting.Number }).IsUnique();
        builder.HasOne<Person>().WithMany().HasForeignKey(sitting => sitting.PersonId);
        builder.HasOne<CourseSnapshotRecord>().WithMany().HasForeignKey(sitting => sitting.CourseHash);
    }
}
