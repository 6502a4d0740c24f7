using System.Globalization;
using System.Resources;
using Training.Courses;

namespace Training.Documents.Typesetting;

/// <summary>The texts of one sort of paper in one language, and how that language writes dates and numbers.</summary>
internal sealed class Wording(ResourceManager texts, Language language)
{
    private readonly CultureInfo _culture = CultureInfo.GetCultureInfo(language switch
    {
        Language.English => "en-US",
        Language.Spanish => "es-US",
    });

    /// <summary>The resource texts beside a type, named like its folder's paper: <c>BitePlanText</c>.</summary>
    public static ResourceManager TextsBeside(Type words, string name) => new($"{words.Namespace}.{name}", words.Assembly);

    /// <summary>A text with values in its places.</summary>
    public string Text(string name, params object[] values)
    {
        var text = texts.GetString(name, _culture) ?? throw new MissingManifestResourceException(name);
        return values.Length == 0 ? text : string.Format(_culture, text, values);
    }

    /// <summary>A date written out: <c>7 December 2026</c>, <c>7 de diciembre de 2026</c>.</summary>
    public string Date(DateOnly date) => date.ToString(language switch
    {
        Language.English => "d MMMM yyyy",
        Language.Spanish => "d 'de' MMMM 'de' yyyy",
    }, _culture);

    /// <summary>A time of day of 24 hours: <c>08:00</c>.</summary>
    public static string Time(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>Date, time and how far that clock is from UTC: <c>25 November 2026, 10:44 (UTC-08:00)</c>.</summary>
    public string Moment(DateTimeOffset local) =>
        Date(DateOnly.FromDateTime(local.DateTime)) + local.ToString("', 'HH:mm' (UTC'zzz')'", CultureInfo.InvariantCulture);

    /// <summary>A number with at most two decimals.</summary>
    public string Number(decimal number) => number.ToString("0.##", _culture);

    /// <summary>A serial in groups of four, as people read numbers to each other; the last may be shorter.</summary>
    public static string Grouped(string serial) => string.Join(' ', serial.Chunk(4).Select(group => new string(group)));
}
