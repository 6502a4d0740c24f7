using System.Globalization;
using System.Resources;
using Training.Documents.Typesetting;

namespace Training.Documents.BitePlans;

/// <summary>Every sentence of a bite plan in its language, but for what was entered.</summary>
internal sealed class BitePlanWords(BitePlanPage page)
{
    private static readonly ResourceManager Texts = Wording.TextsBeside(typeof(BitePlanWords), "BitePlanText");

    private readonly Wording _words = new(Texts, page.Language);

    public string Overdue => _words.Text("Overdue");

    public string OverdueSince
    {
        get
        {
            var days = page.PrintedOn.DayNumber - page.ReviewOn.DayNumber;
            return days == 1 ? _words.Text("OverdueOne", _words.Date(page.ReviewOn)) : _words.Text("OverdueMany", _words.Date(page.ReviewOn), days);
        }
    }

    public string Kind => _words.Text("Kind", page.SiteName, page.EmployerName);

    public string Call => _words.Text("Call", page.EmergencyServices);

    public string TheyDecide => _words.Text("TheyDecide");

    public string NoSignal => _words.Text("NoSignal");

    public string SayWhere => _words.Text("SayWhere");

    /// <summary>Degrees north and east as devices take them.</summary>
    public string Decimal => string.Create(CultureInfo.InvariantCulture, $"{page.Latitude:0.00000}, {page.Longitude:0.00000}");

    /// <summary>The same in degrees and minutes, with the sides in words: letters would be heard wrong over a radio.</summary>
    public string DegreesMinutes => _words.Text(
        "BothAngles",
        _words.Text(page.Latitude < 0 ? "South" : "North", Angle(page.Latitude, "00")),
        _words.Text(page.Longitude < 0 ? "West" : "East", Angle(page.Longitude, "000")));

    public string Access => _words.Text("Access");

    public string Do => _words.Text("Do");

    public string DoNot => _words.Text("DoNot");

    public string GuidanceSource => _words.Text("GuidanceSource", page.FirstAid.Source, _words.Date(page.FirstAid.EffectiveFrom));

    public string PoisonControl => _words.Text("PoisonControl");

    public string OnSite => _words.Text("OnSite");

    public string Hospitals => _words.Text("Hospitals");

    public string AsEntered => _words.Text("AsEntered");

    public string Antivenom => _words.Text("Antivenom");

    public string NothingEntered => _words.Text("NothingEntered");

    public string Checked => _words.Text("Checked", _words.Date(page.CheckedOn), page.CheckedBy);

    public string Review => _words.Text("Review", _words.Date(page.ReviewOn));

    public string Printed => _words.Text("Printed", page.ProviderName, _words.Date(page.PrintedOn));

    public string Caution => _words.Text("CautionText");

    public string Told(AntivenomHearsay hearsay) => _words.Text("Told", hearsay.ToldBy, _words.Date(hearsay.ToldOn));

    /// <summary>Alike in both languages.</summary>
    public static string Minutes(BitePlanHospital hospital) => string.Create(CultureInfo.InvariantCulture, $"{hospital.DriveMinutes} min");

    private static string Angle(decimal degrees, string whole)
    {
        var angle = MapAngle.Of(degrees);
        return $"{angle.Degrees.ToString(whole, CultureInfo.InvariantCulture)}° {angle.Minutes.ToString("00.000", CultureInfo.InvariantCulture)}'";
    }
}
