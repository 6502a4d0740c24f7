namespace Training.Certification;

/// <summary>Something in the life of a certification: what somebody did to it, or what followed from its dates. A closed family, without words.</summary>
/// <remarks>Rule: docs/rules.md, "The life of a certification".</remarks>
public abstract record LifeEvent
{
    private LifeEvent()
    {
    }

    /// <summary>The first day on which it counts.</summary>
    public required DateOnly On { get; init; }

    /// <summary>The day on which it came into the records; null for what follows from dates, or from a decision that is told by itself.</summary>
    public DateOnly? KeptOn { get; init; }

    /// <summary>A decision that opened a period by the requirements of the grant.</summary>
    /// <param name="By">The period and its decision.</param>
    public sealed record Granted(KeptPeriod By) : LifeEvent;

    /// <summary>A decision that opened a period by the requirements of the renewal.</summary>
    /// <param name="By">The period and its decision.</param>
    public sealed record Renewed(KeptPeriod By) : LifeEvent;

    /// <summary>An early renewal took the place of a period that had days left.</summary>
    /// <param name="Earlier">The period that no longer counts.</param>
    /// <param name="By">The period that counts from that day on.</param>
    public sealed record Superseded(KeptPeriod Earlier, KeptPeriod By) : LifeEvent;

    /// <summary>A renewal can be decided from that day on.</summary>
    /// <param name="Of">Of which period.</param>
    public sealed record WindowOpened(KeptPeriod Of) : LifeEvent;

    /// <summary>The first day after the last.</summary>
    /// <param name="Of">Of which period.</param>
    /// <param name="RenewableThrough">Last day on which grace leaves the renewal route open; null where there is no grace: the whole grant again.</param>
    public sealed record Lapsed(KeptPeriod Of, DateOnly? RenewableThrough) : LifeEvent;

    /// <summary>The first day on which the renewal route is closed.</summary>
    /// <param name="Of">Of which period.</param>
    public sealed record GraceEnded(KeptPeriod Of) : LifeEvent;

    /// <summary>Suspended by a named lead.</summary>
    /// <param name="By">The suspension, its reason and its deadline.</param>
    public sealed record Suspended(KeptSuspension By) : LifeEvent;

    /// <summary>Reinstated by a named lead; that day is still suspended.</summary>
    /// <param name="Of">The suspension and what ended it.</param>
    public sealed record Reinstated(KeptSuspension Of) : LifeEvent;

    /// <summary>Withdrawn by two named leads.</summary>
    /// <param name="By">The withdrawal.</param>
    public sealed record Withdrawn(KeptWithdrawal By) : LifeEvent;
}
