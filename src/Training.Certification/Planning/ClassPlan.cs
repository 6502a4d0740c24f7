namespace Training.Certification;

/// <summary>A proposal: which classes, who sits where, why on these days, and what cannot be met.</summary>
/// <param name="Classes">By day.</param>
/// <param name="Unmet">Who has no seat, and why.</param>
/// <param name="LeastClasses">No plan that seats as many people has fewer classes: proven without instructors' other limits, scorers and cover.</param>
/// <param name="LeastUnmet">No plan leaves fewer people without a seat: proven in the same way.</param>
/// <param name="Steps">How many steps the search took.</param>
/// <param name="IsSearchCut">The search was ended by its budget before it had tried all it would have tried.</param>
public sealed record ClassPlan(
    IReadOnlyList<ReasonedClass> Classes, IReadOnlyList<Unmet> Unmet, int LeastClasses, int LeastUnmet, int Steps, bool IsSearchCut)
{
    /// <summary>Whether nobody can do better: neither more people nor fewer classes.</summary>
    public bool IsProvenBest => Classes.Count == LeastClasses && Unmet.Count == LeastUnmet;
}

/// <summary>A class with the reasons of its day.</summary>
/// <param name="Class">Which.</param>
/// <param name="Reasons">Why not later; empty only where nobody sits there who needs it.</param>
public sealed record ReasonedClass(PlannedClass Class, IReadOnlyList<DayReason> Reasons);

/// <summary>A plan as it stands, looked at again.</summary>
/// <param name="Classes">By day.</param>
/// <param name="Unmet">Who has no seat, and why.</param>
/// <param name="Faults">What is wrong; empty where it can be accepted as it is.</param>
public sealed record PlanReview(IReadOnlyList<ReasonedClass> Classes, IReadOnlyList<Unmet> Unmet, IReadOnlyList<PlanFault> Faults);

/// <summary>Why a class is on its day and not later. A closed family.</summary>
public abstract record DayReason
{
    private DayReason()
    {
    }

    /// <summary>It is the last allowed day in the window of somebody who sits there.</summary>
    /// <param name="WorkerId">Whose window ends first.</param>
    /// <param name="ClosesOn">When.</param>
    public sealed record LastDayOf(Guid WorkerId, DateOnly ClosesOn) : DayReason;

    /// <summary>On so many later allowed days, the first and last of which are named, no two instructors are free to teach and to score those who sit there.</summary>
    public sealed record NoInstructors(DateOnly From, DateOnly Through, int Days) : DayReason;

    /// <summary>On that later day the place would be below what it needs.</summary>
    public sealed record CoverForbids(DateOnly Day, Guid PlaceId) : DayReason;

    /// <summary>That later day has as many classes as a day bears.</summary>
    public sealed record DayIsFull(DateOnly Day) : DayReason;

    /// <summary>It could be as late as that day; the plan comes out the same.</summary>
    public sealed record CouldBeLater(DateOnly Day) : DayReason;
}

/// <summary>Somebody without a seat, and which constraint is to blame. A closed family.</summary>
/// <param name="WorkerId">Who.</param>
public abstract record Unmet(Guid WorkerId)
{
    /// <summary>No allowed day lies in their window.</summary>
    public sealed record NoDay(Guid WorkerId, DateOnly OpensOn, DateOnly ClosesOn) : Unmet(WorkerId);

    /// <summary>On no allowed day of their window two instructors are free of whom one may teach and the other may score them.</summary>
    public sealed record NoInstructors(Guid WorkerId, DateOnly OpensOn, DateOnly ClosesOn) : Unmet(WorkerId);

    /// <summary>No site where a class may be held is in reach.</summary>
    public sealed record NoSiteInReach(Guid WorkerId, Guid SiteId) : Unmet(WorkerId);

    /// <summary>On every day that would serve, their place would be below what it needs while they are away.</summary>
    public sealed record CoverForbids(Guid WorkerId, Guid PlaceId) : Unmet(WorkerId);

    /// <summary>More people than seats have all their allowed days from one day through another.</summary>
    public sealed record Crowded(Guid WorkerId, DateOnly From, DateOnly Through, int People, int Seats) : Unmet(WorkerId);

    /// <summary>Nothing alone forbids it: the seats, instructors and cover of the days that would serve went to others.</summary>
    public sealed record Outbid(Guid WorkerId, DateOnly OpensOn, DateOnly ClosesOn) : Unmet(WorkerId);
}

/// <summary>What is wrong with a class of a plan that somebody changed by hand. A closed family.</summary>
/// <param name="Day">Of the class.</param>
public abstract record PlanFault(DateOnly Day)
{
    /// <summary>No class may be held on this day.</summary>
    public sealed record DayNotAllowed(DateOnly Day) : PlanFault(Day);

    /// <summary>More classes than a day bears.</summary>
    public sealed record TooManyClasses(DateOnly Day, int Most) : PlanFault(Day);

    /// <summary>No class may be held at this site.</summary>
    public sealed record NoHost(DateOnly Day, Guid SiteId) : PlanFault(Day);

    /// <summary>More people than seats.</summary>
    public sealed record TooManyPeople(DateOnly Day, int Seats) : PlanFault(Day);

    /// <summary>Nobody sits there.</summary>
    public sealed record Empty(DateOnly Day) : PlanFault(Day);

    /// <summary>The instructor is not free, or may not do it on this day.</summary>
    public sealed record InstructorUnavailable(DateOnly Day, Guid InstructorId, Duty Duty) : PlanFault(Day);

    /// <summary>The instructor is at another class, or does both here.</summary>
    public sealed record InstructorTwice(DateOnly Day, Guid InstructorId) : PlanFault(Day);

    /// <summary>The instructor is at more classes than they take.</summary>
    public sealed record InstructorTooOften(DateOnly Day, Guid InstructorId, int Most) : PlanFault(Day);

    /// <summary>The scorer does not score this worker: taught within two years, in conflict, or of a language that is not theirs.</summary>
    public sealed record ScorerBarred(DateOnly Day, Guid ScorerId, Guid WorkerId) : PlanFault(Day);

    /// <summary>The day lies outside of the worker's window.</summary>
    public sealed record OutsideWindow(DateOnly Day, Guid WorkerId, DateOnly OpensOn, DateOnly ClosesOn) : PlanFault(Day);

    /// <summary>The site is out of the worker's reach.</summary>
    public sealed record TooFar(DateOnly Day, Guid WorkerId, Guid SiteId) : PlanFault(Day);

    /// <summary>The worker sits in another class too.</summary>
    public sealed record SeatedTwice(DateOnly Day, Guid WorkerId) : PlanFault(Day);

    /// <summary>While people are away in class, the place has fewer than it needs.</summary>
    public sealed record BelowCover(DateOnly Day, Guid PlaceId, int Handlers, int Needed) : PlanFault(Day);
}
