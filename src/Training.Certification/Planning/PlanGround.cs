namespace Training.Certification;

/// <summary>A problem made ready for questions that are asked many times over.</summary>
internal sealed class PlanGround
{
    private readonly Dictionary<(Guid, Guid), int> minutes = [];
    private readonly ILookup<Guid, PlanCover> coversOf;

    public PlanGround(PlanProblem problem)
    {
        if (problem.Seats < 1 || problem.MostClassesADay < 1) throw new ArgumentException("A class has a seat, and a day bears a class.", nameof(problem));
        Problem = problem;
        Workers = problem.Workers.ToDictionary(worker => worker.WorkerId);
        Instructors = problem.Instructors.ToDictionary(instructor => instructor.InstructorId);
        Hosts = [.. problem.Sites.Where(site => site.Hosts).Select(site => site.SiteId)];
        Days = problem.Days.ToHashSet();
        foreach (var travel in problem.Travels)
        {
            minutes[(travel.SiteId, travel.OtherSiteId)] = travel.Minutes;
            minutes[(travel.OtherSiteId, travel.SiteId)] = travel.Minutes;
        }

        foreach (var site in problem.Sites) minutes[(site.SiteId, site.SiteId)] = 0;
        coversOf = problem.Covers.SelectMany(cover => cover.Handlers.Select(handler => (handler.PersonId, Cover: cover))).ToLookup(one => one.PersonId, one => one.Cover);
    }

    public PlanProblem Problem { get; }

    public IReadOnlyDictionary<Guid, PlanWorker> Workers { get; }

    public IReadOnlyDictionary<Guid, PlanInstructor> Instructors { get; }

    public IReadOnlyList<Guid> Hosts { get; }

    public IReadOnlySet<DateOnly> Days { get; }

    /// <summary>One way; null where the site is out of reach.</summary>
    public int? MinutesTo(PlanWorker worker, Guid siteId) =>
        minutes.TryGetValue((worker.SiteId, siteId), out var needed) && needed <= Problem.MostTravelMinutes ? needed : null;

    /// <summary>Two different people of whom the first is free to teach and the second to score, whatever else is planned.</summary>
    public IEnumerable<(PlanInstructor Teacher, PlanInstructor Scorer)> PairsOn(DateOnly day) =>
        from teacher in Problem.Instructors
        where teacher.TeachDays.Contains(day)
        from scorer in Problem.Instructors
        where scorer.InstructorId != teacher.InstructorId && scorer.ScoreDays.Contains(day)
        select (teacher, scorer);

    /// <summary>At most so many classes have a teacher and a scorer of their own on a day.</summary>
    public int MostPairsOn(DateOnly day)
    {
        var (teach, score, either) = (0, 0, 0);
        foreach (var instructor in Problem.Instructors)
        {
            var (teaches, scores) = (instructor.TeachDays.Contains(day), instructor.ScoreDays.Contains(day));
            if (teaches) teach++;
            if (scores) score++;
            if (teaches || scores) either++;
        }

        return Math.Min(Math.Min(teach, score), either / 2);
    }

    /// <summary>The first place that has fewer than it needs on a day because people of it sit in a class elsewhere; null where there is none.</summary>
    /// <param name="classes">The whole plan: who was seated before a day counts on it.</param>
    /// <param name="day">The day.</param>
    /// <param name="only">Look only at the places where this person counts; null for all.</param>
    public PlanFault.BelowCover? FindBelow(IReadOnlyList<PlannedClass> classes, DateOnly day, Guid? only = null)
    {
        foreach (var cover in only is { } personId ? coversOf[personId] : Problem.Covers)
        {
            var needed = cover.NeededOn(day);
            if (needed == 0) continue;
            var (counted, away) = (0, 0);
            foreach (var handler in cover.Handlers)
            {
                var seat = classes.FirstOrDefault(one => one.WorkerIds.Contains(handler.PersonId));
                if (!handler.CountsOn(day, isRenewed: seat?.Day < day)) continue;
                counted++;
                if (seat?.Day == day && seat.SiteId != cover.SiteId) away++;
            }

            if (away > 0 && counted - away < needed) return new(day, cover.PlaceId, counted - away, needed);
        }

        return null;
    }

    /// <summary>
    /// The first place that would have fewer than it needs if this worker alone were away on a day, although everybody else who could renew before had done so; null where
    /// there is none. Then no plan can send them away on that day.
    /// </summary>
    public PlanCover? FindBelowAtBest(PlanWorker worker, DateOnly day) => coversOf[worker.WorkerId].FirstOrDefault(cover =>
    {
        var counted = cover.Handlers.Where(handler =>
            handler.CountsOn(day, isRenewed: Workers.TryGetValue(handler.PersonId, out var other) && other.OpensOn < day)).ToList();
        return counted.Exists(handler => handler.PersonId == worker.WorkerId) && cover.NeededOn(day) > 0 && counted.Count - 1 < cover.NeededOn(day);
    });
}
