using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Shelf;

namespace Training.Web.Features.Workforce;

/// <summary>What the first page of an employer is given.</summary>
/// <param name="Workforce">The people of the chosen site, or all.</param>
/// <param name="Filter">What was chosen.</param>
/// <param name="SiteName">The chosen site's name, or null.</param>
/// <param name="PeopleLapsing">So many people lapse in something before the chosen day.</param>
/// <param name="PeopleInGrace">So many lapsed already in something, and can still renew it.</param>
/// <param name="Lines">Worst first: in grace by its end, then by last day. At most <see cref="MostLines"/>.</param>
/// <param name="IsCut">Whether there are more lines than are shown.</param>
/// <param name="NotCurrent">People by a standing that is not current, for the links below.</param>
public sealed record TodayPage(
    EmployedPeople Workforce,
    TodayFilter Filter,
    string? SiteName,
    int PeopleLapsing,
    int PeopleInGrace,
    IReadOnlyList<TodayLine> Lines,
    bool IsCut,
    IReadOnlyList<KeyValuePair<Standing, int>> NotCurrent)
{
    /// <summary>Most lines of one page.</summary>
    public const int MostLines = PersonFileQueries.MostFiles;

    /// <summary>The lapses that the page is about, without what is to be done about them.</summary>
    public static TodayPage Of(EmployedPeople workforce, TodayFilter filter)
    {
        var names = workforce.People.Index().ToDictionary(person => person.Item.PersonId, person => (Place: person.Index, Person: person.Item));
        var held = workforce.People.SelectMany(person => workforce.Held[person.PersonId]).ToList();
        // "Before 1 March" is: the last day lies on 28 February or earlier.
        var lapsing = Lapses.By(held, workforce.Today, filter.Before.AddDays(-1))
            .Select(lapse => new TodayLine(names[lapse.PersonId].Person, lapse.SchemeId, lapse.Standing, lapse.ExpiresOn, null, lapse.DaysLeft, null))
            .OrderBy(line => line.ExpiresOn).ThenBy(line => names[line.Person.PersonId].Place).ToList();
        var inGrace = held.Select(certification => FindInGrace(certification, workforce.Today, names[certification.PersonId].Person))
            .OfType<TodayLine>().OrderBy(line => line.GraceEndsOn).ThenBy(line => names[line.Person.PersonId].Place).ToList();
        return new(
            workforce,
            filter,
            workforce.Sites.FirstOrDefault(site => site.Id == filter.SiteId)?.Name,
            lapsing.DistinctBy(line => line.Person.PersonId).Count(),
            inGrace.DistinctBy(line => line.Person.PersonId).Count(),
            [.. inGrace.Concat(lapsing).Take(MostLines)],
            inGrace.Count + lapsing.Count > MostLines,
            [.. held.Select(certification => (certification.PersonId, Standing: Standings.On(certification, workforce.Today)))
                .Where(one => one.Standing is Standing.Lapsed or Standing.Suspended or Standing.Withdrawn)
                .Distinct().CountBy(one => one.Standing!.Value).OrderBy(pair => pair.Key)]);
    }

    /// <summary>The page with what is to be done about each line.</summary>
    /// <param name="files">Of everybody in <see cref="Lines"/>.</param>
    /// <param name="shelf">The rules in force.</param>
    /// <param name="classes">Class days ahead.</param>
    /// <param name="language">Of the names.</param>
    public TodayPage WithSteps(
        IReadOnlyDictionary<Guid, PersonFile> files, CourseShelf shelf, ClassDays classes, Language language) => this with
        {
            Lines =
            [
                .. Lines.Select(line => shelf.Find(line.SchemeId) is { } course
                    ? line with { Step = SchemeStep.Of(files[line.Person.PersonId], course.Scheme, shelf.Courses, classes, Workforce.Today, language) }
                    : line),
            ],
        };

    private static TodayLine? FindInGrace(HeldCertification held, DateOnly today, EmployedPerson person)
    {
        if (Standings.On(held, today) != Standing.Lapsed || Standings.FindPeriod(held, today) is not { } period || today > period.GraceEndsOn) return null;
        return new(person, held.SchemeId, Standing.Lapsed, period.ExpiresOn, period.GraceEndsOn, period.GraceEndsOn.DayNumber - today.DayNumber, null);
    }
}

/// <summary>One person and scheme in the ledger.</summary>
/// <param name="Person">Who.</param>
/// <param name="SchemeId">Under which scheme.</param>
/// <param name="Standing">Today.</param>
/// <param name="ExpiresOn">Last day, in the past where it has lapsed.</param>
/// <param name="GraceEndsOn">Where it has lapsed: last day on which the renewal route is open.</param>
/// <param name="DaysLeft">Days to <paramref name="GraceEndsOn"/> where it has lapsed, else to <paramref name="ExpiresOn"/>.</param>
/// <param name="Step">What is to be done; null where the course is not on the shelf just now.</param>
public sealed record TodayLine(
    EmployedPerson Person, string SchemeId, Standing Standing, DateOnly ExpiresOn, DateOnly? GraceEndsOn, int DaysLeft, SchemeStep? Step);
