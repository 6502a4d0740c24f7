using System.Text.Json;
using CsCheck;

namespace Training.Certification.Tests;

public sealed class FewestClassesTests
{
    private static readonly DateOnly Zero = Cast.On("2026-01-01");

    public static TheoryData<string, string> Instances
    {
        get
        {
            var instances = new TheoryData<string, string>();
            foreach (var file in new[] { "class-planning.json", "class-planning-200.json" })
            {
                foreach (var instance in Read(file)) instances.Add(file, instance.GetProperty("id").GetString()!);
            }

            return instances;
        }
    }

    [Fact]
    public void All_sixteen_instances_are_there() => Assert.Equal(16, Instances.Count);

    [Theory, MemberData(nameof(Instances))]
    public void The_solved_instances_come_to_their_optimum(string file, string id)
    {
        var instance = Read(file).Single(i => i.GetProperty("id").GetString() == id);
        var problem = Problem.From(instance);

        var plan = problem.Solve();

        problem.AssertHolds(plan);
        var optimum = instance.GetProperty("optimal_classes");
        if (optimum.ValueKind == JsonValueKind.Null) Assert.NotEmpty(plan.Unseated);
        else
        {
            Assert.Empty(plan.Unseated);
            Assert.Equal(optimum.GetInt32(), plan.Classes.Count);
        }
    }

    [Fact]
    public void Nobody_needs_no_class() => Assert.Empty(new Problem([], [new(Day(1), 1)], 5).Solve().Classes);

    [Fact]
    public void A_class_without_a_seat_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Problem([Window(1, 1, 2)], [new(Day(1), 1)], 0).Solve());

    [Theory]
    [InlineData(0, false)]
    [InlineData(1, true)]  // the first day of the window
    [InlineData(3, true)]  // the last one
    [InlineData(4, false)]
    public void Both_ends_of_a_window_are_usable(int day, bool isSeated)
    {
        var plan = new Problem([Window(1, 1, 3)], [new(Day(day), 1)], 5).Solve();

        Assert.Equal(isSeated, plan.Classes.Count == 1);
        if (!isSeated) Assert.Equal([new Unseated.NoDay(Cast.Id(1))], plan.Unseated);
    }

    [Fact]
    public void A_class_waits_for_the_last_day_of_whoever_closes_first() =>
        Assert.Equal(
            [Day(5), Day(14)],
            new Problem([Window(1, 1, 5), Window(2, 6, 14), Window(3, 7, 20)], Days(1, 20, 1), 5).Solve().Classes.Select(c => c.Day));

    [Fact]
    public void Last_days_that_fall_together_are_brought_forward() =>
        Assert.Equal(
            [Day(2), Day(3), Day(4)],
            new Problem(
                [Window(1, 1, 3), Window(2, 2, 3), Window(3, 3, 3), Window(4, 3, 4), Window(5, 4, 4), Window(6, 2, 4)], Days(1, 4, 1), 2)
                .Solve().Classes.Select(c => c.Day));

    [Fact]
    public void A_crowd_is_named_with_its_days_and_seats()
    {
        var plan = new Problem([Window(1, 1, 2), Window(2, 1, 2), Window(3, 1, 2), Window(4, 1, 9)], Days(1, 9, 1), 1).Solve();

        var left = Assert.IsType<Unseated.Crowded>(Assert.Single(plan.Unseated));
        Assert.Equal((Day(1), Day(2), 2), (left.From, left.Through, left.Seats));
        Assert.Equal([Cast.Id(1), Cast.Id(2), Cast.Id(3)], left.CrowdIds.Order());
        Assert.Equal(3, plan.Classes.Count);
    }

    [Fact]
    public void No_plan_of_a_small_case_seats_more_or_takes_fewer_classes() => AnySmall.Sample(
        problem =>
        {
            var plan = problem.Solve();

            problem.AssertHolds(plan);
            var leftOut = plan.Unseated.Select(unseated => unseated.WorkerId).ToHashSet();
            var seated = problem with { Workers = [.. problem.Workers.Where(worker => !leftOut.Contains(worker.WorkerId))] };
            Assert.Equal(seated.Workers.Length, problem.MostSeatedExhaustively());
            Assert.Equal(plan.Classes.Count, seated.FewestExhaustively());
        },
        iter: 3_000);

    [Fact]
    public void The_order_of_what_is_given_changes_nothing() => AnySmall.Sample(
        problem =>
        {
            var turned = problem with { Workers = [.. problem.Workers.Reverse()], Days = [.. problem.Days.Reverse()] };

            Assert.Equal(Told(problem.Solve()), Told(turned.Solve()));
        },
        iter: 500);

    private static readonly Gen<Problem> AnySmall =
        from seats in Gen.Int[1, 3]
        from most in Gen.Int[0, 2].Array[1, 6]
        from workers in Gen.Select(Gen.Int[0, 6], Gen.Int[0, 4]).Array[0, 8]
        select new Problem(
            [.. workers.Select((window, i) => Window(i + 1, window.Item1, window.Item1 + window.Item2))],
            [.. most.Select((count, day) => new AllowedDay(Day(day), count))],
            seats);

    private static string Told(SeatPlan plan) => string.Join(
        '\n', plan.Classes.Select(c => $"{c.Day:O}: {string.Join(' ', c.WorkerIds)}").Concat(plan.Unseated.Select(left => $"{left.WorkerId}")));

    private static DateOnly Day(int number) => Zero.AddDays(number);

    private static SeatWindow Window(int id, int opens, int closes) => new(Cast.Id(id), Day(opens), Day(closes));

    private static AllowedDay[] Days(int from, int through, int most) =>
        [.. Enumerable.Range(from, through - from + 1).Select(day => new AllowedDay(Day(day), most))];

    private static JsonElement.ArrayEnumerator Read(string file) =>
        JsonDocument.Parse(System.IO.File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", file))).RootElement.GetProperty("instances").EnumerateArray();

    /// <summary>A case, how it is solved, and slow second answers that share nothing with the rule.</summary>
    private sealed record Problem(SeatWindow[] Workers, AllowedDay[] Days, int Seats)
    {
        public static Problem From(JsonElement instance)
        {
            SeatWindow[] workers =
            [
                .. instance.GetProperty("workers").EnumerateArray()
                    .Select((worker, i) => Window(i + 1, worker.GetProperty("opens").GetInt32(), worker.GetProperty("expires").GetInt32())),
            ];
            var most = instance.GetProperty("max_classes_per_day") is { ValueKind: JsonValueKind.Number } limit ? limit.GetInt32() : workers.Length;
            IEnumerable<int> days = instance.GetProperty("allowed_days") is { ValueKind: JsonValueKind.Array } listed
                ? listed.EnumerateArray().Select(day => day.GetInt32())
                : Enumerable.Range(0, 1 + (workers.Length == 0 ? 0 : workers.Max(worker => worker.ClosesOn.DayNumber) - Zero.DayNumber));
            return new Problem(workers, [.. days.Select(day => new AllowedDay(Day(day), most))], instance.GetProperty("capacity").GetInt32());
        }

        public SeatPlan Solve() => FewestClasses.Find(Workers, Days, Seats);

        public void AssertHolds(SeatPlan plan)
        {
            var windows = Workers.ToDictionary(worker => worker.WorkerId);
            Assert.Equal(
                Workers.Select(worker => worker.WorkerId).Order(),
                plan.Classes.SelectMany(c => c.WorkerIds).Concat(plan.Unseated.Select(left => left.WorkerId)).Order());
            Assert.All(plan.Classes, c =>
            {
                Assert.InRange(c.WorkerIds.Count, 1, Seats);
                Assert.All(c.WorkerIds, id => Assert.InRange(c.Day, windows[id].OpensOn, windows[id].ClosesOn));
            });
            Assert.All(plan.Classes.GroupBy(c => c.Day), day => Assert.InRange(day.Count(), 1, Days.Single(d => d.Day == day.Key).MostClasses));
            Assert.All(plan.Unseated, left => AssertIsTrue(left, windows));
        }

        /// <summary>The reason alone, without the plan, shows that not everybody can be seated.</summary>
        private void AssertIsTrue(Unseated left, Dictionary<Guid, SeatWindow> windows)
        {
            if (left is not Unseated.Crowded crowded)
            {
                Assert.DoesNotContain(Days, day => day.MostClasses > 0 && day.Day >= windows[left.WorkerId].OpensOn && day.Day <= windows[left.WorkerId].ClosesOn);
                return;
            }

            var usable = crowded.CrowdIds.Select(id => windows[id]).SelectMany(window =>
                Days.Where(day => day.MostClasses > 0 && day.Day >= window.OpensOn && day.Day <= window.ClosesOn)).ToHashSet();
            Assert.All(usable, day => Assert.InRange(day.Day, crowded.From, crowded.Through));
            Assert.Contains(left.WorkerId, crowded.CrowdIds);
            Assert.True(crowded.CrowdIds.Count > usable.Sum(day => Math.Min(day.MostClasses, (Workers.Length + Seats - 1) / Seats)) * Seats);
            Assert.True(crowded.CrowdIds.Count > crowded.Seats);
        }

        public int MostSeatedExhaustively() => Seated([.. Days.Select(day => day.MostClasses)]);

        public int FewestExhaustively()
        {
            var counts = new int[Days.Length];
            var fewest = int.MaxValue;
            do
            {
                if (counts.Sum() < fewest && Seated(counts) == Workers.Length) fewest = counts.Sum();
            }
            while (Next(counts));
            return fewest;
        }

        /// <summary>The next way to put classes on days, like the wheels of a counter; false after the last.</summary>
        private bool Next(int[] counts)
        {
            for (var day = 0; day < counts.Length; day++)
            {
                if (counts[day] < Days[day].MostClasses)
                {
                    counts[day]++;
                    return true;
                }

                counts[day] = 0;
            }

            return false;
        }

        /// <summary>How many find a seat on these days: a largest matching by augmenting paths.</summary>
        private int Seated(int[] classes)
        {
            var seats = classes.SelectMany((count, day) => Enumerable.Repeat(Days[day].Day, count * Seats)).ToArray();
            var takenBy = Enumerable.Repeat(-1, seats.Length).ToArray();
            return Enumerable.Range(0, Workers.Length).Count(worker => Augment(worker, seats, takenBy, new bool[seats.Length]));
        }

        private bool Augment(int worker, DateOnly[] seats, int[] takenBy, bool[] seen)
        {
            for (var seat = 0; seat < seats.Length; seat++)
            {
                if (seen[seat] || seats[seat] < Workers[worker].OpensOn || seats[seat] > Workers[worker].ClosesOn) continue;
                seen[seat] = true;
                if (takenBy[seat] >= 0 && !Augment(takenBy[seat], seats, takenBy, seen)) continue;
                takenBy[seat] = worker;
                return true;
            }

            return false;
        }
    }
}
