namespace Training.Certification;

/// <summary>Somebody who needs a seat.</summary>
/// <param name="WorkerId">Who; unique in what is planned together.</param>
/// <param name="OpensOn">First day on which they can sit in a class, included.</param>
/// <param name="ClosesOn">Last such day, included.</param>
public sealed record SeatWindow(Guid WorkerId, DateOnly OpensOn, DateOnly ClosesOn);

/// <summary>A day on which classes may be held.</summary>
/// <param name="Day">Which; each day once.</param>
/// <param name="MostClasses">How many classes it bears at most; at least 0.</param>
public sealed record AllowedDay(DateOnly Day, int MostClasses);

/// <summary>A class of a plan without places and instructors.</summary>
/// <param name="Day">When.</param>
/// <param name="WorkerIds">Who sits there, earliest end of window first; at least one, at most the seats.</param>
public sealed record SeatedClass(DateOnly Day, IReadOnlyList<Guid> WorkerIds);

/// <summary>Why somebody cannot be seated whatever the plan. A closed family.</summary>
/// <param name="WorkerId">Who.</param>
public abstract record Unseated(Guid WorkerId)
{
    /// <summary>No allowed day lies in their window.</summary>
    public sealed record NoDay(Guid WorkerId) : Unseated(WorkerId);

    /// <summary>More people than seats have all their allowed days from one day through another.</summary>
    /// <param name="WorkerId">Who is left over; another of the crowd could be left over instead.</param>
    /// <param name="From">First day of the crowd.</param>
    /// <param name="Through">Last day of it.</param>
    /// <param name="CrowdIds">All who have only these days, the worker included.</param>
    /// <param name="Seats">How many seats those days bear; fewer than the crowd.</param>
    public sealed record Crowded(Guid WorkerId, DateOnly From, DateOnly Through, IReadOnlyList<Guid> CrowdIds, int Seats) : Unseated(WorkerId);
}

/// <summary>The fewest classes for windows, seats and allowed days.</summary>
/// <param name="Classes">In the order of their days. No plan with fewer classes seats the same people.</param>
/// <param name="Unseated">Who cannot be seated, and why; as few as possible. Empty where everybody sits.</param>
public sealed record SeatPlan(IReadOnlyList<SeatedClass> Classes, IReadOnlyList<Unseated> Unseated);

/// <summary>Finds the fewest classes that seat everybody, exactly.</summary>
/// <remarks>
/// Rule and proof: docs/rules.md, "Fewest classes". In the terms of scheduling: unit jobs with release times and deadlines, batches of bounded
/// size, fewest batches. Cost: slots + workers × log(workers), where a day has as many slots as classes that it bears and anybody could use.
/// </remarks>
public static class FewestClasses
{
    /// <summary>Seats as many as can be, in the fewest classes for them. The same input gives the same plan.</summary>
    /// <param name="workers">In any order, each once.</param>
    /// <param name="days">In any order, each day once.</param>
    /// <param name="seats">Of every class; at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A class without a seat.</exception>
    public static SeatPlan Find(IReadOnlyCollection<SeatWindow> workers, IReadOnlyCollection<AllowedDay> days, int seats)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(seats, 1);
        SeatWindow[] ordered = [.. workers.OrderBy(worker => worker.ClosesOn).ThenBy(worker => worker.OpensOn).ThenBy(worker => worker.WorkerId)];
        var slots = Slots(days, (ordered.Length + seats - 1) / seats);

        var reach = ordered.Select(worker => (First: FirstFrom(slots, worker.OpensOn), Last: FirstFrom(slots, worker.ClosesOn.AddDays(1)) - 1)).ToArray();
        var unseated = new List<Unseated>();
        for (var worker = 0; worker < ordered.Length; worker++)
        {
            if (reach[worker].First > reach[worker].Last) unseated.Add(new Unseated.NoDay(ordered[worker].WorkerId));
        }

        var last = BringForward(ordered, reach, slots, seats, unseated);
        return new SeatPlan(Wait(ordered, reach, last, slots, seats), unseated);
    }

    /// <summary>No day needs more slots than would seat everybody.</summary>
    private static DateOnly[] Slots(IReadOnlyCollection<AllowedDay> days, int most) =>
        [.. days.OrderBy(day => day.Day).SelectMany(day => Enumerable.Repeat(day.Day, Math.Min(day.MostClasses, most)))];

    /// <summary>The first slot on or after a day; the number of slots where there is none.</summary>
    private static int FirstFrom(DateOnly[] slots, DateOnly day)
    {
        var (low, high) = (0, slots.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (slots[middle] < day) low = middle + 1;
            else high = middle;
        }

        return low;
    }

    /// <summary>Step 1. The last slot of each worker such that no slot is the last of more people than it seats; −1 for who cannot be seated.</summary>
    private static int[] BringForward(
        SeatWindow[] workers, (int First, int Last)[] reach, DateOnly[] slots, int seats, List<Unseated> unseated)
    {
        var last = Enumerable.Repeat(-1, workers.Length).ToArray();
        var ending = Enumerable.Range(0, workers.Length).Where(worker => reach[worker].First <= reach[worker].Last).ToLookup(worker => reach[worker].Last);
        var waiting = new PriorityQueue<int, (int, int)>();
        for (var slot = slots.Length - 1; slot >= 0; slot--)
        {
            foreach (var worker in ending[slot]) waiting.Enqueue(worker, (-reach[worker].First, worker));
            for (var seat = 0; seat < seats && waiting.Count > 0; seat++) last[waiting.Dequeue()] = slot;

            while (waiting.TryPeek(out var worker, out _) && reach[worker].First == slot)
            {
                waiting.Dequeue();
                unseated.Add(Crowd(workers, reach, last, worker, slots, seats));
            }
        }

        return last;
    }

    /// <summary>
    /// The crowd around somebody who was pushed out of their window: every slot from their first through the last that any of the crowd reaches is the last slot
    /// of as many people as it seats, and all of them open no earlier than it begins.
    /// </summary>
    private static Unseated.Crowded Crowd(SeatWindow[] workers, (int First, int Last)[] reach, int[] last, int pushedOut, DateOnly[] slots, int seats)
    {
        var (first, through) = (reach[pushedOut].First, reach[pushedOut].Last);
        int[] crowd;
        while (true)
        {
            crowd = [.. Enumerable.Range(0, workers.Length).Where(worker => last[worker] >= first && last[worker] <= through)];
            var furthest = crowd.Max(worker => reach[worker].Last);
            if (furthest <= through) break;
            through = furthest;
        }

        return new(
            workers[pushedOut].WorkerId, slots[first], slots[through],
            [.. crowd.Append(pushedOut).Order().Select(worker => workers[worker].WorkerId)], (through - first + 1) * seats);
    }

    /// <summary>Step 2. A slot becomes a class only where it is the last of somebody not yet seated.</summary>
    private static List<SeatedClass> Wait(SeatWindow[] workers, (int First, int Last)[] reach, int[] last, DateOnly[] slots, int seats)
    {
        var classes = new List<SeatedClass>();
        var opening = Enumerable.Range(0, workers.Length).Where(worker => last[worker] >= 0).ToLookup(worker => reach[worker].First);
        var waiting = new PriorityQueue<int, (int, int)>();
        for (var slot = 0; slot < slots.Length; slot++)
        {
            foreach (var worker in opening[slot]) waiting.Enqueue(worker, (last[worker], worker));
            if (!waiting.TryPeek(out var earliest, out _) || last[earliest] > slot) continue;

            var seated = new List<int>();
            while (seated.Count < seats && waiting.TryDequeue(out var worker, out _)) seated.Add(worker);
            classes.Add(new SeatedClass(slots[slot], [.. seated.Order().Select(worker => workers[worker].WorkerId)]));
        }

        return classes;
    }
}
