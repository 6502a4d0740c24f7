using CsCheck;
using Training.Courses;

namespace Training.Scoring.Tests;

public sealed class RetestTests
{
    // The next day at the earliest; after three failures within 30 days the course again.
    private static readonly RetestRules Rules = new(new(1, DurationUnit.Days), 3, new(30, DurationUnit.Days));

    private static readonly DateOnly First = new(2026, 3, 2);

    private static EarlierTry Failed(int after) => new(First.AddDays(after), IsPassed: false);

    private static EarlierTry Passed(int after) => new(First.AddDays(after), IsPassed: true);

    public static TheoryData<EarlierTry[], int?, int, Retest> Days => new()
    {
        { [], null, 0, new Retest.Allowed() },
        { [Failed(0)], null, 0, new Retest.FromDay(First.AddDays(1)) },
        { [Failed(0)], null, 1, new Retest.Allowed() },
        { [Failed(0), Failed(1)], null, 2, new Retest.Allowed() },
        { [Failed(0), Failed(1), Failed(2)], null, 3, new Retest.WhenTakenAgain(First.AddDays(2)) },
        { [Failed(0), Failed(1), Failed(30)], null, 31, new Retest.WhenTakenAgain(First.AddDays(30)) },   // the 30th day back is within
        { [Failed(0), Failed(1), Failed(31)], null, 32, new Retest.Allowed() },
        { [Failed(0), Failed(1), Failed(2)], null, 400, new Retest.WhenTakenAgain(First.AddDays(2)) },    // time alone teaches nothing
        { [Failed(0), Failed(1), Failed(2)], 2, 3, new Retest.Allowed() },                               // failures before that day count no more; the one of the day does
        { [Failed(0), Failed(1), Failed(2)], 3, 3, new Retest.Allowed() },
        { [Failed(0), Failed(1), Failed(2), Failed(4)], 3, 4, new Retest.FromDay(First.AddDays(5)) },     // one failure since
        { [Failed(0), Failed(1), Failed(2), Passed(3)], null, 3, new Retest.Allowed() },
        { [Failed(0), Passed(0)], null, 0, new Retest.Allowed() },                                        // passed on the same day
        { [Passed(0), Failed(1)], null, 1, new Retest.FromDay(First.AddDays(2)) },
        { [Failed(5)], null, 4, new Retest.Allowed() },                                                   // not yet
    };

    [Theory, MemberData(nameof(Days))]
    public void Failures_make_wait_and_enough_of_them_send_back_to_the_course(EarlierTry[] earlier, int? takenAgain, int today, Retest answer) =>
        Assert.Equal(answer, Retest.MayTry(Rules, earlier, takenAgain is { } day ? First.AddDays(day) : null, First.AddDays(today)));

    [Fact]
    public void Without_rules_everybody_may_try_at_any_time() =>
        Assert.Equal(new Retest.Allowed(), Retest.MayTry(null, [Failed(0), Failed(0), Failed(0)], null, First));

    private static readonly Gen<EarlierTry[]> Histories =
        Gen.Select(Gen.Int[0, 60], Gen.Int[0, 5], (after, passes) => new EarlierTry(First.AddDays(after), passes == 0)).Array[0, 8];

    [Fact]
    public void The_order_in_which_tries_are_read_means_nothing() => Gen.Select(Histories, Gen.Int[0, 90]).Sample((earlier, today) => Assert.Equal(
        Retest.MayTry(Rules, earlier, null, First.AddDays(today)), Retest.MayTry(Rules, [.. earlier.Reverse()], null, First.AddDays(today))));

    [Fact]
    public void Who_takes_the_course_again_after_the_last_failure_waits_for_nothing_but_the_next_day() =>
        Gen.Select(Histories, Gen.Int[61, 90]).Sample((earlier, today) =>
            Assert.Equal(new Retest.Allowed(), Retest.MayTry(Rules, earlier, First.AddDays(today), First.AddDays(today))));

    [Fact]
    public void One_failure_more_never_opens_what_was_closed() => Gen.Select(Histories, Gen.Int[0, 60], Gen.Int[0, 90]).Sample((earlier, failed, today) =>
    {
        var before = Retest.MayTry(Rules, earlier, null, First.AddDays(today));
        var after = Retest.MayTry(Rules, [.. earlier, Failed(failed)], null, First.AddDays(today));
        Assert.True(before is Retest.Allowed || after is not Retest.Allowed, $"{before} {after}");
    });
}
