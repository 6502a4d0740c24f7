using Training.Courses;

namespace Training.Certification;

/// <summary>What changed rules mean for one person who was certified by those before.</summary>
/// <param name="Through">Last day of the period, kept by its own terms; the renewal is by the rules in force.</param>
/// <param name="By">Last day for what is asked besides; null where nothing is.</param>
/// <param name="Needs">What is asked besides, in the scheme's order.</param>
public sealed record TransitionState(DateOnly Through, DateOnly? By, IReadOnlyList<TransitionNeed> Needs)
{
    /// <summary>Whether everything that is asked besides was done.</summary>
    public bool IsMet => Needs.All(need => need.IsMet);

    /// <summary>Whether the last day went by before it was done. Nothing follows by itself: leads are told.</summary>
    public bool IsOverdue(DateOnly today) => !IsMet && today > By;

    /// <summary>What the scheme's transition means for the file's person; null where it means nothing.</summary>
    /// <param name="file">As for <see cref="Decisions.Decide"/>.</param>
    /// <param name="today">The day.</param>
    /// <remarks>
    /// Rule: docs/rules.md, "When the rules of a scheme change". It binds a period that was decided before the first day of the new rules, while the
    /// period lasts and is not withdrawn.
    /// </remarks>
    /// <exception cref="ArgumentException">As for <see cref="Decisions.Decide"/>.</exception>
    public static TransitionState? Of(CaseFile file, DateOnly today)
    {
        Decisions.ThrowIfMixedUp(file);
        var (scheme, held) = (file.Scheme, file.Held.FirstOrDefault(certification => certification.SchemeId == file.Scheme.Id));
        if (scheme.Transition is not { } transition || held is null) return null;
        if (Standings.On(held, today) is null or Standing.Withdrawn || Standings.FindPeriod(held, today) is not { } period) return null;
        if (period.DecidedOn >= scheme.EffectiveFrom || today > period.ExpiresOn) return null;
        return new(period.ExpiresOn, transition.By, [.. transition.Also.Select(asked => new TransitionNeed(asked, WasMet(file, transition, asked, today)))]);
    }

    // Met on any day from the first of the new rules through the last one that was given, it stays so: nobody is asked twice.
    private static bool WasMet(CaseFile file, Transition transition, Requirement asked, DateOnly today)
    {
        var last = transition.By is { } by && by < today ? by : today;
        return Days(file).Where(day => day <= last).Any(day => new EvidenceSearch(file, new Decider.Rule(), day, null).FindMetUntil(asked) is not null);
    }

    // Between two of these days nothing becomes met that was not: passes only age, and what is held begins with a period.
    private static IEnumerable<DateOnly> Days(CaseFile file) =>
        file.Evidence.Select(evidence => evidence.On)
            .Concat(file.Held.SelectMany(held => held.Periods.Select(period => period.StartsOn)
                .Concat(held.Suspensions.Select(one => one.Reinstatement?.On.AddDays(1)).OfType<DateOnly>())))
            .Where(day => day > file.Scheme.EffectiveFrom).Append(file.Scheme.EffectiveFrom).Distinct();
}

/// <summary>One thing that a transition asks besides.</summary>
/// <param name="Requirement">What.</param>
/// <param name="IsMet">Whether it was met on a day from the first of the new rules through the last that was given.</param>
public sealed record TransitionNeed(Requirement Requirement, bool IsMet);
