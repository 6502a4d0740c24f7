namespace Training.Certification;

/// <summary>The lower bound: the exact core without anything that only makes a plan harder.</summary>
internal sealed class PlanBound
{
    private readonly PlanGround ground;
    private readonly Dictionary<Guid, int> groupOf;
    private readonly Dictionary<DateOnly, int> mostOn;

    public PlanBound(PlanGround ground)
    {
        this.ground = ground;
        groupOf = Groups();
        mostOn = ground.Problem.Days.ToDictionary(day => day, day => Math.Min(ground.Problem.MostClassesADay, ground.MostPairsOn(day)));
    }

    /// <summary>
    /// At least so many of these workers stay without a seat, and at least so many further classes seat the others. Left out: travel within a group of
    /// sites, who may score whom, how many classes an instructor takes, and cover.
    /// </summary>
    /// <param name="workers">Those who are to be seated.</param>
    /// <param name="placed">Classes that are fixed already; they take room on their days.</param>
    public (int Unmet, int Classes) Of(IReadOnlyCollection<PlanWorker> workers, IReadOnlyList<PlannedClass> placed)
    {
        AllowedDay[] days = [.. mostOn.Select(day => new AllowedDay(day.Key, Math.Max(0, day.Value - placed.Count(one => one.Day == day.Key))))];
        var (unmet, classes) = (0, 0);
        // No class seats people of two groups, so what each needs adds up.
        foreach (var group in workers.GroupBy(worker => groupOf.GetValueOrDefault(worker.SiteId, -1)))
        {
            var plan = FewestClasses.Find([.. group.Select(worker => new SeatWindow(worker.WorkerId, worker.OpensOn, worker.ClosesOn))], days, ground.Problem.Seats);
            unmet += plan.Unseated.Count;
            // Others of a crowd could be left out instead, with other classes; what is sure then is the number of seats.
            classes += plan.Unseated.Count == 0 ? plan.Classes.Count : Ceiling(group.Count() - plan.Unseated.Count, ground.Problem.Seats);
        }

        return (unmet, classes);
    }

    /// <summary>Sites are of one group where people of both can sit in one class, or are linked by others that can.</summary>
    private Dictionary<Guid, int> Groups()
    {
        var group = ground.Problem.Sites.Select((site, number) => (site.SiteId, number)).ToDictionary(site => site.SiteId, site => site.number);
        foreach (var host in ground.Hosts)
        {
            var reaching = ground.Problem.Workers.Where(worker => ground.MinutesTo(worker, host) is not null).Select(worker => worker.SiteId).Append(host).Distinct().ToList();
            var joined = reaching.ConvertAll(site => group[site]).ToHashSet();
            foreach (var site in group.Keys.Where(site => joined.Contains(group[site])).ToList()) group[site] = joined.Min();
        }

        return group;
    }

    private static int Ceiling(int people, int seats) => (people + seats - 1) / seats;
}
