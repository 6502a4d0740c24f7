using System.Resources;
using Training.Courses;
using Training.Documents.Typesetting;

namespace Training.Documents.Certificates;

/// <summary>Every sentence of a page in its language: the resource texts with the page's values in them.</summary>
internal sealed class CertificateWords(CertificatePage page)
{
    private static readonly ResourceManager Texts = Wording.TextsBeside(typeof(CertificateWords), "CertificateText");

    private readonly Wording _words = new(Texts, page.Language);

    public string Title => ByKind("TitleTraining", "TitleCertification");

    public string Lead => ByKind("LeadTraining", "LeadCertification");

    public string Met => ByKind("MetTraining", "MetCertification");

    public string TraineeNumber => _words.Text("TraineeNumber", page.TraineeNumber);

    public string Rules => _words.Text("Rules", _words.Date(page.SchemeEffectiveFrom), page.SchemeRevision);

    public string ScopeLabel => _words.Text("Scope");

    public string EffectiveLabel => _words.Text("EffectiveOn");

    public string Effective => _words.Date(page.EffectiveOn);

    public string ExpiryLabel => _words.Text("ExpiresOn");

    public string Expiry => _words.Date(page.ExpiresOn);

    /// <summary>How the expiry was counted. It may not claim "the same day" where the month was too short for it.</summary>
    public string Counted
    {
        get
        {
            var sentence = page.Validity.Unit == DurationUnit.Days ? "DaysOn" : page.ExpiresOn.Day == page.CountedFrom.Day ? "SameDay" : "LastDay";
            return _words.Text(sentence, _words.Date(page.CountedFrom), ValidityLength);
        }
    }

    public string DecidedLabel => _words.Text("DecidedBy");

    public string Decided => page.DecidedBy is null ? _words.Text("PublishedRule") : _words.Text("ResponsiblePerson", page.DecidedBy);

    public string DecidedOn => _words.Text("DecidedOn", _words.Date(page.DecidedOn));

    public string PlaceLabel => _words.Text("Place");

    public string Place => page.Place ?? _words.Text("NotStated");

    public string HoursLabel => _words.Text("Hours");

    public string Hours => page.Hours switch
    {
        null => _words.Text("NotStated"),
        1 => _words.Text("HourOne", _words.Number(1)),
        { } hours => _words.Text("HourMany", _words.Number(hours)),
    };

    public string CreditsLabel => _words.Text("Credits");

    public string Credits => page.Credits ?? _words.Text("NoCredits");

    public string Limits => _words.Text("Limits");

    public string Check => _words.Text("Check");

    public string CodeAlternative => _words.Text("CodeAlternative", page.CheckAddress);

    public string SerialLabel => _words.Text("Serial");

    public string Serial => Wording.Grouped(page.Serial);

    public string Revision => _words.Text("PaperRevision", page.Revision);

    public string PlateAlternative => _words.Text("PlateAlternative");

    public string Caution => _words.Text("CautionText");

    public string Property => _words.Text("Property", page.ProviderName);

    public string DocumentTitle => _words.Text("DocumentTitle", Title, page.SchemeTitle, page.WorkerName);

    private string ValidityLength => (page.Validity.Unit, page.Validity.Count) switch
    {
        (DurationUnit.Days, 1) => _words.Text("DayOne"),
        (DurationUnit.Days, var days) => _words.Text("DayMany", _words.Number(days)),
        (DurationUnit.Months, 1) => _words.Text("MonthOne"),
        (DurationUnit.Months, var months) => _words.Text("MonthMany", _words.Number(months)),
        (DurationUnit.Years, 1) => _words.Text("YearOne"),
        (DurationUnit.Years, var years) => _words.Text("YearMany", _words.Number(years)),
    };

    private string ByKind(string training, string certification) => _words.Text(page.Kind switch
    {
        SchemeKind.CertificateOfTraining => training,
        SchemeKind.Certification => certification,
    });
}
