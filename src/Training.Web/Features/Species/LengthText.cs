using System.Globalization;
using Microsoft.Extensions.Localization;
using Training.Courses;

namespace Training.Web.Features.Species;

/// <summary>Puts lengths in words, centimetres first and inches in brackets, as the files give them: rounded to whole figures.</summary>
public static class LengthText
{
    /// <summary>One length: a figure, two ends, more than, or at most.</summary>
    public static string Of(SpeciesLength length, IStringLocalizer<SheetText> text) => (length.LeastCm, length.MostCm) switch
    {
        ({ } least, { } most) when least == most => text["Length", Whole(least), Inches(least)],
        ({ } least, { } most) => text["LengthBetween", Whole(least), Whole(most), Inches(least), Inches(most)],
        ({ } least, null) => text["LengthOver", Whole(least), Inches(least)],
        (null, { } most) => text["LengthUpTo", Whole(most), Inches(most)],
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>The figure that distances are reckoned with.</summary>
    public static string OfLongest(SpeciesLength length, IStringLocalizer<SheetText> text) => text["Length", Whole(length.LongestCm), Inches(length.LongestCm)];

    /// <summary>A length that is needed: both units rounded up.</summary>
    public static string OfNeeded(decimal cm, IStringLocalizer<SheetText> text) =>
        text["Length", Whole(StrikeDistances.ShownNeeded(cm)), Whole(decimal.Ceiling(cm / Lengths.CentimetresInInch))];

    /// <summary>How well a figure is confirmed, in words.</summary>
    public static string StandingOf(FactStanding standing, IStringLocalizer<SheetText> text) => standing switch
    {
        FactStanding.Confirmed => text["LookedUp"],
        FactStanding.CommonPractice => text["CommonPractice"],
        FactStanding.FromMemory => text["FromMemory"],
    };

    private static string Whole(decimal number) => decimal.Round(number, 0, MidpointRounding.AwayFromZero).ToString("0", CultureInfo.InvariantCulture);

    private static string Inches(decimal cm) => Whole(cm / Lengths.CentimetresInInch);
}
