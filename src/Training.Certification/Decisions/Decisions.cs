using System.Diagnostics;
using Training.Courses;

namespace Training.Certification;

/// <summary>Decides whether a person is certified under a scheme, on a day, and until when.</summary>
/// <remarks>Rule: docs/rules.md, "Decisions", "Separation of hats" and "Renewal".</remarks>
public static class Decisions
{
    /// <summary>Grants, renews, or says "not yet" with all reasons. The same arguments give the same decision for ever.</summary>
    /// <param name="file">Everything that it may rest on. What is dated after <paramref name="on"/> does not exist yet.</param>
    /// <param name="decider">The published rule, or a named lead.</param>
    /// <param name="on">The day of the decision, in the zone that is kept with it.</param>
    /// <exception cref="ArgumentException">
    /// The caller mixed up records: somebody else's evidence, teaching or certification, a result or a scheme twice, periods that
    /// are not one chain, or a certification scheme without separation of hats.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A later decision about the same certification exists already.</exception>
    public static Decision Decide(CaseFile file, Decider decider, DateOnly on)
    {
        ThrowIfMixedUp(file);
        var held = file.Held.FirstOrDefault(certification => certification.SchemeId == file.Scheme.Id);
        if (held is not null) ArgumentOutOfRangeException.ThrowIfLessThan(on, held.Periods[^1].DecidedOn);

        var renewed = held is null ? null : FindRenewed(held, on);
        var route = renewed is null ? Route.Grant : Route.Renewal;
        var findings = FindEvidence(file, decider, on, renewed);
        List<DecisionReason> reasons =
        [
            .. ReasonsOfTheDay(file.Scheme, held, renewed, on),
            .. findings.SelectMany(finding => finding.Reasons),
            .. ReasonsOfTheDecider(file, decider, on, findings),
        ];
        if (reasons.Count > 0) return new Decision.NotYet(route, reasons);

        return new Decision.Granted(
            route,
            OpenPeriod(file.Scheme, held, renewed, on),
            // A pass may answer a practical and count as practice besides; it is rested on once.
            [.. findings.Select(finding => finding.ResultId).OfType<Guid>().Distinct()],
            [.. findings.Select(finding => finding.Exception).OfType<SeparationException>().Distinct()]);
    }

    /// <summary>
    /// "Not yet" because a lead says so: the rules' own reasons, where there are any, and the lead's. A lead who may not decide may not
    /// refuse either: then the reasons name the hat in the way, and <see cref="DecisionReason.RefusedByLead"/> is not among them.
    /// </summary>
    /// <param name="file">As for <see cref="Decide"/>.</param>
    /// <param name="lead">Who refuses.</param>
    /// <param name="on">As for <see cref="Decide"/>.</param>
    /// <param name="reason">What the lead wrote; not blank.</param>
    /// <exception cref="ArgumentException">As for <see cref="Decide"/>, or a blank reason.</exception>
    /// <exception cref="ArgumentOutOfRangeException">As for <see cref="Decide"/>.</exception>
    public static Decision.NotYet Refuse(CaseFile file, Decider.Lead lead, DateOnly on, string reason)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(reason);
        var (route, reasons) = Decide(file, lead, on) switch
        {
            Decision.Granted granted => (granted.Route, []),
            Decision.NotYet notYet => (notYet.Route, notYet.Reasons),
            _ => throw new UnreachableException(),
        };
        return reasons.Any(found => found is DecisionReason.DeciderNotIndependent)
            ? new(route, reasons)
            : new(route, [.. reasons, new DecisionReason.RefusedByLead(reason)]);
    }

    /// <summary>
    /// Whether only a lead is missing: everything else is there, or all that is in the way is a scorer who taught, for whom a lead
    /// may write a reason. Never for a certificate of training, which the rule grants.
    /// </summary>
    /// <exception cref="ArgumentException">As for <see cref="Decide"/>.</exception>
    /// <exception cref="ArgumentOutOfRangeException">As for <see cref="Decide"/>.</exception>
    public static bool AwaitsLead(CaseFile file, DateOnly on) =>
        file.Scheme.Kind == SchemeKind.Certification
        && Decide(file, new Decider.Rule(), on) is Decision.NotYet notYet
        && notYet.Reasons.All(reason => reason is DecisionReason.LeadRequired or DecisionReason.ScorerTaught);

    /// <summary>The period that the renewal route would renew; null where the grant's requirements are asked.</summary>
    internal static Period? FindRenewed(HeldCertification held, DateOnly on)
    {
        var last = held.Periods[^1];
        return on > last.GraceEndsOn || Standings.IsWithdrawn(held, on) ? null : last;
    }

    private static IReadOnlyList<RequirementFinding> FindEvidence(CaseFile file, Decider decider, DateOnly on, Period? renewed)
    {
        // Before the window opens no pass can be dated within it, so that asking for one would only repeat "too early".
        if (renewed is not null && on < renewed.WindowOpensOn) return [];
        var search = new EvidenceSearch(file, decider, on, renewed?.WindowOpensOn);
        var requirements = renewed is null ? file.Scheme.Grant : file.Scheme.Renewal;
        return [.. requirements.SelectMany(search.Find)];
    }

    private static IEnumerable<DecisionReason> ReasonsOfTheDay(Scheme scheme, HeldCertification? held, Period? renewed, DateOnly on)
    {
        if (on < scheme.EffectiveFrom) yield return new DecisionReason.RulesNotInForce(scheme.EffectiveFrom);
        if (held is not null)
        {
            if (Standings.FindSuspension(held, on) is { } suspension) yield return new DecisionReason.WhileSuspended(suspension.From);
            // A period that starts on this day would count as decided before the withdrawal, and be withdrawn at once.
            if (held.Withdrawals.Any(withdrawal => withdrawal.On == on)) yield return new DecisionReason.OnDayOfWithdrawal(on);
        }

        if (renewed is not null && on < renewed.WindowOpensOn) yield return new DecisionReason.TooEarly(renewed.WindowOpensOn);
    }

    private static IEnumerable<DecisionReason> ReasonsOfTheDecider(
        CaseFile file, Decider decider, DateOnly on, IReadOnlyList<RequirementFinding> findings)
    {
        if (decider is not Decider.Lead lead)
        {
            if (file.Scheme.Kind == SchemeKind.Certification) yield return new DecisionReason.LeadRequired();
            yield break;
        }

        if (lead.PersonId == file.PersonId) yield return new DecisionReason.DeciderNotIndependent(lead.PersonId, Hat.Candidate);
        if (file.Scheme.Separation == Separation.None) yield break;
        if (file.TaughtBy.Any(teaching => teaching.InstructorId == lead.PersonId && teaching.On <= on))
            yield return new DecisionReason.DeciderNotIndependent(lead.PersonId, Hat.Taught);
        if (findings.Any(finding => finding.ScorerId == lead.PersonId))
            yield return new DecisionReason.DeciderNotIndependent(lead.PersonId, Hat.Scored);
    }

    private static Period OpenPeriod(Scheme scheme, HeldCertification? held, Period? renewed, DateOnly on)
    {
        // The later of the two: nobody loses days by renewing early, nobody gains days by renewing late.
        var countFrom = renewed is not null && renewed.ExpiresOn > on ? renewed.ExpiresOn : on;
        var number = (held?.Periods.Count ?? 0) + 1;
        return new Period(number, on, on, scheme.Terms.Validity.After(countFrom), scheme.Terms);
    }

    /// <summary>Throws where the caller mixed up records.</summary>
    internal static void ThrowIfMixedUp(CaseFile file)
    {
        if (file.Scheme is { Kind: SchemeKind.Certification, Separation: Separation.None })
            throw new ArgumentException("A certification keeps its hats apart.", nameof(file));
        if (file.Evidence.Any(evidence => evidence.PersonId != file.PersonId))
            throw new ArgumentException("A result of somebody else lies in the file.", nameof(file));
        if (file.TaughtBy.Any(teaching => teaching.PersonId != file.PersonId))
            throw new ArgumentException("A teaching of somebody else lies in the file.", nameof(file));
        if (file.Held.Any(certification => certification.PersonId != file.PersonId))
            throw new ArgumentException("A certification of somebody else lies in the file.", nameof(file));
        if (file.Evidence.DistinctBy(evidence => evidence.ResultId).Count() != file.Evidence.Count)
            throw new ArgumentException("A result lies in the file twice.", nameof(file));
        if (file.Held.DistinctBy(certification => certification.SchemeId, StringComparer.Ordinal).Count() != file.Held.Count)
            throw new ArgumentException("A scheme lies in the file twice.", nameof(file));
        foreach (var certification in file.Held) Standings.ThrowIfBroken(certification);
    }
}
