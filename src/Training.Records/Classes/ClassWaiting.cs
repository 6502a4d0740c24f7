using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace Training.Records;

/// <summary>A person waits for a seat at a full class: first come, first seated. Append-only.</summary>
public sealed class ClassWaiting
{
    /// <summary>Made by the form.</summary>
    public required Guid Id { get; init; }

    /// <summary>Which class.</summary>
    public required Guid ClassId { get; init; }

    /// <summary>Who waits.</summary>
    public required Guid PersonId { get; init; }

    /// <summary>1 for the first time that the person waits for this class, one more for each time after an end.</summary>
    public required int Turn { get; init; }

    /// <summary>Since when, UTC: the order of the list, then <see cref="Id"/>.</summary>
    public required DateTimeOffset AskedAt { get; init; }

    /// <summary>Who asked: the person, who represents their employer, or a programme lead.</summary>
    public required Guid AskedById { get; init; }
}

/// <summary>Somebody no longer waits. Append-only.</summary>
public sealed class ClassWaitingEnd
{
    /// <summary>Of which row.</summary>
    public required Guid WaitingId { get; init; }

    /// <summary>When, UTC; null where they got a seat otherwise than by the list.</summary>
    public required DateTimeOffset? EndedAt { get; init; }

    /// <summary>Who took them off the list; null where they got a seat.</summary>
    public required Guid? EndedById { get; init; }
}

internal sealed class ClassWaitingConfiguration : IEntityTypeConfiguration<ClassWaiting>
{
    public void Configure(EntityTypeBuilder<ClassWaiting> builder)
    {
        builder.ToTable("ClassWaitings");
        builder.Property(row => row.Id).ValueGeneratedNever();
        builder.HasOne<ClassRecord>().WithMany().HasForeignKey(row => row.ClassId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.PersonId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.AskedById);
        // Nobody stands on a list twice.
        builder.HasIndex(row => new { row.ClassId, row.PersonId, row.Turn }).IsUnique();
    }
}

internal sealed class ClassWaitingEndConfiguration : IEntityTypeConfiguration<ClassWaitingEnd>
{
    public void Configure(EntityTypeBuilder<ClassWaitingEnd> builder)
    {
        builder.ToTable("ClassWaitingEnds");
        builder.HasKey(row => row.WaitingId);
        builder.HasOne<ClassWaiting>().WithMany().HasForeignKey(row => row.WaitingId);
        builder.HasOne<Person>().WithMany().HasForeignKey(row => row.EndedById);
    }
}
