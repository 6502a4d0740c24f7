namespace Training.Certification;

/// <summary>Says why a class is on its day, and why somebody has no seat.</summary>
internal static class PlanReasons
{
    /// <summary>What forbids a seat whatever the others do; null where nothing does.</summary>
    public static Unmet? WhyNever(PlanGround ground, PlanWorker worker)
    {
        var days = ground.Problem.Days.Where(day => day >= worker.OpensOn && day <= worker.ClosesOn).ToList();
        if (days.Count == 0) return new Unmet.NoDay(worker.WorkerId, worker.OpensOn, worker.ClosesOn);
        var sites = ground.Hosts.Where(site => ground.MinutesTo(worker, site) is not null).ToList();
        if (sites.Count == 0) return new Unmet.NoSiteInReach(worker.WorkerId, worker.SiteId);
        var staffed = days.Where(day => ground.PairsOn(day).Any(pair => !pair.Scorer.NotScoredIds.Contains(worker.WorkerId))).ToList();
        if (staffed.Count == 0) return new Unmet.NoInstructors(worker.WorkerId, worker.OpensOn, worker.ClosesOn);

        if (sites.Contains(worker.SiteId)) return null;
        var below = staffed.ConvertAll(day => ground.FindBelowAtBest(worker, day));
        return below.TrueForAll(cover => cover is not null) ? new Unmet.CoverForbids(worker.WorkerId, below[0]!.PlaceId) : null; // not null: asked just before
    }

    /// <summary>Why these, who could be seated alone, have no seat in a plan.</summary>
    public static IEnumerable<Unmet> WhyUnmet(PlanGround ground, IReadOnlyList<PlanWorker> unmet)
    {
        if (unmet.Count == 0) return [];
        AllowedDay[] days = [.. ground.Problem.Days.Select(day => new AllowedDay(day, Math.Min(ground.Problem.MostClassesADay, ground.MostPairsOn(day))))];
        var crowds = FewestClasses.Find([.. ground.Problem.Workers.Select(worker => new SeatWindow(worker.WorkerId, worker.OpensOn, worker.ClosesOn))], days, ground.Problem.Seats)
            .Unseated.OfType<Unseated.Crowded>().ToList();
        return unmet.Select<PlanWorker, Unmet>(worker => crowds.Find(crowd => crowd.CrowdIds.Contains(worker.WorkerId)) is { } crowd
            ? new Unmet.Crowded(worker.WorkerId, crowd.From, crowd.Through, crowd.CrowdIds.Count, crowd.Seats)
            : new Unmet.Outbid(worker.WorkerId, worker.OpensOn, worker.ClosesOn));
    }

    /// <summary>Why a class of a plan is not later.</summary>
    public static IReadOnlyList<DayReason> WhyNotLater(PlanGround ground, IReadOnlyList<PlannedClass> classes, PlannedClass one)
    {
        // A plan that was changed by hand may have empty classes, and people who need no seat any more.
        if (one.WorkerIds.Select(id => ground.Workers.GetValueOrDefault(id)).OfType<PlanWorker>().MinBy(worker => worker.ClosesOn) is not { } first) return [];
        var later = ground.Problem.Days.Where(day => day > one.Day && day <= first.ClosesOn).ToList();
        if (later.Count == 0) return [new DayReason.LastDayOf(first.WorkerId, first.ClosesOn)];

        List<PlannedClass> others = [.. classes.Where(other => other != one)];
        var why = later.ConvertAll(day => (Day: day, Reason: WhyNot(ground, others, one, day)));
        if (why.FindLast(other => other.Reason is null).Day is var free && free != default) return [new DayReason.CouldBeLater(free)];

        var unstaffed = why.FindAll(other => other.Reason is DayReason.NoInstructors).ConvertAll(other => other.Day);
        return
        [
            .. unstaffed.Count == 0 ? Array.Empty<DayReason>() : [new DayReason.NoInstructors(unstaffed[0], unstaffed[^1], unstaffed.Count)],
            .. why.Select(other => other.Reason).Where(reason => reason is not (null or DayReason.NoInstructors)).Take(MostReasons).OfType<DayReason>(),
        ];
    }

    private const int MostReasons = 3;

    /// <summary>What is in the way of the same class on another day; null where nothing is.</summary>
    private static DayReason? WhyNot(PlanGround ground, List<PlannedClass> others, PlannedClass one, DateOnly day)
    {
        var sameDay = others.FindAll(other => other.Day == day);
        if (sameDay.Count >= ground.Problem.MostClassesADay) return new DayReason.DayIsFull(day);
        var busy = sameDay.SelectMany(other => new[] { other.TeacherId, other.ScorerId }).ToHashSet();
        var isStaffed = ground.PairsOn(day).Any(pair =>
            !busy.Contains(pair.Teacher.InstructorId) && !busy.Contains(pair.Scorer.InstructorId) && !one.WorkerIds.Any(pair.Scorer.NotScoredIds.Contains));
        if (!isStaffed) return new DayReason.NoInstructors(day, day, 1);
        return ground.FindBelow([.. others, one with { Day = day }], day) is { } below ? new DayReason.CoverForbids(day, below.PlaceId) : null;
    }
}
