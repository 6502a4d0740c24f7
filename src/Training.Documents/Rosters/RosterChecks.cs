using System.Globalization;
using Training.Courses;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.Rosters;

/// <summary>Finds what would keep a roster from being printed as written.</summary>
public static class RosterChecks
{
    /// <summary>Adds every problem of the roster, each with its field, and the number of its row, as the place.</summary>
    /// <param name="page">The roster.</param>
    /// <param name="fonts">The faces that it would be printed in.</param>
    /// <param name="problems">Receives the problems (<see cref="PaperProblems"/>).</param>
    /// <returns>True where nothing was added.</returns>
    public static bool CanPrint(RosterPage page, FontFaces fonts, ICollection<Problem> problems)
    {
        var before = problems.Count;
        var fields = new FieldChecks(fonts, problems);
        fields.Required("provider-name", page.ProviderName, RosterPage.LongestName);
        fields.Required("employer-name", page.EmployerName, RosterPage.LongestName);
        fields.Required("site-name", page.SiteName, RosterPage.LongestName);
        if (page.CrewName is not null) fields.Required("crew-name", page.CrewName, RosterPage.LongestName);
        fields.AtMost("people", page.People.Count, RosterPage.MostPeople);
        foreach (var (index, person) in page.People.Index()) Check(fields, person, (index + 1).ToString(CultureInfo.InvariantCulture));
        return problems.Count == before;
    }

    private static void Check(FieldChecks fields, RosterPerson person, string row)
    {
        if (person.Name is not null) fields.Required($"name {row}", person.Name, RosterPage.LongestName);
        if (person.BadgeNumber is not null) fields.Required($"badge-number {row}", person.BadgeNumber, RosterPage.LongestNumber);
        fields.AtMost($"holdings {row}", person.Holdings.Count, RosterPage.MostHoldings);
        foreach (var holding in person.Holdings) fields.Required($"scheme-title {row}", holding.SchemeTitle, RosterPage.LongestName);
    }
}
