using Training.Courses;
using Training.Web.Shelf;

namespace Training.Web.Features.Distances;

/// <summary>What the calculator's page is given.</summary>
/// <param name="Form">As typed.</param>
/// <param name="Guidance">What distances are judged by; null where the guidance of this region gives no fraction, margin or stand-off.</param>
/// <param name="Answer">Null before anything was asked, or where it could not be.</param>
public sealed record DistancePage(DistanceForm Form, DistanceGuidance? Guidance, DistanceAnswer? Answer);

/// <summary>The guidance in force that distances are judged by.</summary>
/// <param name="Fractions">Every share of the length that a source gives, the largest first.</param>
/// <param name="Ceiling">The whole length, for a snake that may brace itself: no source gives a figure for that.</param>
/// <param name="Margin">Added to every reach.</param>
/// <param name="StandOff">How far everybody stays who is not handling.</param>
public sealed record DistanceGuidance(IReadOnlyList<GuidanceEntry> Fractions, GuidanceEntry Ceiling, GuidanceEntry Margin, GuidanceEntry StandOff)
{
    private static readonly string[] Subjects = ["strike-reach-largest", "strike-reach-usual", "strike-reach-lower-bound"];

    /// <summary>As it is in force, or null where something is missing.</summary>
    public static DistanceGuidance? Find(GuidanceNow guidance)
    {
        GuidanceEntry? InForce(string subject) => guidance.Find(subject, GuidanceSet.Unidentified);
        var fractions = Subjects.Select(InForce).OfType<GuidanceEntry>().ToList();
        return fractions.Count > 0 && InForce("strike-reach-ceiling") is { } ceiling && InForce("margin") is { } margin && InForce("stand-off") is { } standOff
            ? new(fractions, ceiling, margin, standOff)
            : null;
    }

    /// <summary>The entries that count on that ground.</summary>
    public IReadOnlyList<GuidanceEntry> Counting(bool isBraced) => isBraced ? [Ceiling, .. Fractions] : Fractions;
}

/// <summary>What the calculator says, in centimetres, unrounded.</summary>
/// <param name="SnakeCm">As asked.</param>
/// <param name="ToolCm">As asked; null where no tool was.</param>
/// <param name="Deciding">The share that decides.</param>
/// <param name="ReachCm">How far the head may come under it.</param>
/// <param name="NeededCm">Minimum working length of a tool under it.</param>
/// <param name="StandOffCm">Where everybody stands who is not handling.</param>
/// <param name="IsLongEnough">Whether the tool has the minimum; null where no tool was asked about.</param>
/// <param name="Comparisons">Each sourced share with its reach and minimum.</param>
public sealed record DistanceAnswer(
    decimal SnakeCm, decimal? ToolCm, ReachFraction Deciding, decimal ReachCm, decimal NeededCm, decimal StandOffCm, bool? IsLongEnough,
    IReadOnlyList<(GuidanceEntry Entry, decimal ReachCm, decimal NeededCm)> Comparisons)
{
    /// <summary>Works it out; everything that decides is <see cref="StrikeDistances"/>.</summary>
    public static DistanceAnswer Of(decimal snakeCm, decimal? toolCm, bool isBraced, DistanceGuidance guidance)
    {
        var entries = guidance.Counting(isBraced);
        var rules = ReachRules.From(entries, guidance.Margin);
        var standOffCm = Lengths.InCentimetres((GuidanceValue.Quantity)guidance.StandOff.Value);
        return new(
            snakeCm, toolCm, rules.Deciding,
            StrikeDistances.Reach(snakeCm, rules.Deciding),
            StrikeDistances.MinimumWorkingLength(snakeCm, rules.Deciding, rules.MarginCm),
            StrikeDistances.StandOffLine(snakeCm, standOffCm, rules.MarginCm),
            toolCm is { } tool ? StrikeDistances.Choose([tool], snakeCm, rules) is ToolChoice.LongEnough : null,
            [.. entries.Zip(rules.Sourced, (entry, fraction) => (
                entry, StrikeDistances.Reach(snakeCm, fraction), StrikeDistances.MinimumWorkingLength(snakeCm, fraction, rules.MarginCm)))]);
    }
}
