namespace Training.Courses;

/// <summary>How well a statement is confirmed.</summary>
public enum FactStanding
{
    /// <summary>Confirmed by look-up in the source or a copy of it.</summary>
    Confirmed,

    /// <summary>A habit of the trade; no publication found.</summary>
    CommonPractice,

    /// <summary>From memory, not looked up; readers see that.</summary>
    FromMemory,
}

/// <summary>A fact that a course uses, in our words.</summary>
/// <param name="Id">Stable, such as <c>F-AID-02</c>.</param>
/// <param name="Statement">In our words, English.</param>
/// <param name="Source">Who says so; "common practice, no source" where nobody published it.</param>
/// <param name="Standing">How well it is confirmed.</param>
public sealed record Fact(string Id, string Statement, string Source, FactStanding Standing);

/// <summary>A dated, sourced, regional value that training rests on; superseded, never overwritten.</summary>
/// <param name="Id">Stable, such as <c>stand-off-us-2024</c>.</param>
/// <param name="Subject">What it is a value of, such as <c>stand-off</c> or <c>pressure-bandage</c>.</param>
/// <param name="Value">The value: a number, or a code such as <c>not-recommended</c> that <c>guidance.md</c> puts in words.</param>
/// <param name="Region">Where it binds, such as <c>US</c> or <c>AU</c>.</param>
/// <param name="Snakes">Snake group, such as <c>any</c>, <c>pit-viper</c>, <c>coral</c>, <c>unidentified</c>.</param>
/// <param name="EffectiveFrom">First day in force.</param>
/// <param name="SupersededBy">Id of the entry that took its place, or null.</param>
/// <param name="FactId">The fact behind it.</param>
/// <param name="Source">Who says so.</param>
/// <param name="Standing">How well it is confirmed.</param>
public sealed record GuidanceEntry(
    string Id,
    string Subject,
    GuidanceValue Value,
    string Region,
    string Snakes,
    DateOnly EffectiveFrom,
    string? SupersededBy,
    string FactId,
    string Source,
    FactStanding Standing);

/// <summary>The value of a guidance entry. A closed family.</summary>
public abstract record GuidanceValue
{
    private GuidanceValue()
    {
    }

    /// <summary>A quantity.</summary>
    /// <param name="Amount">In <paramref name="Unit"/>.</param>
    /// <param name="Unit"><c>cm</c>, <c>ft</c>, <c>fraction</c> (of body length), <c>minutes</c> or <c>°C</c>.</param>
    public sealed record Quantity(decimal Amount, string Unit) : GuidanceValue;

    /// <summary>A choice from a fixed set, such as <c>not-recommended</c>.</summary>
    public sealed record Code(string Name) : GuidanceValue;
}
