namespace Training.Certification;

/// <summary>Days in a row.</summary>
/// <param name="From">The first, included.</param>
/// <param name="Through">The last, included; null where no end is known.</param>
public readonly record struct DaySpan(DateOnly From, DateOnly? Through)
{
    /// <summary>Whether a day is one of them.</summary>
    public bool Has(DateOnly day) => From <= day && (Through is not { } through || day <= through);

    /// <summary>The days that are in both; null where there is none.</summary>
    public DaySpan? Overlap(DaySpan other)
    {
        var from = From > other.From ? From : other.From;
        var through = (Through, other.Through) switch
        {
            (null, var end) => end,
            (var end, null) => end,
            ({ } one, { } two) => one < two ? one : two,
        };
        return through < from ? null : new DaySpan(from, through);
    }
}
