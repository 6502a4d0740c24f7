using Training.Courses;

namespace Training.Scoring;

/// <summary>An earlier try at one quiz, or at one checklist on one subject. A sheet that is incomplete is none.</summary>
/// <param name="On">Its day.</param>
/// <param name="IsPassed">Whether it was passed.</param>
public sealed record EarlierTry(DateOnly On, bool IsPassed);

/// <summary>Whether somebody may try again on a day. A closed family.</summary>
/// <remarks>Rule: docs/rules.md, "Trying again".</remarks>
public abstract record Retest
{
    private Retest()
    {
    }

    /// <summary>Yes.</summary>
    public sealed record Allowed : Retest;

    /// <summary>Not before this day.</summary>
    public sealed record FromDay(DateOnly Day) : Retest;

    /// <summary>Not until the course is taken again, on a day after the last failure.</summary>
    public sealed record WhenTakenAgain(DateOnly LastFailedOn) : Retest;

    /// <summary>The answer on a day.</summary>
    /// <param name="rules">Null: at any time.</param>
    /// <param name="earlier">All earlier tries; order means nothing.</param>
    /// <param name="takenAgainOn">The last day on which the course was taken again, or null; failures before it are counted no more.</param>
    /// <param name="today">On the calendar where the try would be. What is dated later does not exist yet.</param>
    public static Retest MayTry(RetestRules? rules, IReadOnlyCollection<EarlierTry> earlier, DateOnly? takenAgainOn, DateOnly today)
    {
        if (rules is null) return new Allowed();
        var passedOn = earlier.Where(one => one.IsPassed && one.On <= today).Max(one => (DateOnly?)one.On);
        // A pass wipes the slate, its own day included: what was passed stands, whatever came before it.
        DateOnly[] failures = [.. earlier.Where(one => !one.IsPassed && one.On <= today && !(one.On <= passedOn)).Select(one => one.On).Order()];
        if (failures.Length == 0) return new Allowed();

        DateOnly[] counted = [.. failures.Where(on => !(on < takenAgainOn))];
        for (var last = rules.Most - 1; last < counted.Length; last++)
        {
            if (counted[last - rules.Most + 1] >= rules.Within.Before(counted[last])) return new WhenTakenAgain(counted[^1]);
        }

        var from = rules.Wait.After(failures[^1]);
        return from > today ? new FromDay(from) : new Allowed();
    }
}
