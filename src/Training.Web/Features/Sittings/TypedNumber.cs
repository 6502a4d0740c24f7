using System.Globalization;
using System.Text.RegularExpressions;

namespace Training.Web.Features.Sittings;

/// <summary>Reads a number as people on US work sites type it: decimal point or decimal comma.</summary>
public static partial class TypedNumber
{
    /// <summary>The number, or null. The last of comma and point is the decimal one where both stand.</summary>
    public static decimal? Find(string typed)
    {
        var text = typed.Replace(" ", "", StringComparison.Ordinal).Replace("\u00a0", "", StringComparison.Ordinal).Replace('\u2212', '-');
        var (comma, point) = (text.LastIndexOf(','), text.LastIndexOf('.'));
        if (comma >= 0 && point >= 0) text = text.Replace(comma > point ? "." : ",", "", StringComparison.Ordinal);
        text = text.Replace(',', '.');
        return decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
    }

    /// <summary>Whether it is a thousand to one reader and one to another: <c>1,000</c>.</summary>
    public static bool HasTwoMeanings(string typed) => TwoMeanings().IsMatch(typed.Trim());

    [GeneratedRegex(@"^[+-]?[1-9]\d{0,2},\d{3}$", RegexOptions.None, 1000)]
    private static partial Regex TwoMeanings();
}
