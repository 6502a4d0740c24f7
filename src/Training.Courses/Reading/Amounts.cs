using System.Globalization;

namespace Training.Courses;

/// <summary>Reads amounts as authors write them: <c>10</c>, <c>0.5</c> or <c>2/3</c>.</summary>
internal static class Amounts
{
    public static bool TryRead(string text, out decimal amount)
    {
        var slash = text.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0) return TryReadDecimal(text, out amount);
        amount = 0;
        if (!int.TryParse(text.AsSpan(0, slash), NumberStyles.None, CultureInfo.InvariantCulture, out var upper)) return false;
        if (!int.TryParse(text.AsSpan(slash + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var lower) || lower == 0) return false;
        amount = (decimal)upper / lower;
        return true;
    }

    private static bool TryReadDecimal(string text, out decimal amount) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out amount);
}
