using System.Diagnostics;

namespace Training.Certification;

/// <summary>Tells the life of a certification as dated events. Only what somebody did is stored; the rest is worked out here.</summary>
/// <remarks>Rule: docs/rules.md, "The life of a certification".</remarks>
public static class Life
{
    /// <summary>Everything that happened through a day, the oldest first.</summary>
    /// <param name="kept">The certification.</param>
    /// <param name="through">The last day that is told, in the zone of its decisions.</param>
    /// <exception cref="ArgumentException">As for <see cref="Standings.On"/>.</exception>
    public static IReadOnlyList<LifeEvent> Of(KeptCertification kept, DateOnly through)
    {
        Standings.ThrowIfBroken(kept.Held);
        return
        [
            .. kept.Periods.SelectMany((period, index) => OfPeriod(kept, period, kept.Periods.ElementAtOrDefault(index + 1)))
                .Concat(kept.Suspensions.SelectMany(OfSuspension))
                .Concat(kept.Withdrawals.Select(row => new LifeEvent.Withdrawn(row) { On = row.Withdrawal.On, KeptOn = row.KeptOn }))
                .Where(happened => happened.On <= through)
                .OrderBy(happened => happened.On).ThenBy(Rank),
        ];
    }

    private static IEnumerable<LifeEvent> OfPeriod(KeptCertification kept, KeptPeriod row, KeptPeriod? next)
    {
        var period = row.Period;
        yield return row.Route == Route.Grant
            ? new LifeEvent.Granted(row) { On = period.StartsOn, KeptOn = row.KeptOn }
            : new LifeEvent.Renewed(row) { On = period.StartsOn, KeptOn = row.KeptOn };

        // What the dates of a period bring about comes only while it counts: it is not withdrawn, and no later one has started.
        var nextOn = next?.Period.StartsOn ?? DateOnly.MaxValue;
        bool IsWithdrawnBy(DateOnly day) => kept.Withdrawals.Any(w => w.Withdrawal.On >= period.StartsOn && w.Withdrawal.On < nextOn && w.Withdrawal.On <= day);

        var opensOn = period.WindowOpensOn > period.StartsOn ? period.WindowOpensOn : period.StartsOn;
        if (opensOn <= period.ExpiresOn && opensOn <= nextOn && !IsWithdrawnBy(opensOn)) yield return new LifeEvent.WindowOpened(row) { On = opensOn };

        var lapsesOn = period.ExpiresOn.AddDays(1);
        var hasGrace = period.GraceEndsOn > period.ExpiresOn;
        if (lapsesOn < nextOn && !IsWithdrawnBy(lapsesOn))
            yield return new LifeEvent.Lapsed(row, hasGrace ? period.GraceEndsOn : null) { On = lapsesOn };
        var graceEndsOn = period.GraceEndsOn.AddDays(1);
        if (hasGrace && graceEndsOn <= nextOn && !IsWithdrawnBy(graceEndsOn)) yield return new LifeEvent.GraceEnded(row) { On = graceEndsOn };

        if (next is not null && nextOn <= period.ExpiresOn && !IsWithdrawnBy(nextOn))
            yield return new LifeEvent.Superseded(row, next) { On = nextOn };
    }

    private static IEnumerable<LifeEvent> OfSuspension(KeptSuspension row)
    {
        yield return new LifeEvent.Suspended(row) { On = row.Suspension.From, KeptOn = row.KeptOn };
        if (row.Suspension.Reinstatement is { } end) yield return new LifeEvent.Reinstated(row) { On = end.On, KeptOn = row.ReinstatementKeptOn };
    }

    // Of one day, in the order in which they take effect: dates at its beginning, a withdrawal over everything else.
    private static int Rank(LifeEvent happened) => happened switch
    {
        LifeEvent.WindowOpened opened when opened.On > opened.Of.Period.StartsOn => 0,
        LifeEvent.Lapsed => 1,
        LifeEvent.GraceEnded => 2,
        LifeEvent.Granted or LifeEvent.Renewed => 3,
        LifeEvent.Superseded or LifeEvent.WindowOpened => 4,
        LifeEvent.Suspended => 5,
        LifeEvent.Reinstated => 6,
        LifeEvent.Withdrawn => 7,
        _ => throw new UnreachableException(),
    };
}
