using System.Globalization;
using System.Resources;
using Training.Courses;

namespace Training.Documents.Certificates;

/// <summary>Every sentence of a page in its language: the resource texts with the page's values in them.</summary>
internal sealed class CertificateWords(CertificatePage page)
{
    private static readonly ResourceManager Texts = new("Training.Documents.Certificates.CertificateText", typeof(CertificateWords).Assembly);

    private readonly CultureInfo _culture = CultureInfo.GetCultureInfo(page.Language switch
    {
        Language.English => "en-US",
        Language.Spanish => "es-US",
    });

    public string Title => ByKind("TitleTraining", "TitleCertification");

    public string Lead => ByKind("LeadTraining", "LeadCertification");

    public string Met => ByKind("MetTraining", "MetCertification");

    public string TraineeNumber => Text("TraineeNumber", page.TraineeNumber);

    public string Rules => Text("Rules", Written(page.SchemeEffectiveFrom), page.SchemeRevision);

    public string ScopeLabel => Text("Scope");

    public string EffectiveLabel => Text("EffectiveOn");

    public string Effective => Written(page.EffectiveOn);

    public string ExpiryLabel => Text("ExpiresOn");

    public string Expiry => Written(page.ExpiresOn);

    /// <summary>How the expiry was counted. It may not claim "the same day" where the month was too short for it.</summary>
    public string Counted
    {
        get
        {
            var sentence = page.Validity.Unit == DurationUnit.Days ? "DaysOn" : page.ExpiresOn.Day == page.CountedFrom.Day ? "SameDay" : "LastDay";
            return Text(sentence, Written(page.CountedFrom), ValidityLength);
        }
    }

    public string DecidedLabel => Text("DecidedBy");

    public string Decided => page.DecidedBy is null ? Text("PublishedRule") : Text("ResponsiblePerson", page.DecidedBy);

    public string DecidedOn => Text("DecidedOn", Written(page.DecidedOn));

    public string PlaceLabel => Text("Place");

    public string Place => page.Place ?? Text("NotStated");

    public string HoursLabel => Text("Hours");

    public string Hours => page.Hours switch
    {
        null => Text("NotStated"),
        1 => Text("HourOne", Number(1)),
        { } hours => Text("HourMany", Number(hours)),
    };

    public string CreditsLabel => Text("Credits");

    public string Credits => page.Credits ?? Text("NoCredits");

    public string Limits => Text("Limits");

    public string Check => Text("Check");

    public string CodeAlternative => Text("CodeAlternative", page.CheckAddress);

    public string SerialLabel => Text("Serial");

    /// <summary>In groups of four, as people read numbers to each other; the last may be shorter.</summary>
    public string Serial => string.Join(' ', page.Serial.Chunk(4).Select(group => new string(group)));

    public string Revision => Text("PaperRevision", page.Revision);

    public string PlateAlternative => Text("PlateAlternative");

    public string CautionLabel => Text("Caution");

    public string Caution => Text("CautionText");

    public string Property => Text("Property", page.ProviderName);

    public string Demo => Text("Demo");

    public string DemoDetail => Text("DemoDetail");

    public string DocumentTitle => Text("DocumentTitle", Title, page.SchemeTitle, page.WorkerName);

    private string ValidityLength => (page.Validity.Unit, page.Validity.Count) switch
    {
        (DurationUnit.Days, 1) => Text("DayOne"),
        (DurationUnit.Days, var days) => Text("DayMany", Number(days)),
        (DurationUnit.Months, 1) => Text("MonthOne"),
        (DurationUnit.Months, var months) => Text("MonthMany", Number(months)),
        (DurationUnit.Years, 1) => Text("YearOne"),
        (DurationUnit.Years, var years) => Text("YearMany", Number(years)),
    };

    private string ByKind(string training, string certification) => Text(page.Kind switch
    {
        SchemeKind.CertificateOfTraining => training,
        SchemeKind.Certification => certification,
    });

    private string Written(DateOnly date) => date.ToString(page.Language switch
    {
        Language.English => "d MMMM yyyy",
        Language.Spanish => "d 'de' MMMM 'de' yyyy",
    }, _culture);

    private string Number(decimal number) => number.ToString("0.##", _culture);

    private string Text(string name, params object[] values)
    {
        var text = Texts.GetString(name, _culture) ?? throw new MissingManifestResourceException(name);
        return values.Length == 0 ? text : string.Format(_culture, text, values);
    }
}
