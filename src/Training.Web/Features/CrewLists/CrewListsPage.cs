using Training.Certification;
using Training.Records;
using Training.Web.Features.Workforce;

namespace Training.Web.Features.CrewLists;

/// <summary>Whom no mail reaches: told by whoever posts the list of their crew.</summary>
/// <param name="EmployerId">For addresses.</param>
/// <param name="EmployerName">Whose people.</param>
/// <param name="Today">The visitor's.</param>
/// <param name="Lines">By site, crew and name.</param>
/// <param name="Titles">Of schemes, in the page's language.</param>
public sealed record CrewListsPage(
    Guid EmployerId, string EmployerName, DateOnly Today, IReadOnlyList<CrewListLine> Lines, IReadOnlyDictionary<string, string> Titles)
{
    /// <summary>
    /// The page. A reminder stands on it until what it reminds of was renewed, withdrawn, or lapsed more than
    /// <see cref="Certification.Reminders.DaysLate"/> days ago; of several about one certification the newest.
    /// </summary>
    /// <param name="workforce">The employer's people of today.</param>
    /// <param name="reminders">Those that became no mail.</param>
    /// <param name="titles">Of schemes.</param>
    public static CrewListsPage Of(EmployedPeople workforce, IEnumerable<ReminderRecord> reminders, IReadOnlyDictionary<string, string> titles)
    {
        var people = workforce.People.ToDictionary(person => person.PersonId);
        var lines = reminders.OrderByDescending(row => row.MadeAt).DistinctBy(row => (row.PersonId, row.SchemeId))
            .Where(row => people.ContainsKey(row.PersonId) && workforce.FindHeld(row.PersonId, row.SchemeId) is { } held
                && Standings.ExpiresOn(held, workforce.Today) == row.ExpiresOn && Standings.On(held, workforce.Today) is not Standing.Withdrawn)
            .Select(row => new CrewListLine(people[row.PersonId], row.SchemeId, row.ExpiresOn));
        // People are by name already, and sorting keeps that order within a crew.
        var places = workforce.People.Index().ToDictionary(person => person.Item.PersonId, person => person.Index);
        return new(
            workforce.EmployerId, workforce.EmployerName, workforce.Today,
            [.. lines.OrderBy(line => line.Person.SiteName is null).ThenBy(line => line.Person.SiteName, StringComparer.Ordinal)
                .ThenBy(line => line.Person.CrewName, StringComparer.Ordinal).ThenBy(line => places[line.Person.PersonId]).ThenBy(line => line.ExpiresOn)],
            titles);
    }
}

/// <summary>One thing to tell somebody.</summary>
/// <param name="Person">Whom.</param>
/// <param name="SchemeId">What it is about.</param>
/// <param name="ExpiresOn">Its last day.</param>
public sealed record CrewListLine(EmployedPerson Person, string SchemeId, DateOnly ExpiresOn);
