using Training.Courses;
using Training.Web.Shelf;

namespace Training.Web.Features.Species;

/// <summary>The figures of a sheet, each with its source.</summary>
/// <param name="Typical">Usual lengths of adults; none: no source was found.</param>
/// <param name="Greatest">Greatest lengths; none: no source was found.</param>
/// <param name="Reach">What follows from the longest of them; null where no length or no fraction is known.</param>
/// <param name="StandOff">How far everybody stays who is not handling, or null.</param>
public sealed record SheetFigures(
    IReadOnlyList<SheetFigures.LengthLine> Typical,
    IReadOnlyList<SheetFigures.LengthLine> Greatest,
    SheetFigures.ReachLine? Reach,
    SheetFigures.GuidanceLine? StandOff)
{
    /// <summary>One length as one source gives it.</summary>
    public sealed record LengthLine(SpeciesLength Length, NoteMark Note);

    /// <summary>One value in force in words.</summary>
    public sealed record GuidanceLine(string Value, NoteMark Note);

    /// <summary>Reach and minimum working length, unrounded.</summary>
    /// <param name="Longest">The length that they are reckoned with.</param>
    /// <param name="Fraction">The share of it, in words.</param>
    /// <param name="FractionNote">Who gives the share.</param>
    /// <param name="ReachCm">How far the head may come.</param>
    /// <param name="Margin">What is added, in words.</param>
    /// <param name="MarginNote">Who gives the margin.</param>
    /// <param name="NeededCm">The minimum working length of a tool.</param>
    /// <param name="LineCm">Where everybody stands who is not handling, where that is farther than the stand-off; else null.</param>
    public sealed record ReachLine(
        SpeciesLength Longest, string Fraction, NoteMark FractionNote, decimal ReachCm, string Margin, NoteMark MarginNote, decimal NeededCm, decimal? LineCm);

    /// <summary>The figures of one sheet; their sources go to <paramref name="notes"/> in the order of the page.</summary>
    public static SheetFigures Of(SpeciesSheet sheet, GuidanceNow guidance, SheetNotes notes)
    {
        List<LengthLine> typical = [.. sheet.Typical.Select(length => new LengthLine(length, notes.Cite(length.Fact)))];
        List<LengthLine> greatest = [.. sheet.Greatest.Select(length => new LengthLine(length, notes.Cite(length.Fact)))];
        var standOff = guidance.StandOff(sheet.GuidanceGroup);
        var reach = sheet.Longest is { } longest ? ReachOf(longest, sheet.GuidanceGroup, standOff, guidance, notes) : null;
        return new(typical, greatest, reach, standOff is null ? null : new(guidance.Text(standOff), notes.Cite(standOff)));
    }

    private static ReachLine? ReachOf(SpeciesLength longest, string snakes, GuidanceEntry? standOff, GuidanceNow guidance, SheetNotes notes)
    {
        if (guidance.FindReach(snakes) is not { } found) return null;
        var (rules, fraction, margin) = found;
        var standOffCm = standOff?.Value is GuidanceValue.Quantity length ? Lengths.InCentimetres(length) : 0;
        var line = StrikeDistances.StandOffLine(longest.LongestCm, standOffCm, rules.MarginCm);
        return new(
            longest,
            guidance.Text(rules.Deciding),
            notes.Cite(fraction),
            StrikeDistances.Reach(longest.LongestCm, rules.Deciding),
            guidance.Text(margin),
            notes.Cite(margin),
            StrikeDistances.MinimumWorkingLength(longest.LongestCm, rules.Deciding, rules.MarginCm),
            line > standOffCm ? line : null);
    }
}
