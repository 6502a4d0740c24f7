namespace Training.Certification;

/// <summary>In which days somebody can renew at a class.</summary>
/// <remarks>Rule: docs/rules.md, "Class plans".</remarks>
public static class SeatWindows
{
    /// <summary>
    /// From the opening of the renewal window through the last day but the margin, or through the end of grace where it has lapsed; both cut to the span that is planned.
    /// Null where nobody is to be planned: the last day lies outside of the span, or it is suspended or withdrawn.
    /// </summary>
    /// <param name="held">The certification as it is known today.</param>
    /// <param name="today">The day it stands on.</param>
    /// <param name="from">First day of the span, included.</param>
    /// <param name="through">Last day of the span, included.</param>
    /// <param name="marginDays">So many days before the last day are kept free for the decision, where the window is long enough.</param>
    public static (DateOnly OpensOn, DateOnly ClosesOn)? Of(HeldCertification held, DateOnly today, DateOnly from, DateOnly through, int marginDays)
    {
        if (Standings.On(held, today) is not (Standing.Current or Standing.RenewalDue or Standing.Lapsed)) return null;
        var period = Standings.FindPeriod(held, today)!; // not null: it has a standing
        var last = today > period.ExpiresOn ? period.GraceEndsOn : period.ExpiresOn;
        if (last < from || last > through) return null;

        var opens = period.WindowOpensOn > from ? period.WindowOpensOn : from;
        var closes = last.AddDays(-marginDays);
        return (opens, closes < opens ? last : closes);
    }
}
