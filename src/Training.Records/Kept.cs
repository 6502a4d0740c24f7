using Training.Courses;

namespace Training.Records;

/// <summary>What became of something that was to be kept. A closed family. Phones repeat posts: a repeat is answered with what is stored.</summary>
public abstract record Kept
{
    private Kept()
    {
    }

    /// <summary>Written now.</summary>
    /// <param name="Id">The result, for a sitting or scoresheet; the row itself for everything else.</param>
    public sealed record Stored(Guid Id) : Kept;

    /// <summary>The same id with the same content was there already; nothing was written.</summary>
    /// <param name="Id">As in <see cref="Stored"/>.</param>
    public sealed record AlreadyStored(Guid Id) : Kept;

    /// <summary>The same id (or the same try) came with other content. It is kept beside the first, counts for nothing, and somebody must look.</summary>
    /// <param name="Id">The disputed row.</param>
    /// <param name="Problem">What to tell the sender.</param>
    public sealed record Disputed(Guid Id, Problem Problem) : Kept;

    /// <summary>Nothing was written, for all of these reasons.</summary>
    public sealed record Refused(IReadOnlyList<Problem> Problems) : Kept;
}
