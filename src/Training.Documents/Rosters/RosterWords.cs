using System.Resources;
using Training.Documents.Typesetting;

namespace Training.Documents.Rosters;

/// <summary>Every sentence of a roster in its language.</summary>
internal sealed class RosterWords(RosterPage page)
{
    private static readonly ResourceManager Texts = Wording.TextsBeside(typeof(RosterWords), "RosterText");

    private readonly Wording _words = new(Texts, page.Language);

    public string Kind => page.CrewName is null
        ? _words.Text("KindOfSite", page.EmployerName, page.SiteName)
        : _words.Text("KindOfCrew", page.EmployerName, page.SiteName, page.CrewName);

    /// <summary>What the wall of a site office is asked: how many of these people are current in anything today.</summary>
    public string Title => _words.Text("Title", page.People.Count(IsCurrent), page.People.Count);

    public string AsOf => _words.Text("AsOf", _words.Moment(page.AsOf));

    public string Changes => _words.Text("Changes");

    public string Name => _words.Text("Name");

    public string Badge => _words.Text("Badge");

    public string Scheme => _words.Text("Scheme");

    public string Standing => _words.Text("Standing");

    public string Through => _words.Text("Through");

    public string NoBadge => _words.Text("NoBadge");

    public string NothingHeld => _words.Text("NothingHeld");

    public string Nobody => _words.Text("Nobody");

    public string Caution => _words.Text("CautionText");

    /// <summary>Through when it is current; a standing that is not says so, since a bare date would promise what no longer holds.</summary>
    public string ThroughOf(RosterHolding holding) => holding.Standing switch
    {
        Certification.Standing.Current => _words.Date(holding.ExpiresOn),
        Certification.Standing.RenewalDue => _words.Date(holding.ExpiresOn),
        Certification.Standing.Lapsed => _words.Text("EndedOn", _words.Date(holding.ExpiresOn)),
        Certification.Standing.Suspended => _words.Text("NotCurrent"),
        Certification.Standing.Withdrawn => _words.Text("NotCurrent"),
    };

    private static bool IsCurrent(RosterPerson person) =>
        person.Holdings.Any(holding => holding.Standing is Certification.Standing.Current or Certification.Standing.RenewalDue);
}
