using System.Globalization;
using System.Resources;
using Training.Documents.Typesetting;

namespace Training.Documents.BitePlans;

/// <summary>Every sentence of a bite plan in its language, but for what was entered; a page and the paper say the same.</summary>
/// <param name="page">The plan.</param>
public sealed class BitePlanWords(BitePlanPage page)
{
    private static readonly ResourceManager Texts = Wording.TextsBeside(typeof(BitePlanWords), "BitePlanText");

    private readonly Wording _words = new(Texts, page.Language);

    /// <summary>That the plan is overdue.</summary>
    public string Overdue => _words.Text("Overdue");

    /// <summary>Since when, and what to do.</summary>
    public string OverdueSince
    {
        get
        {
            var days = page.PrintedOn.DayNumber - page.ReviewOn.DayNumber;
            return days == 1 ? _words.Text("OverdueOne", _words.Date(page.ReviewOn)) : _words.Text("OverdueMany", _words.Date(page.ReviewOn), days);
        }
    }

    /// <summary>What this is, of which site.</summary>
    public string Kind => _words.Text("Kind", page.SiteName, page.EmployerName);

    /// <summary>Whom to call first.</summary>
    public string Call => _words.Text("Call", page.EmergencyServices);

    /// <summary>Who decides where to go.</summary>
    public string TheyDecide => _words.Text("TheyDecide");

    /// <summary>Label of the path without signal.</summary>
    public string NoSignal => _words.Text("NoSignal");

    /// <summary>Label of the place.</summary>
    public string SayWhere => _words.Text("SayWhere");

    /// <summary>Degrees north and east as devices take them.</summary>
    public string Decimal => string.Create(CultureInfo.InvariantCulture, $"{page.Latitude:0.00000}, {page.Longitude:0.00000}");

    /// <summary>The same in degrees and minutes, with the sides in words: letters would be heard wrong over a radio.</summary>
    public string DegreesMinutes => _words.Text(
        "BothAngles",
        _words.Text(page.Latitude < 0 ? "South" : "North", Angle(page.Latitude, "00")),
        _words.Text(page.Longitude < 0 ? "West" : "East", Angle(page.Longitude, "000")));

    /// <summary>Label of the way in.</summary>
    public string Access => _words.Text("Access");

    /// <summary>Heading of what to do.</summary>
    public string Do => _words.Text("Do");

    /// <summary>Heading of what not to do.</summary>
    public string DoNot => _words.Text("DoNot");

    /// <summary>Who says so, since when; what to do where nobody says anything.</summary>
    public string GuidanceSource => page.FirstAid is { } firstAid
        ? _words.Text("GuidanceSource", firstAid.Source, _words.Date(firstAid.EffectiveFrom))
        : _words.Text("NoGuidance");

    /// <summary>Label of poison control.</summary>
    public string PoisonControl => _words.Text("PoisonControl");

    /// <summary>Label of who on site must know.</summary>
    public string OnSite => _words.Text("OnSite");

    /// <summary>Heading of the hospitals.</summary>
    public string Hospitals => _words.Text("Hospitals");

    /// <summary>Where the times come from.</summary>
    public string AsEntered => _words.Text("AsEntered");

    /// <summary>Heading of what was said of antivenom.</summary>
    public string Antivenom => _words.Text("Antivenom");

    /// <summary>Stands where a list is empty.</summary>
    public string NothingEntered => _words.Text("NothingEntered");

    /// <summary>When it was checked, by whom.</summary>
    public string Checked => page.CheckedBy is { } name
        ? _words.Text("Checked", _words.Date(page.CheckedOn), name)
        : _words.Text("CheckedErased", _words.Date(page.CheckedOn));

    /// <summary>By when it is to be reviewed.</summary>
    public string Review => _words.Text("Review", _words.Date(page.ReviewOn));

    /// <summary>Whose it is, when it was printed.</summary>
    public string Printed => _words.Text("Printed", page.ProviderName, _words.Date(page.PrintedOn));

    /// <summary>What the plan is not.</summary>
    public string Caution => _words.Text("CautionText");

    /// <summary>Who told it, when.</summary>
    public string Told(AntivenomHearsay hearsay) => _words.Text("Told", hearsay.ToldBy, _words.Date(hearsay.ToldOn));

    /// <summary>How far a hospital is; alike in both languages.</summary>
    public static string Minutes(BitePlanHospital hospital) => string.Create(CultureInfo.InvariantCulture, $"{hospital.DriveMinutes} min");

    private static string Angle(decimal degrees, string whole)
    {
        var angle = MapAngle.Of(degrees);
        return $"{angle.Degrees.ToString(whole, CultureInfo.InvariantCulture)}° {angle.Minutes.ToString("00.000", CultureInfo.InvariantCulture)}'";
    }
}
