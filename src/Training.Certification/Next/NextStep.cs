using Training.Courses;

namespace Training.Certification;

/// <summary>What is to be done next about one person's certification under one scheme, and by when. A closed family, without words.</summary>
/// <remarks>Rule: docs/rules.md, "What is to be done next".</remarks>
public abstract record NextStep
{
    private NextStep()
    {
    }

    /// <summary>
    /// How each requirement of the route stands today, in the scheme's order; empty where the requirements are not asked: nothing
    /// is due yet, or a review is awaited.
    /// </summary>
    public IReadOnlyList<RequirementState> Requirements { get; init; } = [];

    /// <summary>Held, and nothing is to be done until the renewal window opens.</summary>
    /// <param name="WindowOpensOn">First day on which a renewal may be decided.</param>
    /// <param name="ExpiresOn">Last day; current through it.</param>
    public sealed record NothingDue(DateOnly WindowOpensOn, DateOnly ExpiresOn) : NextStep;

    /// <summary>Inside the renewal window, and at least one requirement is not met.</summary>
    /// <param name="ExpiresOn">Last day; the anniversary stays where it is renewed by then.</param>
    public sealed record Renew(DateOnly ExpiresOn) : NextStep;

    /// <summary>Lapsed, in grace, and at least one requirement is not met.</summary>
    /// <param name="ExpiresOn">The last day that it was held.</param>
    /// <param name="GraceEndsOn">Last day on which the renewal route is open.</param>
    public sealed record RenewLate(DateOnly ExpiresOn, DateOnly GraceEndsOn) : NextStep;

    /// <summary>Never held, after grace, or withdrawn: the whole grant is asked, and at least one requirement is not met.</summary>
    public sealed record GrantDue : NextStep;

    /// <summary>Every requirement is met: a decision is awaited, for a certification that of an independent lead.</summary>
    /// <param name="Route">Which list of requirements is met.</param>
    /// <param name="From">First day on which it can be decided; today, but on the day of a withdrawal and before the rules are in force.</param>
    /// <param name="Through">Last day on which it can be decided without anything new; null where no requirement ages.</param>
    public sealed record AwaitsDecision(Route Route, DateOnly From, DateOnly? Through) : NextStep;

    /// <summary>A suspension touches today: nothing is granted or renewed.</summary>
    /// <param name="SuspendedOn">First day suspended.</param>
    /// <param name="Deadline">By when it is to be settled.</param>
    /// <param name="ReinstatedOn">The day that ends it, still suspended; null while no reinstatement is recorded.</param>
    public sealed record AwaitsReview(DateOnly SuspendedOn, DateOnly Deadline, DateOnly? ReinstatedOn) : NextStep;
}

/// <summary>How one requirement of a route stands today.</summary>
/// <param name="Requirement">What is asked.</param>
/// <param name="MetUntil">Last day through which it stays met if nothing is added; null where it is not met today.</param>
public sealed record RequirementState(Requirement Requirement, DateOnly? MetUntil)
{
    /// <summary>Whether it is met today.</summary>
    public bool IsMet => MetUntil is not null;
}
