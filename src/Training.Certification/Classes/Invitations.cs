namespace Training.Certification;

/// <summary>What somebody is told about a class: that they are expected, or that they are not expected any more.</summary>
/// <param name="Sequence">0 for the first, one more for each that follows: the latest counts (RFC 5545, 3.8.7.4).</param>
/// <param name="IsCancellation">They are not expected any more.</param>
/// <param name="Time">When and where; for a cancellation as it was told before.</param>
public sealed record Invitation(int Sequence, bool IsCancellation, ClassTime Time);

/// <summary>Works out what somebody is to be told about a class. What was told is for the caller to know.</summary>
/// <remarks>Rule: docs/rules.md, "Invitations".</remarks>
public static class Invitations
{
    /// <summary>How many days before a class its people are reminded of it.</summary>
    public const int ReminderDays = 5;

    /// <summary>What is to be told now; null where they know it already, or the day is over.</summary>
    /// <param name="isExpected">They have a seat, or teach or score, and the class is not cancelled.</param>
    /// <param name="time">When and where the class is held as things stand.</param>
    /// <param name="last">What they were told last; null where nothing yet.</param>
    /// <param name="today">The day, in the zone of the site.</param>
    public static Invitation? Owed(bool isExpected, ClassTime time, Invitation? last, DateOnly today)
    {
        if (!isExpected)
        {
            return last is { IsCancellation: false } && last.Time.HeldOn >= today
                ? new(last.Sequence + 1, IsCancellation: true, last.Time)
                : null;
        }

        if (time.HeldOn < today || (last is { IsCancellation: false } && last.Time == time)) return null;
        return new(last is null ? 0 : last.Sequence + 1, IsCancellation: false, time);
    }

    /// <summary>Whether a reminder of the class stands: from <see cref="ReminderDays"/> days before it through the day before it.</summary>
    /// <param name="last">What they were told last.</param>
    /// <param name="toldOn">On which day, in the zone of the site: told on the first of those days or later is reminder enough.</param>
    /// <param name="today">The day, in the zone of the site.</param>
    public static bool IsReminderDue(Invitation last, DateOnly toldOn, DateOnly today)
    {
        var first = last.Time.HeldOn.AddDays(-ReminderDays);
        return !last.IsCancellation && toldOn < first && today >= first && today < last.Time.HeldOn;
    }
}
