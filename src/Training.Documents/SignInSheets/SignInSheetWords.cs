using System.Resources;
using Training.Courses;
using Training.Documents.Typesetting;

namespace Training.Documents.SignInSheets;

/// <summary>Every sentence of a sign-in sheet in its language.</summary>
internal sealed class SignInSheetWords(SignInSheetPage page)
{
    private static readonly ResourceManager Texts = Wording.TextsBeside(typeof(SignInSheetWords), "SignInSheetText");

    private readonly Wording _words = new(Texts, page.Language);

    public string Kind => _words.Text("Kind", page.EmployerName, page.SiteName);

    public string Title => _words.Text("Title", page.ClassTitle, _words.Date(page.HeldOn));

    public string When => _words.Text("When", _words.Date(page.HeldOn), Wording.Time(page.StartsAt), Wording.Time(page.EndsAt));

    public string Where => page.MeetingPlace.Length == 0 ? _words.Text("Where", page.SiteName) : _words.Text("WhereMeet", page.SiteName, page.MeetingPlace);

    public string Kit => _words.Text("Kit", page.Kit);

    public string Weather => _words.Text("Weather", page.Weather);

    public string Teachers => _words.Text("Teachers", Joined(page.Teachers));

    public string Scorers => _words.Text("Scorers", Joined(page.Scorers));

    public string SignOnce => _words.Text("SignOnce");

    public string Number => _words.Text("Number");

    public string Name => _words.Text("Name");

    public string Badge => _words.Text("Badge");

    public string In => _words.Text("In");

    public string Out => _words.Text("Out");

    public string Signature => _words.Text("Signature");

    public string BlankRows => _words.Text("BlankRows");

    public string EnterBack => _words.Text("EnterBack");

    public IEnumerable<string> EnterSteps => [_words.Text("EnterOpen", page.EnterAddress), _words.Text("EnterCame"), _words.Text("EnterLate"), _words.Text("EnterKeep")];

    public string ClassId => _words.Text("ClassId", page.ClassId);

    public string Roster => _words.Text("Roster", page.ClassTitle, _words.Date(page.HeldOn));

    public string Employer => _words.Text("Employer");

    public string Language => _words.Text("Language");

    public string Seat => _words.Text("Seat");

    public string HasSeat => _words.Text("HasSeat");

    public string SeatsOf => _words.Text("SeatsOf", page.Seated.Count, page.Seats);

    public string NoOneListed => _words.Text("NoOneListed");

    public string Caution => _words.Text("CautionText");

    public string InLine(int place) => _words.Text("InLine", place);

    /// <summary>A language by its own name.</summary>
    public string NameOf(Language language) => _words.Text(language switch
    {
        Courses.Language.English => "English",
        Courses.Language.Spanish => "Spanish",
    });

    private string Joined(IReadOnlyList<string> names) => names.Count == 0 ? _words.Text("Nobody") : string.Join(", ", names);
}
