using Training.Courses;

namespace Training.Certification;

/// <summary>Whether a scorer is bound because they taught the candidate. Rule: docs/rules.md, "Separation of hats".</summary>
public static class ScorerBond
{
    private static readonly Duration TaughtMustBeAgo = new(2, DurationUnit.Years);

    /// <summary>The latest teaching that binds the scorer on the day of the sheet, or null where they are free.</summary>
    /// <param name="taughtBy">Who taught the candidate.</param>
    /// <param name="scorerId">Who scores.</param>
    /// <param name="sheetOn">The sheet's day. Exactly two years after a teaching the scorer is free; a later teaching does not bind.</param>
    public static Teaching? Find(IEnumerable<Teaching> taughtBy, Guid scorerId, DateOnly sheetOn)
    {
        var free = TaughtMustBeAgo.Before(sheetOn);
        return taughtBy.Where(teaching => teaching.InstructorId == scorerId && teaching.On > free && teaching.On <= sheetOn)
            .MaxBy(teaching => teaching.On);
    }
}
