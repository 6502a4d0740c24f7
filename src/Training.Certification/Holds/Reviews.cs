namespace Training.Certification;

/// <summary>By when an open review is to be concluded.</summary>
/// <remarks>Rule: docs/rules.md, "Reviews and holds".</remarks>
public static class Reviews
{
    /// <summary>How many days after its first an open review is not yet overdue. Ours: nobody prescribes it, and somebody may be waiting to work.</summary>
    public const int Days = 14;

    /// <summary>The last day on which the review is not overdue.</summary>
    public static DateOnly DueOn(DateOnly openedOn) => openedOn.AddDays(Days);

    /// <summary>Whether a review that is still open on the day is overdue.</summary>
    public static bool IsOverdue(DateOnly openedOn, DateOnly day) => day > DueOn(openedOn);
}
