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
    /// <summary>What to tell about classes ahead, by site, crew, day and name.</summary>
    public IReadOnlyList<CrewClassLine> Classes { get; init; } = [];

    /// <summary>What to tell about classes ahead.</summary>
    /// <param name="people">The employer's people of today whom the notices are about.</param>
    /// <param name="notices">What people were told last, where it became no mail, with the site of each.</param>
    public static IReadOnlyList<CrewClassLine> ClassesOf(
        IEnumerable<EmployedPerson> people, IEnumerable<(ClassInvitation Told, string CourseId, string Site)> notices)
    {
        var told = people.ToDictionary(person => person.PersonId);
        return
        [
            .. notices.Where(notice => told.ContainsKey(notice.Told.PersonId))
                .Select(notice => new CrewClassLine(told[notice.Told.PersonId], notice.CourseId, notice.Told, notice.Site))
                .OrderBy(line => line.Person.SiteName is null).ThenBy(line => line.Person.SiteName, StringComparer.Ordinal)
                .ThenBy(line => line.Person.CrewName, StringComparer.Ordinal).ThenBy(line => line.Told.HeldOn).ThenBy(line => line.Person.Name is null)
                .ThenBy(line => KeyText.Plain(line.Person.Name ?? ""), StringComparer.Ordinal).ThenBy(line => line.Person.PersonId),
        ];
    }

    /// <summary>Who does not handle until reviewed, by name: a crew must know whom not to call.</summary>
    public IReadOnlyList<EmployedPerson> OnHold { get; init; } = [];

    /// <summary>
    /// The page. A reminder stands on it until what it reminds of was renewed, withdrawn, or lapsed more than
    /// <see cref="Certification.Reminders.DaysLate"/> days ago; of several about one certification the newest.
    /// </summary>
    /// <param name="employer">Whose.</param>
    /// <param name="people">Its people of today whom the reminders are about.</param>
    /// <param name="held">What they hold or held.</param>
    /// <param name="reminders">Those that became no mail.</param>
    /// <param name="titles">Of schemes.</param>
    public static CrewListsPage Of(
        SeenEmployer employer, IEnumerable<EmployedPerson> people, IEnumerable<HeldCertification> held, IEnumerable<ReminderRecord> reminders,
        IReadOnlyDictionary<string, string> titles)
    {
        var (told, holdings) = (people.ToDictionary(person => person.PersonId), held.ToDictionary(one => (one.PersonId, one.SchemeId)));
        var lines = reminders.OrderByDescending(row => row.MadeAt).DistinctBy(row => (row.PersonId, row.SchemeId))
            .Where(row => told.ContainsKey(row.PersonId) && holdings.TryGetValue((row.PersonId, row.SchemeId), out var one)
                && Standings.ExpiresOn(one, employer.Today) == row.ExpiresOn && Standings.On(one, employer.Today) is not Standing.Withdrawn)
            .Select(row => new CrewListLine(told[row.PersonId], row.SchemeId, row.ExpiresOn));
        return new(
            employer.Id, employer.Name, employer.Today,
            [.. lines.OrderBy(line => line.Person.SiteName is null).ThenBy(line => line.Person.SiteName, StringComparer.Ordinal)
                .ThenBy(line => line.Person.CrewName, StringComparer.Ordinal).ThenBy(line => line.Person.Name is null)
                .ThenBy(line => KeyText.Plain(line.Person.Name ?? ""), StringComparer.Ordinal).ThenBy(line => line.Person.PersonId).ThenBy(line => line.ExpiresOn)],
            titles);
    }
}

/// <summary>One thing to tell somebody.</summary>
/// <param name="Person">Whom.</param>
/// <param name="SchemeId">What it is about.</param>
/// <param name="ExpiresOn">Its last day.</param>
public sealed record CrewListLine(EmployedPerson Person, string SchemeId, DateOnly ExpiresOn);

/// <summary>One thing to tell somebody about a class.</summary>
/// <param name="Person">Whom.</param>
/// <param name="CourseId">Of which course.</param>
/// <param name="Told">What: that they are expected and when, or that they are not any more.</param>
/// <param name="Site">Where.</param>
public sealed record CrewClassLine(EmployedPerson Person, string CourseId, ClassInvitation Told, string Site);
