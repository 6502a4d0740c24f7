namespace Training.Certification;

/// <summary>Works out how a certification stands on a day. Nothing of it is stored: it follows from the periods and what leads did.</summary>
/// <remarks>Rule: docs/rules.md, "Standing" and "Suspension and withdrawal".</remarks>
public static class Standings
{
    /// <summary>The standing on a day, in the zone of the certification's decisions; null before the first period starts.</summary>
    /// <exception cref="ArgumentException">The periods are not one chain: none, a gap in the numbers, or a start out of order.</exception>
    public static Standing? On(HeldCertification held, DateOnly day)
    {
        var period = FindPeriod(held, day);
        if (period is null) return null;
        if (IsWithdrawn(held, day)) return Standing.Withdrawn;
        if (FindSuspension(held, day) is not null) return Standing.Suspended;
        if (day > period.ExpiresOn) return Standing.Lapsed;
        return day >= period.WindowOpensOn ? Standing.RenewalDue : Standing.Current;
    }

    /// <summary>
    /// The last day of the period that a day belongs to, in the past where it has lapsed; null before the first period starts.
    /// Suspension and withdrawal do not move it: whether the certification is current is for <see cref="On"/> to say.
    /// </summary>
    /// <exception cref="ArgumentException">As for <see cref="On"/>.</exception>
    public static DateOnly? ExpiresOn(HeldCertification held, DateOnly day) => FindPeriod(held, day)?.ExpiresOn;

    /// <summary>The period that a day belongs to: the last one that has started, also after its end; null before the first starts.</summary>
    /// <remarks>An early renewal overlaps the period that it renews: from its first day the newer one counts.</remarks>
    /// <exception cref="ArgumentException">As for <see cref="On"/>.</exception>
    public static Period? FindPeriod(HeldCertification held, DateOnly day)
    {
        ThrowIfBroken(held);
        return held.Periods.LastOrDefault(period => period.StartsOn <= day);
    }

    /// <summary>Whether a withdrawal is in force on a day: no later decision has followed it.</summary>
    internal static bool IsWithdrawn(HeldCertification held, DateOnly day) =>
        FindPeriod(held, day) is { } period
        && held.Withdrawals.Any(withdrawal => withdrawal.On <= day && period.StartsOn <= withdrawal.On);

    /// <summary>The suspension that touches a day; the one that started first where there are several.</summary>
    internal static Suspension? FindSuspension(HeldCertification held, DateOnly day) =>
        held.Suspensions.FirstOrDefault(suspension =>
            suspension.From <= day
            && (suspension.Reinstatement is null || day <= suspension.Reinstatement.On)
            // A withdrawal settles the suspension before it; otherwise one left open would hang over a later certification for ever.
            && !held.Withdrawals.Any(withdrawal => suspension.From <= withdrawal.On && withdrawal.On < day));

    /// <summary>Throws where the periods are not one chain.</summary>
    internal static void ThrowIfBroken(HeldCertification held)
    {
        if (held.Periods.Count == 0) throw new ArgumentException("A certification has at least one period.", nameof(held));
        for (var i = 0; i < held.Periods.Count; i++)
        {
            var period = held.Periods[i];
            if (period.Number != i + 1)
                throw new ArgumentException($"Period {period.Number} stands where {i + 1} is expected.", nameof(held));
            if (period.StartsOn != period.DecidedOn)
                throw new ArgumentException($"Period {period.Number} does not start on the day of its decision.", nameof(held));
            if (i > 0 && period.StartsOn < held.Periods[i - 1].StartsOn)
                throw new ArgumentException($"Period {period.Number} starts before the one that it follows.", nameof(held));
        }
    }
}
