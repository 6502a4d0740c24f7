using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using Training.Courses;

namespace Training.Records;

/// <summary>What a candidate said to a signed sheet.</summary>
public enum CandidateWord
{
    /// <summary>They agree with what was written.</summary>
    Agreed,

    /// <summary>They object; that is an appeal.</summary>
    Objected,

    /// <summary>They did not sign; the instructor wrote why.</summary>
    DidNotSign,
}

/// <summary>
/// The candidate's own word, beside a signed sheet and changing nothing of it. A candidate may have no account: it is written on the
/// instructor's device, in the instructor's session, and says so.
/// </summary>
public sealed class CandidateWordRecord
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Which sheet (the row, not the form); one word each.</summary>
    public required Guid ScoresheetId { get; init; }

    /// <summary>What they said.</summary>
    public required CandidateWord Word { get; init; }

    /// <summary>The name that the candidate typed to sign; null where they did not sign.</summary>
    public required string? SignedName { get; init; }

    /// <summary>Why they object, or why they did not sign; null where they agree.</summary>
    public required string? Reason { get; init; }

    /// <summary>Of the sheet that was on the screen.</summary>
    public required string ContentHash { get; init; }

    /// <summary>In which language the screen was.</summary>
    public required Language Language { get; init; }

    /// <summary>In whose session it was written.</summary>
    public required Guid InstructorId { get; init; }

    /// <summary>When it was kept, UTC.</summary>
    public required DateTimeOffset KeptAt { get; init; }
}

internal sealed class CandidateWordRecordConfiguration : IEntityTypeConfiguration<CandidateWordRecord>
{
    public void Configure(EntityTypeBuilder<CandidateWordRecord> builder)
    {
        builder.ToTable("CandidateWords", table => table.HasCheckConstraint(
            "CK_CandidateWord_Signed",
            "(\"Word\" = 'DidNotSign' AND \"SignedName\" IS NULL AND \"Reason\" IS NOT NULL)"
            + " OR (\"Word\" = 'Objected' AND \"SignedName\" IS NOT NULL AND \"Reason\" IS NOT NULL)"
            + " OR (\"Word\" = 'Agreed' AND \"SignedName\" IS NOT NULL AND \"Reason\" IS NULL)"));
        builder.Property(word => word.Id).ValueGeneratedNever();
        builder.Property(word => word.SignedName).HasMaxLength(Bounds.Name);
        builder.Property(word => word.Reason).HasMaxLength(Bounds.Reason);
        builder.Property(word => word.ContentHash).HasMaxLength(Bounds.Hash);
        builder.HasIndex(word => word.ScoresheetId).IsUnique();
        builder.HasOne<ScoresheetRecord>().WithOne().HasForeignKey<CandidateWordRecord>(word => word.ScoresheetId);
        builder.HasOne<Person>().WithMany().HasForeignKey(word => word.InstructorId);
    }
}
