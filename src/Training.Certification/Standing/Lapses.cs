namespace Training.Certification;

/// <summary>A certification that lapses unless it is renewed.</summary>
/// <param name="PersonId">Whose.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="ExpiresOn">Current through this day, if it stands.</param>
/// <param name="DaysLeft">Days from today to <paramref name="ExpiresOn"/>; 0 on the last day.</param>
/// <param name="Standing">Today's: current, renewal due or suspended; never lapsed or withdrawn.</param>
public sealed record Lapse(Guid PersonId, string SchemeId, DateOnly ExpiresOn, int DaysLeft, Standing Standing);

/// <summary>Lists who lapses by a date.</summary>
public static class Lapses
{
    /// <summary>
    /// Those whose last day lies from <paramref name="today"/> through <paramref name="by"/>, both included; empty where
    /// <paramref name="by"/> lies before today. Ordered by last day, then person, then scheme.
    /// </summary>
    /// <param name="held">Any number of certifications, of any people.</param>
    /// <param name="today">The day that they stand on. What is decided after it is not known yet.</param>
    /// <param name="by">The last day asked for.</param>
    /// <remarks>Rule: docs/rules.md, "Who lapses by a date": somebody renewed beyond it or withdrawn is not listed, somebody suspended is.</remarks>
    /// <exception cref="ArgumentException">As for <see cref="Standings.On"/>.</exception>
    public static IReadOnlyList<Lapse> By(IEnumerable<HeldCertification> held, DateOnly today, DateOnly by) =>
    [
        .. held
            .Select(certification => Find(certification, today, by))
            .OfType<Lapse>()
            .OrderBy(lapse => lapse.ExpiresOn)
            .ThenBy(lapse => lapse.PersonId)
            .ThenBy(lapse => lapse.SchemeId, StringComparer.Ordinal),
    ];

    private static Lapse? Find(HeldCertification held, DateOnly today, DateOnly by)
    {
        if (Standings.ExpiresOn(held, today) is not { } expiresOn || expiresOn < today || expiresOn > by) return null;
        if (Standings.On(held, today) is not { } standing || standing == Standing.Withdrawn) return null;
        return new Lapse(held.PersonId, held.SchemeId, expiresOn, expiresOn.DayNumber - today.DayNumber, standing);
    }
}
