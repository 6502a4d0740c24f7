namespace Training.Courses;

/// <summary>The one unit of a <see cref="Duration"/>.</summary>
public enum DurationUnit
{
    /// <summary>Calendar days.</summary>
    Days,

    /// <summary>Calendar months; the end of a month clamps.</summary>
    Months,

    /// <summary>Calendar years; 29 February clamps to 28 February.</summary>
    Years,
}

/// <summary>A calendar duration of one unit, written PnD, PnM or PnY (ISO 8601-1 duration, one component only).</summary>
/// <param name="Count">How many; at least 0, at most 9999.</param>
/// <param name="Unit">Of what.</param>
/// <remarks>
/// Rule: docs/rules.md, "Durations". Month arithmetic does not add up (31 January + 1 + 1 months is 28 March, + 2 is 31 March), so
/// every member says which date it counts from and nothing steps from the last result.
/// </remarks>
public readonly record struct Duration(int Count, DurationUnit Unit)
{
    /// <summary>Reads <c>P90D</c>, <c>P12M</c> or <c>P2Y</c>; anything else (two units, weeks, a sign, a fraction, time) is refused.</summary>
    /// <returns>False, and <paramref name="duration"/> zero days, where the text is not of that form.</returns>
    public static bool TryParse(string? text, out Duration duration)
    {
        duration = default;
        if (text is null || text.Length is < 3 or > 6 || text[0] != 'P') return false;
        foreach (var digit in text.AsSpan(1, text.Length - 2))
        {
            if (!char.IsAsciiDigit(digit)) return false;
        }

        DurationUnit? unit = text[^1] switch
        {
            'D' => DurationUnit.Days,
            'M' => DurationUnit.Months,
            'Y' => DurationUnit.Years,
            _ => null,
        };
        if (unit is null) return false;
        duration = new(int.Parse(text.AsSpan(1, text.Length - 2), System.Globalization.CultureInfo.InvariantCulture), unit.Value);
        return true;
    }

    /// <summary>The date this long after <paramref name="start"/>, counted from <paramref name="start"/> in one step; clamps to the month's end.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The result would lie beyond the year 9999.</exception>
    public DateOnly After(DateOnly start) => Shift(start, Count);

    /// <summary>The date this long before <paramref name="end"/>, counted back from <paramref name="end"/> in one step; clamps to the month's end.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The result would lie before the year 1.</exception>
    public DateOnly Before(DateOnly end) => Shift(end, -Count);

    /// <summary>The form it is written in: <c>P12M</c>.</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"P{Count}{Unit switch
    {
        DurationUnit.Days => 'D',
        DurationUnit.Months => 'M',
        DurationUnit.Years => 'Y',
    }}");

    private DateOnly Shift(DateOnly from, int count) => Unit switch
    {
        DurationUnit.Days => from.AddDays(count),
        DurationUnit.Months => from.AddMonths(count),
        DurationUnit.Years => from.AddYears(count),
    };
}
