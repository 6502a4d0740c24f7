using System.Text.Json;
using CsCheck;
using static Training.Certification.Tests.Cast;

namespace Training.Certification.Tests;

public sealed class ClassPlanningTests
{
    private const int Steps = 500;

    private static readonly DateOnly Zero = On("2026-03-02");
    private static readonly Guid West = Id(500);
    private static readonly Guid East = Id(501);
    private static readonly Guid One = Id(601);
    private static readonly Guid Two = Id(602);

    /// <summary>Two sites 60 minutes apart, one who teaches and one who scores on every day, twelve seats, one class a day.</summary>
    private static PlanProblem Plain(params PlanWorker[] workers) => new(
        workers, [.. Enumerable.Range(0, 30).Select(Day)], 12, 1, [Instructor(One, teaches: true, scores: false), Instructor(Two, teaches: false, scores: true)],
        [new(West, true), new(East, true)], [new(West, East, 60)], 120, []);

    [Fact]
    public void People_of_two_sites_in_reach_share_one_class_on_the_last_day_of_the_first()
    {
        var plan = Propose(Plain(Worker(1, West, 0, 9), Worker(2, East, 5, 20)));

        var one = Assert.Single(plan.Classes);
        Assert.Equal((Day(9), West), (one.Class.Day, one.Class.SiteId));
        Assert.Equal([Id(1), Id(2)], one.Class.WorkerIds);
        Assert.Equal([new DayReason.LastDayOf(Id(1), Day(9))], one.Reasons);
        Assert.True(plan.IsProvenBest);
    }

    [Theory]
    [InlineData(60, 1)]  // exactly the longest way
    [InlineData(59, 2)]
    public void Nobody_travels_longer_than_is_allowed(int most, int classes) =>
        Assert.Equal(classes, Propose(Plain(Worker(1, West, 0, 9), Worker(2, East, 5, 20)) with { MostTravelMinutes = most }).Classes.Count);

    [Fact]
    public void Sites_without_a_known_way_share_no_class_and_the_bound_knows_it()
    {
        var plan = Propose(Plain(Worker(1, West, 0, 9), Worker(2, East, 5, 20)) with { Travels = [] });

        Assert.Equal((2, 2, true), (plan.Classes.Count, plan.LeastClasses, plan.IsProvenBest));
    }

    [Fact]
    public void The_day_follows_the_instructors_and_says_so()
    {
        var problem = Plain(Worker(1, West, 0, 9));
        var plan = Propose(problem with { Instructors = [problem.Instructors[0], problem.Instructors[1] with { ScoreDays = new HashSet<DateOnly> { Day(3) } }] });

        Assert.Equal(Day(3), plan.Classes[0].Class.Day);
        Assert.Equal([new DayReason.NoInstructors(Day(4), Day(9), 6)], plan.Classes[0].Reasons);
    }

    [Fact]
    public void A_scorer_does_not_score_whom_they_may_not()
    {
        var problem = Plain(Worker(1, West, 0, 9));
        var plan = Propose(problem with { Instructors = [problem.Instructors[0], problem.Instructors[1] with { NotScoredIds = new HashSet<Guid> { Id(1) } }] });

        Assert.Equal([new Unmet.NoInstructors(Id(1), Day(0), Day(9))], plan.Unmet);
        Assert.True(plan.IsProvenBest);
    }

    [Fact]
    public void An_instructor_takes_no_more_classes_than_they_said()
    {
        var problem = Plain(Worker(1, West, 0, 3), Worker(2, West, 10, 12));
        var plan = Propose(problem with { Instructors = [problem.Instructors[0] with { MostClasses = 1 }, problem.Instructors[1]] });

        Assert.Equal((1, 1), (plan.Classes.Count, plan.Unmet.Count));
        Assert.IsType<Unmet.Outbid>(plan.Unmet[0]);
    }

    /// <summary>East needs so many and has two; one of them is to sit in a class that only West can hold.</summary>
    private static PlanProblem AwayFromEast(int needs) => Plain(Worker(1, East, 0, 9)) with
    {
        Sites = [new(West, true), new(East, false)],
        Covers = [new(East, East, [new(Day(0), needs)], [Handler(1), Handler(2)])],
    };

    [Theory]
    [InlineData(1, true)]
    [InlineData(2, false)] // while one is away, one is left
    [InlineData(3, false)] // below already: nobody goes away
    public void No_class_takes_a_place_below_what_it_needs(int needs, bool isSeated)
    {
        var plan = Propose(AwayFromEast(needs));

        Assert.Equal(isSeated, plan.Classes.Count == 1);
        if (!isSeated) Assert.Equal([new Unmet.CoverForbids(Id(1), East)], plan.Unmet);
    }

    [Fact]
    public void Who_sits_in_a_class_at_their_own_site_counts_there() =>
        Assert.Single(Propose(AwayFromEast(2) with { Sites = [new(West, true), new(East, true)] }).Classes);

    [Fact]
    public void Who_was_seated_before_counts_on_a_later_class_day()
    {
        // A lapses on day 4 and renews on day 4 at the latest; then B can go away on day 9, although A counts only by that renewal.
        var problem = Plain(Worker(1, East, 0, 4), Worker(2, East, 5, 9)) with
        {
            Sites = [new(West, true), new(East, false)],
            Covers = [new(East, East, [new(Day(5), 1)], [new(Id(1), [new(Day(0), Day(4))], [new(Day(0), null)], []), Handler(2)])],
        };

        Assert.Equal([Day(4), Day(9)], Propose(problem).Classes.Select(one => one.Class.Day));
    }

    [Fact]
    public void Who_is_held_off_handling_does_not_count_although_seated_before()
    {
        var problem = Plain(Worker(1, East, 0, 4), Worker(2, East, 5, 9)) with
        {
            Sites = [new(West, true), new(East, false)],
            Covers = [new(East, East, [new(Day(5), 1)], [new(Id(1), [new(Day(0), Day(4))], [new(Day(0), null)], [new(Day(5), null)]), Handler(2)])],
        };

        Assert.Equal([new Unmet.CoverForbids(Id(2), East)], Propose(problem).Unmet);
    }

    [Fact]
    public void A_crowd_is_to_blame_where_seats_are_too_few()
    {
        var plan = Propose(Plain(Worker(1, West, 3, 3), Worker(2, West, 3, 3), Worker(3, West, 3, 3)) with { Seats = 2 });

        Assert.Equal((2, 1, true), (plan.Classes[0].Class.WorkerIds.Count, plan.LeastUnmet, plan.IsProvenBest));
        Assert.Equal((Day(3), Day(3), 3, 2), Assert.IsType<Unmet.Crowded>(Assert.Single(plan.Unmet)) is var left ? (left.From, left.Through, left.People, left.Seats) : default);
    }

    [Fact]
    public void Somebody_without_an_allowed_day_or_a_site_in_reach_is_told_so()
    {
        var plan = Propose(Plain(Worker(1, West, 40, 50), Worker(2, Id(599), 0, 9)));

        Assert.Equal([new Unmet.NoDay(Id(1), Day(40), Day(50)), new Unmet.NoSiteInReach(Id(2), Id(599))], plan.Unmet);
    }

    [Fact]
    public void Without_anything_on_top_the_search_comes_to_the_proven_optimum_of_the_core() => AnyCore.Sample(
        problem =>
        {
            var core = FewestClasses.Find(
                [.. problem.Workers.Select(worker => new SeatWindow(worker.WorkerId, worker.OpensOn, worker.ClosesOn))],
                [.. problem.Days.Select(day => new AllowedDay(day, 1))], problem.Seats);
            if (core.Unseated.Count > 0) return;

            var plan = Propose(problem, 5_000);

            Assert.Equal((core.Classes.Count, 0, true), (plan.Classes.Count, plan.Unmet.Count, plan.IsProvenBest));
        },
        iter: 400);

    /// <summary>The solved instances of 200 people with one class a day (Data/README.md), with two instructors who are free on every day.</summary>
    [Theory]
    [InlineData("w200_c12_tue_thu_one_a_day", 17)]
    [InlineData("w200_c8_tue_thu_one_a_day", 25)]
    [InlineData("clustered_c8_tue_thu_one_a_day", 38)]
    public void Two_hundred_people_come_to_the_solved_optimum(string id, int optimum)
    {
        var instance = JsonDocument.Parse(System.IO.File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "class-planning-200.json")))
            .RootElement.GetProperty("instances").EnumerateArray().Single(one => one.GetProperty("id").GetString() == id);
        PlanWorker[] workers = [.. instance.GetProperty("workers").EnumerateArray()
            .Select((one, i) => Worker(i + 1000, West, one.GetProperty("opens").GetInt32(), one.GetProperty("expires").GetInt32()))];
        List<DateOnly> days = [.. instance.GetProperty("allowed_days").EnumerateArray().Select(day => Day(day.GetInt32()))];
        var all = days.ToHashSet();

        var plan = Propose(Plain(workers) with
        {
            Days = days, Seats = instance.GetProperty("capacity").GetInt32(),
            Instructors = [new(One, all, new HashSet<DateOnly>(), 100, new HashSet<Guid>()), new(Two, new HashSet<DateOnly>(), all, 100, new HashSet<Guid>())],
        });

        Assert.Equal((optimum, optimum, 0), (plan.LeastClasses, plan.Classes.Count, plan.Unmet.Count));
    }

    [Fact]
    public void A_proposal_has_no_fault_seats_everybody_once_or_says_why_and_lies_at_or_above_its_bound() => AnyProblem.Sample(
        problem =>
        {
            var plan = Propose(problem);
            List<PlannedClass> classes = [.. plan.Classes.Select(one => one.Class)];

            Assert.Empty(PlanChecks.Check(problem, classes));
            Assert.Equal(
                problem.Workers.Select(worker => worker.WorkerId).Order(),
                classes.SelectMany(one => one.WorkerIds).Concat(plan.Unmet.Select(unmet => unmet.WorkerId)).Order());
            Assert.True(plan.LeastUnmet <= plan.Unmet.Count);
            Assert.True(plan.LeastClasses <= plan.Classes.Count);
            Assert.All(plan.Classes, one => Assert.NotEmpty(one.Reasons));
        },
        iter: 1_000);

    /// <summary>Every way to put three workers into classes, judged by the checks alone.</summary>
    [Fact]
    public void The_bound_is_never_above_the_true_optimum_of_small_cases() => AnyTiny.Sample(
        problem =>
        {
            var plan = Propose(problem, 5_000);
            if (BestExhaustively(problem) is not var (unmet, classes)) return;

            Assert.True(plan.LeastUnmet <= unmet, $"{plan.LeastUnmet} {unmet}");
            Assert.True(plan.Unmet.Count >= unmet);
            if (plan.Unmet.Count != unmet) return;
            Assert.True(plan.Classes.Count >= classes);
            Assert.True(plan.LeastClasses <= classes, $"{plan.LeastClasses} {classes}");
        },
        iter: 300);

    [Fact]
    public void The_same_problem_and_budget_give_the_same_plan() => AnyProblem.Sample(
        problem => Assert.Equal(Told(Propose(problem)), Told(Propose(problem))),
        iter: 100);

    [Fact]
    public void When_time_is_up_the_first_whole_plan_is_given()
    {
        var plan = ClassPlanning.Propose(Plain(Worker(1, West, 0, 9), Worker(2, East, 12, 20)) with { Travels = [] }, 0, () => true);

        Assert.Equal((2, 0), (plan.Classes.Count, plan.Unmet.Count));
    }

    public static TheoryData<string, PlannedClass[]> Faulty => new()
    {
        { nameof(PlanFault.DayNotAllowed), [Class(40, West, 1)] },
        { nameof(PlanFault.TooManyClasses), [Class(5, West, 1), Class(5, East, 2)] },
        { nameof(PlanFault.NoHost), [Class(5, Id(599), 1)] },
        { nameof(PlanFault.TooManyPeople), [Class(5, West, 1, 2, 3)] },
        { nameof(PlanFault.Empty), [Class(5, West)] },
        { nameof(PlanFault.InstructorUnavailable), [Class(5, West, 1) with { TeacherId = Two }] },
        { nameof(PlanFault.InstructorTwice), [Class(5, West, 1) with { TeacherId = Two }] },
        { nameof(PlanFault.OutsideWindow), [Class(10, West, 1)] },
        { nameof(PlanFault.OutsideWindow), [Class(5, West, 99)] },
        { nameof(PlanFault.TooFar), [Class(5, Id(599), 1)] },
        { nameof(PlanFault.SeatedTwice), [Class(5, West, 1), Class(6, West, 1)] },
    };

    [Theory, MemberData(nameof(Faulty))]
    public void A_plan_changed_by_hand_is_told_what_is_wrong(string fault, PlannedClass[] classes)
    {
        var problem = Plain(Worker(1, West, 0, 9), Worker(2, West, 0, 9), Worker(3, West, 0, 9)) with { Seats = 2 };

        Assert.Contains(fault, PlanChecks.Check(problem, classes).Select(one => one.GetType().Name));
        Assert.Empty(PlanChecks.Check(problem, [Class(5, West, 1, 2), Class(9, East, 3)]));
    }

    [Fact]
    public void A_change_that_takes_a_place_below_its_need_is_told()
    {
        var faults = PlanChecks.Check(AwayFromEast(2), [Class(5, West, 1)]);

        Assert.Equal([new PlanFault.BelowCover(Day(5), East, 1, 2)], faults);
    }

    [Theory]
    [InlineData("2026-03-31", "2026-04-01", "2026-05-24")] // the window opens on 1 April
    [InlineData("2026-05-10", "2026-05-11", "2026-05-24")] // seven days are kept free
    [InlineData("2026-05-27", "2026-05-28", "2026-05-31")] // too late for the margin: through the last day
    [InlineData("2026-06-01", "2026-06-02", "2026-06-23")] // lapsed: through grace, but the margin
    public void The_window_of_a_seat_is_that_of_the_renewal(string today, string opens, string closes) =>
        Assert.Equal((On(opens), On(closes)), SeatWindows.Of(Held(Period(1, "2025-05-31", "2026-05-31")), On(today), On(today).AddDays(1), On("2026-06-30"), 7));

    [Fact]
    public void Nobody_is_planned_whose_last_day_lies_outside_of_the_span_or_who_is_suspended()
    {
        var held = Held(Period(1, "2025-05-31", "2026-05-31"));

        Assert.Null(SeatWindows.Of(held, On("2026-04-10"), On("2026-04-11"), On("2026-05-30"), 7));
        Assert.NotNull(SeatWindows.Of(held, On("2026-04-10"), On("2026-04-11"), On("2026-05-31"), 7));
        Assert.Null(SeatWindows.Of(held, On("2026-07-01"), On("2026-07-02"), On("2026-12-31"), 7));
        Assert.Null(SeatWindows.Of(held.Suspended("2026-04-01"), On("2026-04-10"), On("2026-04-11"), On("2026-05-31"), 7));
    }

    private static readonly Gen<PlanProblem> AnyCore =
        from seats in Gen.Int[1, 4]
        from windows in Gen.Select(Gen.Int[0, 12], Gen.Int[0, 8]).Array[0, 12]
        select Plain([.. windows.Select((window, i) => Worker(i + 1, West, window.Item1, window.Item1 + window.Item2))]) with { Seats = seats };

    private static readonly Gen<PlanInstructor> AnyInstructor =
        from teach in Gen.Int[0, 9].Array[0, 8]
        from score in Gen.Int[0, 9].Array[0, 8]
        from most in Gen.Int[1, 4]
        from barred in Gen.Int[1, 8].Array[0, 2]
        select new PlanInstructor(Guid.Empty, teach.Select(Day).ToHashSet(), score.Select(Day).ToHashSet(), most, barred.Select(Id).ToHashSet());

    private static Gen<PlanProblem> AnyOf(int workers, int days) =>
        from seats in Gen.Int[1, 3]
        from most in Gen.Int[1, 2]
        from windows in Gen.Select(Gen.Int[0, days - 1], Gen.Int[0, 5], Gen.Bool).Array[0, workers]
        from instructors in AnyInstructor.Array[2, 4]
        from hosts in Gen.Bool.Array[2]
        from isNear in Gen.Bool
        from need in Gen.Int[0, 3]
        select new PlanProblem(
            [.. windows.Select((window, i) => Worker(i + 1, window.Item3 ? West : East, window.Item1, window.Item1 + window.Item2))],
            [.. Enumerable.Range(0, days).Select(Day)], seats, most, [.. instructors.Select((one, i) => one with { InstructorId = Id(600 + i) })],
            [new(West, hosts[0]), new(East, hosts[1])], isNear ? [new(West, East, 60)] : [], 60,
            [
                new(East, East, [new(Day(0), need)], [.. windows.Select((window, i) => (window, i)).Where(one => !one.window.Item3)
                    .Select(one => new PlanHandler(Id(one.i + 1), [new(Day(0), Day(one.window.Item1 + one.window.Item2))], [new(Day(0), null)], []))]),
            ]);

    private static readonly Gen<PlanProblem> AnyProblem = AnyOf(8, 10);

    private static readonly Gen<PlanProblem> AnyTiny = AnyOf(3, 3);

    /// <summary>Null where there are too many ways to try them all.</summary>
    private static (int Unmet, int Classes)? BestExhaustively(PlanProblem problem)
    {
        var options = (from day in problem.Days
                       from site in problem.Sites
                       from teacher in problem.Instructors
                       from scorer in problem.Instructors
                       where teacher != scorer && teacher.TeachDays.Contains(day) && scorer.ScoreDays.Contains(day)
                       select new PlannedClass(day, site.SiteId, teacher.InstructorId, scorer.InstructorId, [])).ToList();
        if (options.Count > 16) return null;
        var choice = new int[problem.Workers.Count];
        var best = (Unmet: problem.Workers.Count, Classes: 0);
        do
        {
            List<PlannedClass> classes = [.. options.Select((option, at) => option with { WorkerIds = [.. problem.Workers.Where((_, i) => choice[i] == at + 1).Select(worker => worker.WorkerId)] })
                .Where(one => one.WorkerIds.Count > 0)];
            var found = (Unmet: choice.Count(one => one == 0), Classes: classes.Count);
            if (found.CompareTo(best) < 0 && PlanChecks.Check(problem, classes).Count == 0) best = found;
        }
        while (Next(choice, options.Count));
        return best;
    }

    /// <summary>The next choice, like the wheels of a counter; false after the last.</summary>
    private static bool Next(int[] choice, int most)
    {
        for (var i = 0; i < choice.Length; i++)
        {
            if (choice[i] < most)
            {
                choice[i]++;
                return true;
            }

            choice[i] = 0;
        }

        return false;
    }

    private static ClassPlan Propose(PlanProblem problem, int steps = Steps) => ClassPlanning.Propose(problem, steps, () => false);

    private static string Told(ClassPlan plan) => string.Join(
        '\n', plan.Classes.Select(one => $"{one.Class.Day:O} {one.Class.SiteId} {one.Class.TeacherId} {one.Class.ScorerId}: {string.Join(' ', one.Class.WorkerIds)}")
            .Concat(plan.Unmet.Select(unmet => $"{unmet}")));

    private static DateOnly Day(int number) => Zero.AddDays(number);

    private static PlanWorker Worker(int id, Guid site, int opens, int closes) => new(Id(id), site, Day(opens), Day(closes));

    private static PlanHandler Handler(int id) => new(Id(id), [new(Day(-100), null)], [new(Day(-100), null)], []);

    private static PlannedClass Class(int day, Guid site, params int[] workers) => new(Day(day), site, One, Two, [.. workers.Select(Id)]);

    private static PlanInstructor Instructor(Guid id, bool teaches, bool scores)
    {
        var all = Enumerable.Range(0, 60).Select(Day).ToHashSet();
        return new(id, teaches ? all : [], scores ? all : [], 100, new HashSet<Guid>());
    }
}
