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
    /// The last days of periods for which a milestone is the latest that has come by a day, and may still go out: what <see cref="On"/> can
    /// name on that day ends in one of these spans, and its milestone is the span's. By last day, without overlap.
    /// </summary>
    /// <param name="remind">The scheme's milestones before the last day, in any order.</param>
    /// <param name="day">The day.</param>
    public static IReadOnlyList<MilestoneSpan> StandingSpans(IReadOnlyList<Duration> remind, DateOnly day) =>
        Spans(day.AddDays(-DaysLate), LastExpiry(remind, day), expiresOn => Milestones(remind, expiresOn)
            .Where(milestone => milestone.Of(expiresOn) <= day).Cast<Milestone?>().LastOrDefault());

    /// <summary>
    /// The last days of periods of which a milestone falls due after a day, through another; where several do, the first of them names the
    /// span. What <see cref="Ahead"/> can list ends in one of these spans. By last day, without overlap.
    /// </summary>
    /// <param name="remind">The scheme's milestones before the last day, in any order.</param>
    /// <param name="after">The day before the first that is asked for.</param>
    /// <param name="through">The last day that is asked for.</param>
    public static IReadOnlyList<MilestoneSpan> ComingSpans(IReadOnlyList<Duration> remind, DateOnly after, DateOnly through) =>
        Spans(after.AddDays(-1), LastExpiry(remind, through), expiresOn => Milestones(remind, expiresOn)
            .Where(milestone => milestone.Of(expiresOn) is var dueOn && dueOn > after && dueOn <= through).Cast<Milestone?>().FirstOrDefault());

    // No milestone of a period that ends after this day has come. Some that end before it have none either.
    private static DateOnly LastExpiry(IReadOnlyList<Duration> remind, DateOnly day) =>
        // Counting forward and counting back differ where months clamp: from 28 February a month on is 28 March, from 31 March a month back too.
        remind.Select(before => before.After(day)).Append(day).Max().AddDays(MostClamped);

    private static List<MilestoneSpan> Spans(DateOnly from, DateOnly through, Func<DateOnly, Milestone?> find)
    {
        var spans = new List<MilestoneSpan>();
        for (var day = from; day <= through; day = day.AddDays(1))
        {
            if (find(day) is not { } milestone) continue;
            if (spans.Count > 0 && spans[^1] is { } last && last.Milestone == milestone && last.Through.AddDays(1) == day) spans[^1] = last with { Through = day };
            else spans.Add(new(milestone, day, day));
        }

        return spans;
    }

    // By their days; of two on one day, one is enough.
    private static IEnumerable<Milestone> Milestones(IReadOnlyList<Duration> remind, DateOnly expiresOn) =>
        remind.Select(before => new Milestone(before)).Append(Milestone.DayAfter)
            .DistinctBy(milestone => milestone.Of(expiresOn))
            .OrderBy(milestone => milestone.Of(expiresOn));

    // Every milestone of the period that counts on the day, by its date; none where the holder is owed nothing on that day.
    private static IEnumerable<Reminder> Owed(HeldCertification held, IReadOnlyList<Duration> remind, DateOnly day)
    {
        if (Standings.On(held, day) is null or Standing.Withdrawn or Standing.Suspended) return [];
        var period = Standings.FindPeriod(held, day)!; // not null: it has a standing
        return Milestones(remind, period.ExpiresOn)
            .Select(milestone => new Reminder(held.PersonId, held.SchemeId, period.Number, milestone, milestone.Of(period.ExpiresOn), period.ExpiresOn))
            // On the first day the holder has just been told.
            .Where(reminder => reminder.DueOn > period.StartsOn);
    }

    private static DateOnly? LastDay(HeldCertification held, DateOnly day) => Standings.ExpiresOn(held, day)?.AddDays(DaysLate);
}
