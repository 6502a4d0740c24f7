namespace Training.Certification;

/// <summary>The answer to "was this person current on that day?", with everything that it rests on.</summary>
/// <param name="Day">The day asked for, in the zone of the certification's decisions.</param>
/// <param name="Standing">By everything that is known now; null before the first period started.</param>
/// <param name="Period">The period that the day belongs to, also after its end; null before the first one.</param>
/// <param name="Suspension">The one that touches the day, where the standing is suspended.</param>
/// <param name="Withdrawal">The one in force on the day, where the standing is withdrawn.</param>
/// <param name="KnownThen">The standing by what the records held at the end of that day; null where no period had started by them.</param>
/// <param name="Later">What counts for that day or an earlier one and came into the records afterwards, in the order of <see cref="Life.Of"/>.</param>
public sealed record StandingOnDay(
    DateOnly Day,
    Standing? Standing,
    KeptPeriod? Period,
    KeptSuspension? Suspension,
    KeptWithdrawal? Withdrawal,
    Standing? KnownThen,
    IReadOnlyList<LifeEvent> Later)
{
    /// <summary>Whether the person was current: the window being open takes nothing from it.</summary>
    public bool IsCurrent => Standing is Certification.Standing.Current or Certification.Standing.RenewalDue;

    /// <summary>Whether somebody who looked on that day saw another standing.</summary>
    public bool WasSeenOtherwise => KnownThen != Standing;

    /// <summary>Answers for one day.</summary>
    /// <param name="kept">The certification.</param>
    /// <param name="day">Any day. What is decided for later ones does not matter.</param>
    /// <remarks>Rule: docs/rules.md, "Standing on a day in the past".</remarks>
    /// <exception cref="ArgumentException">As for <see cref="Standings.On"/>.</exception>
    public static StandingOnDay Of(KeptCertification kept, DateOnly day)
    {
        var held = kept.Held;
        var standing = Standings.On(held, day);
        var period = Standings.FindPeriod(held, day);
        var suspension = standing == Certification.Standing.Suspended ? Standings.FindSuspension(held, day) : null;
        return new(
            day,
            standing,
            period is null ? null : kept.Periods[period.Number - 1],
            suspension is null ? null : kept.Suspensions.First(row => ReferenceEquals(row.Suspension, suspension)),
            standing == Certification.Standing.Withdrawn
                ? kept.Withdrawals.First(row => row.Withdrawal.On <= day && row.Withdrawal.On >= period!.StartsOn) // not null: it has a standing
                : null,
            kept.AsKnownOn(day) is { } then ? Standings.On(then.Held, day) : null,
            [.. Life.Of(kept, day).Where(happened => happened.KeptOn > day)]);
    }
}
