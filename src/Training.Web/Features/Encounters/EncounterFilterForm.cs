using Training.Certification;
using Training.Records;

namespace Training.Web.Features.Encounters;

/// <summary>What a visitor narrows encounters down to; in the address.</summary>
public sealed class EncounterFilterForm
{
    /// <summary>A site; null for all.</summary>
    public Guid? Site { get; set; }

    /// <summary>A kind; null for all.</summary>
    public EncounterKind? Kind { get; set; }

    /// <summary>First day; what cannot be read: the first day of the month eleven months ago.</summary>
    public string? From { get; set; }

    /// <summary>Last day; what cannot be read: today.</summary>
    public string? Through { get; set; }

    /// <summary>The filter, without anything said the last twelve months.</summary>
    public EncounterFilter Read(DateOnly today)
    {
        var through = FormValues.ReadDay(Through) ?? today;
        // Counted from the first of a month: no day of it is clamped.
        return new(Site, Kind, FormValues.ReadDay(From) ?? EncounterTallies.FirstOf(through).AddMonths(-11), through);
    }
}
