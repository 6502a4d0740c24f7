namespace Training.Certification;

/// <summary>What classes are planned for: one employer's people who need to renew under one scheme.</summary>
/// <param name="Workers">Who needs a seat; each once, at one of <paramref name="Sites"/>.</param>
/// <param name="Days">On which days classes may be held; each once, in order.</param>
/// <param name="Seats">Of every class; at least 1.</param>
/// <param name="MostClassesADay">At all sites together; at least 1.</param>
/// <param name="Instructors">Who may teach and score, and when. Each is at one class a day at most.</param>
/// <param name="Sites">Of the employer.</param>
/// <param name="Travels">Between sites, either way. A pair that is not named is out of reach.</param>
/// <param name="MostTravelMinutes">Nobody travels longer, one way.</param>
/// <param name="Covers">What each place needs, and who counts there.</param>
public sealed record PlanProblem(
    IReadOnlyList<PlanWorker> Workers,
    IReadOnlyList<DateOnly> Days,
    int Seats,
    int MostClassesADay,
    IReadOnlyList<PlanInstructor> Instructors,
    IReadOnlyList<PlanSite> Sites,
    IReadOnlyList<Travel> Travels,
    int MostTravelMinutes,
    IReadOnlyList<PlanCover> Covers);

/// <summary>Somebody who needs a seat.</summary>
/// <param name="WorkerId">Who.</param>
/// <param name="SiteId">Where they work.</param>
/// <param name="OpensOn">First day on which they can sit in a class, included.</param>
/// <param name="ClosesOn">Last such day, included.</param>
public sealed record PlanWorker(Guid WorkerId, Guid SiteId, DateOnly OpensOn, DateOnly ClosesOn);

/// <summary>Somebody who may be put to a class.</summary>
/// <param name="InstructorId">Who.</param>
/// <param name="TeachDays">When they are free and may teach.</param>
/// <param name="ScoreDays">When they are free and may score.</param>
/// <param name="MostClasses">At how many classes of the plan they are at most.</param>
/// <param name="NotScoredIds">Whom they do not score: taught within two years, in conflict, or of a language that is not theirs.</param>
public sealed record PlanInstructor(
    Guid InstructorId, IReadOnlySet<DateOnly> TeachDays, IReadOnlySet<DateOnly> ScoreDays, int MostClasses, IReadOnlySet<Guid> NotScoredIds);

/// <summary>A site.</summary>
/// <param name="SiteId">Which.</param>
/// <param name="Hosts">Whether a class may be held there.</param>
public sealed record PlanSite(Guid SiteId, bool Hosts);

/// <summary>How long it takes from one site to another, one way.</summary>
/// <param name="SiteId">One.</param>
/// <param name="OtherSiteId">The other.</param>
/// <param name="Minutes">By the usual way; at least 0.</param>
public sealed record Travel(Guid SiteId, Guid OtherSiteId, int Minutes);

/// <summary>The cover of a place while people sit in classes.</summary>
/// <param name="PlaceId">The site, or the crew of it.</param>
/// <param name="SiteId">Where the place is.</param>
/// <param name="Needs">The rows of the place.</param>
/// <param name="Handlers">Everybody who counts there on some day, or would once renewed.</param>
public sealed record PlanCover(Guid PlaceId, Guid SiteId, IReadOnlyList<HandlerNeed> Needs, IReadOnlyList<PlanHandler> Handlers)
{
    /// <summary>How many the place needs on a day; 0 where nothing was said.</summary>
    public int NeededOn(DateOnly day) => Needs.Where(need => need.From <= day).MaxBy(need => need.From)?.Handlers ?? 0;
}

/// <summary>Somebody who counts at a place.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="AsHeld">When they count there if they do not renew.</param>
/// <param name="AtPlace">When they work there; once seated they count on these days too, but for <paramref name="HeldOff"/>.</param>
/// <param name="HeldOff">When something holds them off handling.</param>
public sealed record PlanHandler(Guid PersonId, IReadOnlyList<DaySpan> AsHeld, IReadOnlyList<DaySpan> AtPlace, IReadOnlyList<DaySpan> HeldOff)
{
    /// <summary>Whether they count on a day, if they renewed before it or if they did not.</summary>
    public bool CountsOn(DateOnly day, bool isRenewed) =>
        AsHeld.Any(span => span.Has(day)) || (isRenewed && AtPlace.Any(span => span.Has(day)) && !HeldOff.Any(span => span.Has(day)));
}

/// <summary>A class of a plan. One teaches and another scores, since nobody scores whom they taught.</summary>
/// <param name="Day">When.</param>
/// <param name="SiteId">Where.</param>
/// <param name="TeacherId">Who teaches.</param>
/// <param name="ScorerId">Who scores.</param>
/// <param name="WorkerIds">Who sits there, by the end of their windows.</param>
public sealed record PlannedClass(DateOnly Day, Guid SiteId, Guid TeacherId, Guid ScorerId, IReadOnlyList<Guid> WorkerIds);
