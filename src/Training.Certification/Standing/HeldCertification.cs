using Training.Courses;

namespace Training.Certification;

/// <summary>One person's certification under one scheme: a chain of periods, each from one decision, and what leads did to it.</summary>
/// <param name="PersonId">Whose.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="Periods">By number, 1 first; at least one.</param>
/// <param name="Suspensions">In the order of their start.</param>
/// <param name="Withdrawals">In the order of their day.</param>
public sealed record HeldCertification(
    Guid PersonId,
    string SchemeId,
    IReadOnlyList<Period> Periods,
    IReadOnlyList<Suspension> Suspensions,
    IReadOnlyList<Withdrawal> Withdrawals);

/// <summary>One period of a certification.</summary>
/// <param name="Number">1 for the first, without gaps.</param>
/// <param name="DecidedOn">Day of the decision, in the zone kept with it.</param>
/// <param name="StartsOn">First day; the day of the decision.</param>
/// <param name="ExpiresOn">Last day; current through it.</param>
/// <param name="Terms">The scheme's calendar at the decision; a later text of the rules changes no past period.</param>
public sealed record Period(int Number, DateOnly DecidedOn, DateOnly StartsOn, DateOnly ExpiresOn, Terms Terms)
{
    /// <summary>First day on which a renewal may be decided; counted back from <see cref="ExpiresOn"/>.</summary>
    public DateOnly WindowOpensOn => Terms.Window.Before(ExpiresOn);

    /// <summary>Last day on which the renewal route is open; counted from <see cref="ExpiresOn"/>.</summary>
    public DateOnly GraceEndsOn => Terms.Grace.After(ExpiresOn);
}

/// <summary>A suspension by a named lead.</summary>
/// <param name="From">First day suspended.</param>
/// <param name="By">The lead.</param>
/// <param name="Reason">Why.</param>
/// <param name="Deadline">By when it is to be settled: reinstated or withdrawn.</param>
/// <param name="Reinstatement">What ended it, or null while it lasts.</param>
public sealed record Suspension(DateOnly From, Guid By, string Reason, DateOnly Deadline, Reinstatement? Reinstatement);

/// <summary>The end of a suspension.</summary>
/// <param name="On">Day of the reinstatement. That day is still suspended ("a day touched by a suspension is suspended").</param>
/// <param name="By">The lead.</param>
/// <param name="Reason">Why.</param>
public sealed record Reinstatement(DateOnly On, Guid By, string Reason);

/// <summary>A withdrawal: two leads.</summary>
/// <param name="On">First day withdrawn.</param>
/// <param name="By">The lead who proposed it.</param>
/// <param name="ConfirmedBy">Another lead.</param>
/// <param name="Reason">Why.</param>
public sealed record Withdrawal(DateOnly On, Guid By, Guid ConfirmedBy, string Reason);

/// <summary>How a certification stands on a day. Ties: withdrawn over suspended over lapsed over renewal due over current.</summary>
public enum Standing
{
    /// <summary>Valid, and the renewal window is not open.</summary>
    Current,

    /// <summary>Valid, and inside the renewal window.</summary>
    RenewalDue,

    /// <summary>Past its expiry date.</summary>
    Lapsed,

    /// <summary>Suspended by a lead.</summary>
    Suspended,

    /// <summary>Withdrawn by two leads.</summary>
    Withdrawn,
}
