namespace Training.Certification;

/// <summary>Days in a row.</summary>
/// <param name="From">The first, included.</param>
/// <param name="Through">The last, included; null where no end is known.</param>
public readonly record struct DaySpan(DateOnly From, DateOnly? Through)
{
    /// <summary>Whether a day is one of them.</summary>
    public bool Has(DateOnly day) => From <= day && (Through is not { } through || day <= through);
}
