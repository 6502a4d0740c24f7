using Training.Courses;
using Training.Web.Provider;

namespace Training.Web.Shelf;

/// <summary>Guidance as it is in force for one region on one day, in one language.</summary>
public sealed record GuidanceNow(GuidanceSet Guidance, string Region, DateOnly On, Language Language)
{
    private const string Reach = "strike-reach-largest";

    /// <summary>What public pages show: in force in the provider's region, on its own calendar.</summary>
    public static GuidanceNow Of(CourseShelf shelf, OurProvider provider, TimeProvider clock, Language language) =>
        new(shelf.Guidance, provider.Region, provider.DayOf(clock.GetUtcNow()), language);

    /// <summary>How far everybody stays who is not handling; null where no source says anything.</summary>
    public GuidanceEntry? StandOff(string snakes) => Find("stand-off", snakes);

    /// <summary>The entry in force, or null.</summary>
    public GuidanceEntry? Find(string subject, string snakes) => Guidance.InForce(subject, Region, snakes, On);

    /// <summary>The value in words; the bare code where nobody put it in words.</summary>
    public string Text(GuidanceEntry entry) => Guidance.Text(entry.Value, Language) ?? ((GuidanceValue.Code)entry.Value).Name;

    /// <summary>A share of a length in words.</summary>
    public string Text(ReachFraction fraction) =>
        Guidance.Text(new GuidanceValue.Quantity((decimal)fraction.Numerator / fraction.Denominator, "fraction"), Language) ?? fraction.ToString();

    /// <summary>What reach is judged by, with the entries behind it; null where guidance gives no fraction or no margin.</summary>
    public (ReachRules Rules, GuidanceEntry Fraction, GuidanceEntry Margin)? FindReach(string snakes) =>
        Find(Reach, snakes) is { } fraction && Find("margin", snakes) is { } margin
            ? (ReachRules.From([fraction], margin), fraction, margin)
            : null;
}
