namespace Training.Certification;

/// <summary>Names what is to be done next about a certification. It decides nothing; a page or a mail says it in words.</summary>
/// <remarks>Rule: docs/rules.md, "What is to be done next".</remarks>
public static class NextSteps
{
    /// <summary>The next step for the file's person and scheme.</summary>
    /// <param name="file">As for <see cref="Decisions.Decide"/>: everything that a decision may rest on.</param>
    /// <param name="today">In the zone that a decision of today would keep. A day before the last decision is taken as its day.</param>
    /// <exception cref="ArgumentException">As for <see cref="Decisions.Decide"/>.</exception>
    public static NextStep For(CaseFile file, DateOnly today)
    {
        Decisions.ThrowIfMixedUp(file);
        var held = file.Held.FirstOrDefault(certification => certification.SchemeId == file.Scheme.Id);
        if (held is null) return Ask(file, null, today, today);

        // Where zones differ, a decision can be dated tomorrow as this page sees it. It is made all the same.
        var day = Later(today, held.Periods[^1].DecidedOn);
        // On its own day a withdrawal forbids a decision, and from the next day on it has settled the suspensions before it.
        var opensOn = held.Withdrawals.Any(withdrawal => withdrawal.On == day) ? day.AddDays(1) : day;
        if (Standings.FindSuspension(held, opensOn) is { } suspension)
            return new NextStep.AwaitsReview(suspension.From, suspension.Deadline, suspension.Reinstatement?.On);

        var renewed = Decisions.FindRenewed(held, day);
        return renewed is not null && day < renewed.WindowOpensOn
            ? new NextStep.NothingDue(renewed.WindowOpensOn, renewed.ExpiresOn)
            : Ask(file, renewed, day, opensOn);
    }

    private static NextStep Ask(CaseFile file, Period? renewed, DateOnly day, DateOnly opensOn)
    {
        // The rule itself is nobody: no sheet is the decider's own, as for a lead who is independent.
        var search = new EvidenceSearch(file, new Decider.Rule(), day, renewed?.WindowOpensOn);
        var asked = renewed is null ? file.Scheme.Grant : file.Scheme.Renewal;
        RequirementState[] states = [.. asked.Select(requirement => new RequirementState(requirement, search.FindMetUntil(requirement)))];

        var from = Later(opensOn, file.Scheme.EffectiveFrom);
        var through = FindThrough(states, renewed);
        var isAwaited = states.All(state => state.IsMet) && (through is null || through >= from);
        NextStep step = isAwaited
            ? new NextStep.AwaitsDecision(renewed is null ? Route.Grant : Route.Renewal, from, through)
            : renewed is null ? new NextStep.GrantDue()
            : day <= renewed.ExpiresOn ? new NextStep.Renew(renewed.ExpiresOn)
            : new NextStep.RenewLate(renewed.ExpiresOn, renewed.GraceEndsOn);
        return step with { Requirements = states };
    }

    private static DateOnly? FindThrough(IEnumerable<RequirementState> states, Period? renewed) =>
        states.Select(state => state.MetUntil).Append(renewed?.GraceEndsOn).Min();

    private static DateOnly Later(DateOnly one, DateOnly other) => one > other ? one : other;
}
