using Training.Courses;

namespace Training.Certification;

/// <summary>Works out which reminder a certification's holder is owed on a day. What was sent is for the caller to know.</summary>
/// <remarks>Rule: docs/rules.md, "Reminders".</remarks>
public static class Reminders
{
    /// <summary>How many days after the last day the reminder of the day after may still go out: later it is no news.</summary>
    public const int DaysLate = 30;

    private const int MostClamped = 3;

    /// <summary>
    /// The reminder that stands on a day: that of the latest milestone that has come. After days on which nothing was sent the milestones
    /// before it are passed over. Null where none has come, or none is owed: withdrawn, suspended, renewed, or long lapsed.
    /// </summary>
    /// <param name="held">The certification.</param>
    /// <param name="remind">The scheme's milestones before the last day, in any order.</param>
    /// <param name="day">The day, in the zone of the holder's site.</param>
    /// <exception cref="ArgumentException">As for <see cref="Standings.On"/>.</exception>
    public static Reminder? On(HeldCertification held, IReadOnlyList<Duration> remind, DateOnly day) =>
        day <= LastDay(held, day) ? Owed(held, remind, day).LastOrDefault(reminder => reminder.DueOn <= day) : null;

    /// <summary>
    /// The reminders that fall due after a day, through another, if nothing changes before them; in the order of their days. The one that
    /// stands on <paramref name="after"/> itself is not among them.
    /// </summary>
    /// <param name="held">The certification as it stands on <paramref name="after"/>.</param>
    /// <param name="remind">The scheme's milestones before the last day, in any order.</param>
    /// <param name="after">The day before the first that is asked for.</param>
    /// <param name="through">The last day that is asked for.</param>
    /// <exception cref="ArgumentException">As for <see cref="Standings.On"/>.</exception>
    public static IReadOnlyList<Reminder> Ahead(HeldCertification held, IReadOnlyList<Duration> remind, DateOnly after, DateOnly through) =>
        [.. Owed(held, remind, after).Where(reminder => reminder.DueOn > after && reminder.DueOn <= through)];

    /// <summary>
    /// No milestone of a period that ends after this day has come by <paramref name="day"/>: later periods need not be looked at. Some that
    /// end before it have none either.
    /// </summary>
    /// <param name="remind">All milestones of all schemes that are looked at.</param>
    /// <param name="day">The day.</param>
    public static DateOnly LastExpiry(IEnumerable<Duration> remind, DateOnly day) =>
        // Counting forward and counting back differ where months clamp: from 28 February a month on is 28 March, from 31 March a month back too.
        remind.Select(before => before.After(day)).Append(day).Max().AddDays(MostClamped);

    // Every milestone of the period that counts on the day, by its date; none where the holder is owed nothing on that day.
    private static IEnumerable<Reminder> Owed(HeldCertification held, IReadOnlyList<Duration> remind, DateOnly day)
    {
        if (Standings.On(held, day) is null or Standing.Withdrawn or Standing.Suspended) return [];
        var period = Standings.FindPeriod(held, day)!; // not null: it has a standing
        return remind.Select(before => new Milestone(before)).Append(Milestone.DayAfter)
            .Select(milestone => new Reminder(held.PersonId, held.SchemeId, period.Number, milestone, milestone.Of(period.ExpiresOn), period.ExpiresOn))
            // On the first day the holder has just been told; of two milestones on one day, one is enough.
            .Where(reminder => reminder.DueOn > period.StartsOn)
            .DistinctBy(reminder => reminder.DueOn)
            .OrderBy(reminder => reminder.DueOn);
    }

    private static DateOnly? LastDay(HeldCertification held, DateOnly day) => Standings.ExpiresOn(held, day)?.AddDays(DaysLate);
}
