namespace Training.Certification;

/// <summary>Checks a plan, proposed or changed by hand, against everything that was asked of it.</summary>
/// <remarks>Rule: docs/rules.md, "Class plans".</remarks>
public static class PlanChecks
{
    /// <summary>All that is wrong, class by class; empty where the plan can be accepted as it is. Who has no seat is no fault.</summary>
    /// <param name="problem">What the plan is for.</param>
    /// <param name="classes">The plan. Workers and sites that the problem does not know are out of every window and reach.</param>
    public static IReadOnlyList<PlanFault> Check(PlanProblem problem, IReadOnlyList<PlannedClass> classes)
    {
        var ground = new PlanGround(problem);
        return
        [
            .. classes.SelectMany(one => OfClass(ground, one)),
            .. classes.SelectMany(one => OfInstructors(ground, classes, one)),
            .. classes.GroupBy(one => one.Day).Where(day => day.Count() > problem.MostClassesADay)
                .Select(day => new PlanFault.TooManyClasses(day.Key, problem.MostClassesADay)),
            .. classes.SelectMany(one => one.WorkerIds.Select(worker => (one.Day, Worker: worker))).GroupBy(seat => seat.Worker)
                .Where(seats => seats.Count() > 1).Select(seats => new PlanFault.SeatedTwice(seats.Max(seat => seat.Day), seats.Key)),
            .. classes.Select(one => one.Day).Distinct().Select(day => ground.FindBelow(classes, day)).OfType<PlanFault>(),
        ];
    }

    private static IEnumerable<PlanFault> OfClass(PlanGround ground, PlannedClass one)
    {
        if (!ground.Days.Contains(one.Day)) yield return new PlanFault.DayNotAllowed(one.Day);
        if (!ground.Hosts.Contains(one.SiteId)) yield return new PlanFault.NoHost(one.Day, one.SiteId);
        if (one.WorkerIds.Count == 0) yield return new PlanFault.Empty(one.Day);
        if (one.WorkerIds.Count > ground.Problem.Seats) yield return new PlanFault.TooManyPeople(one.Day, ground.Problem.Seats);
        foreach (var id in one.WorkerIds)
        {
            var worker = ground.Workers.GetValueOrDefault(id);
            if (worker is null || one.Day < worker.OpensOn || one.Day > worker.ClosesOn)
                yield return new PlanFault.OutsideWindow(one.Day, id, worker?.OpensOn ?? DateOnly.MinValue, worker?.ClosesOn ?? DateOnly.MinValue);
            if (worker is not null && ground.MinutesTo(worker, one.SiteId) is null) yield return new PlanFault.TooFar(one.Day, id, one.SiteId);
            if (ground.Instructors.GetValueOrDefault(one.ScorerId)?.NotScoredIds.Contains(id) == true) yield return new PlanFault.ScorerBarred(one.Day, one.ScorerId, id);
        }
    }

    private static IEnumerable<PlanFault> OfInstructors(PlanGround ground, IReadOnlyList<PlannedClass> classes, PlannedClass one)
    {
        foreach (var (id, duty) in new[] { (one.TeacherId, Duty.Teach), (one.ScorerId, Duty.Score) })
        {
            var instructor = ground.Instructors.GetValueOrDefault(id);
            var days = duty == Duty.Teach ? instructor?.TeachDays : instructor?.ScoreDays;
            if (days?.Contains(one.Day) != true) yield return new PlanFault.InstructorUnavailable(one.Day, id, duty);
            if (instructor is not null && classes.Count(other => other.TeacherId == id || other.ScorerId == id) > instructor.MostClasses)
                yield return new PlanFault.InstructorTooOften(one.Day, id, instructor.MostClasses);
        }

        foreach (var id in new[] { one.TeacherId, one.ScorerId }.Distinct())
        {
            var uses = classes.Where(other => other.Day == one.Day).Sum(other => (other.TeacherId == id ? 1 : 0) + (other.ScorerId == id ? 1 : 0));
            if (uses > 1) yield return new PlanFault.InstructorTwice(one.Day, id);
        }
    }
}
