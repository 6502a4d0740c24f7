using System.Globalization;

namespace Training.Courses;

/// <summary>
/// Puts quantities in words. The value stands first, in the unit of its source, unrounded; the other unit follows in brackets, rounded to
/// what can be paced off (0.1 m, 1 inch, 1 °F). The source's own value binds. Spanish as on US sites: the decimal sign is a point.
/// </summary>
internal static class QuantityText
{
    public static string Of(GuidanceValue.Quantity quantity, Language language) => quantity.Unit switch
    {
        "ft" => $"{Counted(quantity.Amount, Foot(language))} ({Rounded(quantity.Amount * Lengths.CentimetresInFoot / 100, 1)} {Metres(language)})",
        "cm" => $"{Counted(quantity.Amount, Centimetre(language))} ({Counted(decimal.Round(quantity.Amount / Lengths.CentimetresInInch, 0, MidpointRounding.AwayFromZero), Inch(language))})",
        "minutes" => Counted(quantity.Amount, Minute(language)),
        "°C" => $"{Plain(quantity.Amount)} °C ({Rounded(quantity.Amount * 9 / 5 + 32, 0)} °F)",
        "fraction" => Fraction(quantity.Amount, language),
        _ => throw new ArgumentException($"'{quantity.Unit}' is no unit of guidance.", nameof(quantity)),
    };

    private static string Fraction(decimal amount, Language language)
    {
        var fraction = ReachFraction.From(amount);
        return (fraction.Numerator, fraction.Denominator, language) switch
        {
            (1, 1, Language.English) => "the whole",
            (1, 1, Language.Spanish) => "la totalidad",
            (1, 2, Language.English) => "one-half",
            (1, 2, Language.Spanish) => "la mitad",
            (1, 3, Language.English) => "one-third",
            (1, 3, Language.Spanish) => "un tercio",
            (2, 3, Language.English) => "two-thirds",
            (2, 3, Language.Spanish) => "dos tercios",
            (1, 4, Language.English) => "one-quarter",
            (1, 4, Language.Spanish) => "un cuarto",
            (3, 4, Language.English) => "three-quarters",
            (3, 4, Language.Spanish) => "tres cuartos",
            _ => fraction.ToString(),
        };
    }

    private static string Counted(decimal amount, (string One, string Many) unit) => $"{Plain(amount)} {(amount == 1 ? unit.One : unit.Many)}";

    private static string Plain(decimal amount) => amount.ToString("0.############", CultureInfo.InvariantCulture);

    private static string Rounded(decimal amount, int decimals) =>
        decimal.Round(amount, decimals, MidpointRounding.AwayFromZero).ToString(decimals == 0 ? "0" : "0.0", CultureInfo.InvariantCulture);

    private static (string One, string Many) Foot(Language language) => language switch
    {
        Language.English => ("foot", "feet"),
        Language.Spanish => ("pie", "pies"),
    };

    private static (string One, string Many) Centimetre(Language language) => language switch
    {
        Language.English => ("centimetre", "centimetres"),
        Language.Spanish => ("centímetro", "centímetros"),
    };

    private static (string One, string Many) Inch(Language language) => language switch
    {
        Language.English => ("inch", "inches"),
        Language.Spanish => ("pulgada", "pulgadas"),
    };

    private static (string One, string Many) Minute(Language language) => language switch
    {
        Language.English => ("minute", "minutes"),
        Language.Spanish => ("minuto", "minutos"),
    };

    private static string Metres(Language language) => language switch
    {
        Language.English => "metres",
        Language.Spanish => "metros",
    };
}
