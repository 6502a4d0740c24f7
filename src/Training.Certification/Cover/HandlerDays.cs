namespace Training.Certification;

/// <summary>Why somebody stops counting at a place. The first that holds, in this order.</summary>
public enum CoverEnd
{
    /// <summary>Two leads withdrew the certification.</summary>
    Withdrawn,

    /// <summary>A lead suspended it.</summary>
    Suspended,

    /// <summary>It passed its last day.</summary>
    Lapses,

    /// <summary>The assignment to the place, or the employment, ended.</summary>
    LeavesPlace,

    /// <summary>Something holds them off handling until it is reviewed.</summary>
    HeldOff,
}

/// <summary>Days in a row on which somebody counts at a place.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="From">The first, included.</param>
/// <param name="Through">The last, included; the last day asked for where they go on counting.</param>
/// <param name="End">Why they do not count on the day after; null where they go on counting.</param>
public sealed record HandlerSpan(Guid PersonId, DateOnly From, DateOnly Through, CoverEnd? End);

/// <summary>Works out on which days somebody counts as a current handler at a place.</summary>
/// <remarks>Rule: docs/rules.md, "Cover". Evaluated only on days on which something can change, so the cost does not grow with the days asked for.</remarks>
public static class HandlerDays
{
    /// <summary>The spans from <paramref name="from"/> through <paramref name="through"/>, in order, none touching the next.</summary>
    /// <param name="held">One certification, as it is known today.</param>
    /// <param name="atPlace">When the person works there: employment and assignment together.</param>
    /// <param name="heldOff">When something holds them off handling.</param>
    /// <param name="from">First day asked for, included.</param>
    /// <param name="through">Last day asked for, included.</param>
    /// <exception cref="ArgumentException">As for <see cref="Standings.On"/>.</exception>
    public static IReadOnlyList<HandlerSpan> Of(
        HeldCertification held, IReadOnlyCollection<DaySpan> atPlace, IReadOnlyCollection<DaySpan> heldOff, DateOnly from, DateOnly through)
    {
        var spans = new List<HandlerSpan>();
        DateOnly? since = null;
        foreach (var day in ChangesIn(held, atPlace, heldOff, from, through))
        {
            var end = WhyNot(held, atPlace, heldOff, day);
            if (end is null) since ??= day;
            else if (since is { } first)
            {
                spans.Add(new HandlerSpan(held.PersonId, first, day.AddDays(-1), end));
                since = null;
            }
        }

        if (since is { } open)
        {
            // Only the next day can tell whether the last day asked for is also their last.
            var next = through.AddDays(1);
            spans.Add(new HandlerSpan(held.PersonId, open, through, WhyNot(held, atPlace, heldOff, next)));
        }

        return spans;
    }

    /// <summary>
    /// The certification as it would stand if it were renewed on the day of a class, by the calendar of the period that is renewed; unchanged where no
    /// renewal can be decided on that day. An assumption about a seat, never evidence.
    /// </summary>
    public static HeldCertification IfRenewedOn(HeldCertification held, DateOnly day)
    {
        if (Standings.FindPeriod(held, day) is not { } period || period.Number != held.Periods.Count) return held;
        if (day < period.WindowOpensOn || day > period.GraceEndsOn) return held;
        if (Standings.On(held, day) is Standing.Suspended or Standing.Withdrawn) return held;

        var expiresOn = period.Terms.Validity.After(day > period.ExpiresOn ? day : period.ExpiresOn);
        return held with { Periods = [.. held.Periods, new Period(period.Number + 1, day, day, expiresOn, period.Terms)] };
    }

    private static CoverEnd? WhyNot(HeldCertification held, IReadOnlyCollection<DaySpan> atPlace, IReadOnlyCollection<DaySpan> heldOff, DateOnly day) =>
        Standings.On(held, day) switch
        {
            Standing.Withdrawn => CoverEnd.Withdrawn,
            Standing.Suspended => CoverEnd.Suspended,
            Standing.Lapsed or null => CoverEnd.Lapses,
            Standing.Current or Standing.RenewalDue when !atPlace.Any(span => span.Has(day)) => CoverEnd.LeavesPlace,
            Standing.Current or Standing.RenewalDue when heldOff.Any(span => span.Has(day)) => CoverEnd.HeldOff,
            Standing.Current or Standing.RenewalDue => null,
        };

    private static SortedSet<DateOnly> ChangesIn(
        HeldCertification held, IReadOnlyCollection<DaySpan> atPlace, IReadOnlyCollection<DaySpan> heldOff, DateOnly from, DateOnly through)
    {
        IEnumerable<DateOnly> changes =
        [
            from,
            .. held.Periods.SelectMany(period => new[] { period.StartsOn, period.ExpiresOn.AddDays(1) }),
            .. held.Suspensions.Select(suspension => suspension.From),
            .. held.Suspensions.Select(suspension => suspension.Reinstatement).OfType<Reinstatement>().Select(end => end.On.AddDays(1)),
            .. held.Withdrawals.SelectMany(withdrawal => new[] { withdrawal.On, withdrawal.On.AddDays(1) }),
            .. atPlace.Concat(heldOff).Select(span => span.From),
            .. atPlace.Concat(heldOff).Select(span => span.Through).OfType<DateOnly>().Where(day => day < DateOnly.MaxValue).Select(day => day.AddDays(1)),
        ];
        return [.. changes.Where(day => day >= from && day <= through)];
    }
}
