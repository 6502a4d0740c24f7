namespace Training.Certification;

/// <summary>
/// Proposes classes: as few as found, on days, sites and instructors such that everybody renews inside their window and no place drops below its
/// cover on a class day. The answer says how far from the best it can be at most.
/// </summary>
/// <remarks>
/// Rule: docs/rules.md, "Class plans". A search by branch and bound: whoever's window ends first gets a class, the likeliest first, filled by the ends of
/// windows; the bound is the exact core (<see cref="FewestClasses"/>). It knows no clock and no chance: the same problem and budget give the same plan.
/// </remarks>
public static class ClassPlanning
{
    /// <summary>Proposes a plan.</summary>
    /// <param name="problem">What for.</param>
    /// <param name="steps">The budget: how many partial plans are looked at. A first whole plan is always found, whatever the budget.</param>
    /// <param name="isTimeUp">Asked at every step; ends the search once a first plan is found.</param>
    /// <exception cref="ArgumentException">A class without a seat, or no class a day.</exception>
    public static ClassPlan Propose(PlanProblem problem, int steps, Func<bool> isTimeUp)
    {
        var ground = new PlanGround(problem);
        var bound = new PlanBound(ground);
        var alone = problem.Workers.Select(worker => (Worker: worker, Unmet: PlanReasons.WhyNever(ground, worker))).ToList();
        PlanWorker[] workers = [.. alone.Where(one => one.Unmet is null).Select(one => one.Worker)
            .OrderBy(worker => worker.ClosesOn).ThenBy(worker => worker.OpensOn).ThenBy(worker => worker.WorkerId)];

        var (leastUnmet, leastClasses) = bound.Of(workers, []);
        var search = new Search(ground, bound, workers, (leastUnmet, leastClasses), steps, isTimeUp);
        var best = search.Run();

        var never = alone.Select(one => one.Unmet).OfType<Unmet>().ToList();
        if (best.Unmet.Count > leastUnmet) leastClasses = (workers.Length - best.Unmet.Count + problem.Seats - 1) / problem.Seats;
        return new ClassPlan(
            [.. best.Classes.OrderBy(one => one.Day).ThenBy(one => one.SiteId).Select(one => new ReasonedClass(one, PlanReasons.WhyNotLater(ground, best.Classes, one)))],
            [.. never, .. PlanReasons.WhyUnmet(ground, best.Unmet)],
            leastClasses, never.Count + leastUnmet, search.Taken, search.IsCut);
    }

    /// <summary>Looks at a plan again, such as after somebody changed it by hand.</summary>
    /// <param name="problem">What it is for, as things stand now.</param>
    /// <param name="classes">The plan.</param>
    public static PlanReview Review(PlanProblem problem, IReadOnlyList<PlannedClass> classes)
    {
        var ground = new PlanGround(problem);
        var seated = classes.SelectMany(one => one.WorkerIds).ToHashSet();
        var waiting = problem.Workers.Where(worker => !seated.Contains(worker.WorkerId)).ToList();
        var never = waiting.ConvertAll(worker => PlanReasons.WhyNever(ground, worker));
        return new PlanReview(
            [.. classes.OrderBy(one => one.Day).ThenBy(one => one.SiteId).Select(one => new ReasonedClass(one, PlanReasons.WhyNotLater(ground, classes, one)))],
            [.. never.OfType<Unmet>(), .. PlanReasons.WhyUnmet(ground, [.. waiting.Where((_, at) => never[at] is null)])],
            PlanChecks.Check(problem, classes));
    }

    private sealed record Found(IReadOnlyList<PlannedClass> Classes, IReadOnlyList<PlanWorker> Unmet, int Minutes)
    {
        public bool Beats(Found other) => (Unmet.Count, Classes.Count, Minutes).CompareTo((other.Unmet.Count, other.Classes.Count, other.Minutes)) < 0;
    }

    private sealed class Search(
        PlanGround ground, PlanBound bound, PlanWorker[] workers, (int Unmet, int Classes) least, int steps, Func<bool> isTimeUp)
    {
        // Of the classes that a worker could get, the likeliest; what is left out is paid for in the gap that is shown.
        private const int MostBranches = 12;

        private readonly List<PlannedClass> classes = [];
        private readonly List<PlanWorker> unmet = [];
        private readonly HashSet<Guid> done = [];
        private int minutes;
        private bool isOver;
        private Found? best;

        public int Taken { get; private set; }

        public bool IsCut { get; private set; }

        public Found Run()
        {
            Step();
            return best!; // not null: the first dive ends in a whole plan, since whoever finds no class is left out
        }

        private void Step()
        {
            Taken++;
            if (best is not null && (Taken > steps || isTimeUp())) (isOver, IsCut) = (true, true);
            if (isOver) return;
            PlanWorker[] waiting = [.. workers.Where(worker => !done.Contains(worker.WorkerId))];
            if (waiting.Length == 0)
            {
                Keep();
                return;
            }

            if (best is not null && !CanBeat(bound.Of(waiting, classes), best)) return;
            var candidates = Candidates(waiting);
            if (candidates.Count == 0)
            {
                LeaveOut(waiting[0]);
                return;
            }

            foreach (var (candidate, travel) in candidates)
            {
                Place(candidate, travel);
                if (isOver) return;
            }
        }

        private bool CanBeat((int Unmet, int Classes) still, Found than)
        {
            var reach = (unmet.Count + still.Unmet, classes.Count + still.Classes, minutes);
            return reach.CompareTo((than.Unmet.Count, than.Classes.Count, than.Minutes)) < 0;
        }

        private void Keep()
        {
            var found = new Found([.. classes], [.. unmet], minutes);
            if (best is null || found.Beats(best)) best = found;
            // Nothing better exists, and shorter ways are no reason to search on.
            isOver = best.Unmet.Count == least.Unmet && best.Classes.Count == least.Classes && best.Minutes == 0;
        }

        private void LeaveOut(PlanWorker worker)
        {
            unmet.Add(worker);
            done.Add(worker.WorkerId);
            Step();
            done.Remove(worker.WorkerId);
            unmet.RemoveAt(unmet.Count - 1);
        }

        private void Place(PlannedClass candidate, int travel)
        {
            classes.Add(candidate);
            done.UnionWith(candidate.WorkerIds);
            minutes += travel;
            Step();
            minutes -= travel;
            done.ExceptWith(candidate.WorkerIds);
            classes.RemoveAt(classes.Count - 1);
        }

        /// <summary>Classes for whoever's window ends first, the likeliest first: more people, then later, then less travel.</summary>
        private List<(PlannedClass Class, int Minutes)> Candidates(PlanWorker[] waiting)
        {
            var first = waiting[0];
            var found = new List<(PlannedClass Class, int Minutes)>();
            foreach (var day in ground.Problem.Days)
            {
                if (day < first.OpensOn || day > first.ClosesOn) continue;
                var sameDay = classes.Where(one => one.Day == day).ToList();
                if (sameDay.Count >= ground.Problem.MostClassesADay) continue;
                var busy = sameDay.SelectMany(one => new[] { one.TeacherId, one.ScorerId }).ToHashSet();
                var pairs = ground.PairsOn(day).Where(pair => IsFree(pair.Teacher, busy) && IsFree(pair.Scorer, busy)).ToList();
                foreach (var site in ground.Hosts.Where(site => ground.MinutesTo(first, site) is not null))
                    found.AddRange(pairs.Select(pair => Fill(waiting, day, site, pair)).OfType<(PlannedClass, int)>());
            }

            return [.. found.OrderByDescending(one => one.Class.WorkerIds.Count).ThenByDescending(one => one.Class.Day).ThenBy(one => one.Minutes)
                .ThenBy(one => Left(one.Class)).ThenBy(one => one.Class.SiteId).ThenBy(one => one.Class.TeacherId).ThenBy(one => one.Class.ScorerId)
                .Take(MostBranches)];
        }

        private bool IsFree(PlanInstructor instructor, HashSet<Guid> busy) =>
            !busy.Contains(instructor.InstructorId) && Uses(instructor.InstructorId) < instructor.MostClasses;

        private int Uses(Guid instructorId) => classes.Count(one => one.TeacherId == instructorId || one.ScorerId == instructorId);

        /// <summary>What the two could do on other days: whoever can do little else goes first.</summary>
        private int Left(PlannedClass one) => Freedom(one.TeacherId) + Freedom(one.ScorerId);

        private int Freedom(Guid instructorId) =>
            ground.Instructors[instructorId].TeachDays.Count + ground.Instructors[instructorId].ScoreDays.Count;

        /// <summary>The class with the first of the waiting, and whoever else fits, by the ends of windows; null where the first cannot sit there.</summary>
        private (PlannedClass Class, int Minutes)? Fill(PlanWorker[] waiting, DateOnly day, Guid site, (PlanInstructor Teacher, PlanInstructor Scorer) pair)
        {
            var seated = new List<Guid>();
            var one = new PlannedClass(day, site, pair.Teacher.InstructorId, pair.Scorer.InstructorId, seated);
            var travel = 0;
            List<PlannedClass> whole = [.. classes, one];
            foreach (var worker in waiting)
            {
                if (seated.Count == ground.Problem.Seats) break;
                var isFirst = seated.Count == 0;
                if (!isFirst && (day < worker.OpensOn || day > worker.ClosesOn)) continue;
                var way = ground.MinutesTo(worker, site);
                var fits = way is not null && !pair.Scorer.NotScoredIds.Contains(worker.WorkerId);
                if (fits)
                {
                    seated.Add(worker.WorkerId);
                    if (worker.SiteId != site && ground.FindBelow(whole, day, worker.WorkerId) is not null)
                    {
                        seated.RemoveAt(seated.Count - 1);
                        fits = false;
                    }
                }

                if (fits) travel += way ?? 0;
                else if (isFirst) return null;
            }

            return (one, travel);
        }
    }
}
