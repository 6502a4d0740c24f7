using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Features.Cover;
using Training.Web.Shelf;

namespace Training.Web.Features.Workforce;

/// <summary>What the first page of an employer is given.</summary>
/// <param name="Employer">Whose.</param>
/// <param name="People">So many people work there: at the chosen site, or in all.</param>
/// <param name="Filter">What was chosen.</param>
/// <param name="SiteName">The chosen site's name, or null.</param>
/// <param name="PeopleLapsing">So many people lapse in something before the chosen day.</param>
/// <param name="PeopleInGrace">So many lapsed already in something, and can still renew it.</param>
/// <param name="Lines">Worst first: in grace by its end, then by last day. At most <see cref="MostLines"/>.</param>
/// <param name="IsCut">Whether there are more lines than are shown.</param>
/// <param name="NotCurrent">People by a standing that is not current, for the links below.</param>
public sealed record TodayPage(
    SeenEmployer Employer,
    int People,
    TodayFilter Filter,
    string? SiteName,
    int PeopleLapsing,
    int PeopleInGrace,
    IReadOnlyList<TodayLine> Lines,
    bool IsCut,
    IReadOnlyList<KeyValuePair<Standing, int>> NotCurrent)
{
    /// <summary>The cover of all sites; null where it is not asked for.</summary>
    public EmployerCover? Cover { get; init; }

    /// <summary>Who does not handle today until somebody has reviewed, by name; at most <see cref="MostLines"/>.</summary>
    public IReadOnlyList<EmployedPerson> OnHold { get; init; } = [];

    /// <summary>So many of the lines need a class day and have a seat.</summary>
    public int Seated => Lines.Count(line => line.Step is { NeedsClass: true, Seat: not null });

    /// <summary>So many of the lines need a class day and have none.</summary>
    public int Unseated => Lines.Count(line => line.Step is { NeedsClass: true, Seat: null });

    /// <summary>Most lines of one page.</summary>
    public const int MostLines = PersonFileQueries.MostFiles;

    /// <summary>Reads the page: who lapses inside its span and what they can do, and of all others only how many there are.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="employer">Whose people.</param>
    /// <param name="filter">What was chosen.</param>
    /// <param name="shelf">The rules in force.</param>
    /// <param name="language">Of the names.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<TodayPage> ReadAsync(
        RecordsContext records, SeenEmployer employer, TodayFilter filter, CourseShelf shelf, Language language, CancellationToken cancellation)
    {
        var today = employer.Today;
        var inGrace = await records.InGraceAsync(employer.Id, filter.SiteId, today, MostLines, cancellation);
        // "Before 1 March" is: the last day lies on 28 February or earlier.
        var lapsing = await records.LapsingAsync(employer.Id, filter.SiteId, today, filter.Before.AddDays(-1), MostLines, cancellation);
        var counts = await records.StandingCountsAsync(employer.Id, filter.SiteId, today, cancellation);
        var rows = inGrace.Rows.Concat(lapsing.Rows).Take(MostLines).ToList();
        Guid[] ids = [.. rows.Select(row => row.PersonId).Distinct()];
        var people = (await records.EmployedAsync(ids, employer.Id, today, cancellation)).ToDictionary(person => person.PersonId);
        var files = await records.PersonFilesAsync(ids, cancellation);
        var classes = await ClassDays.ReadAsync(records, employer.Id, ids, today, cancellation);
        var working = records.EmployedOn(employer.Id, today).Where(person => filter.SiteId == null || person.SiteId == filter.SiteId).Select(person => person.PersonId);
        var onHold = Certification.Holds.On(await records.HoldsOfAsync(working, cancellation), today).Select(hold => hold.PersonId).Distinct().Take(MostLines);
        return new(
            employer,
            await records.CountEmployedAsync(employer.Id, filter.SiteId, today, cancellation),
            filter,
            employer.Sites.FirstOrDefault(site => site.Id == filter.SiteId)?.Name,
            lapsing.People,
            inGrace.People,
            [
                .. rows.Select(row => TodayLine.Of(row, people[row.PersonId], today, shelf.Find(row.SchemeId) is { } course
                    ? SchemeStep.Of(files[row.PersonId], course.Scheme, shelf.Courses, classes, today, language)
                    : null)),
            ],
            inGrace.Count + lapsing.Count > MostLines,
            [.. counts.Where(pair => pair.Key is Standing.Lapsed or Standing.Suspended or Standing.Withdrawn).OrderBy(pair => pair.Key)])
        {
            OnHold = await records.EmployedAsync(onHold, employer.Id, today, cancellation),
        };
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
    EmployedPerson Person, string SchemeId, Standing Standing, DateOnly ExpiresOn, DateOnly? GraceEndsOn, int DaysLeft, SchemeStep? Step)
{
    /// <summary>The line of a lapse.</summary>
    public static TodayLine Of(LapseRow row, EmployedPerson person, DateOnly today, SchemeStep? step)
    {
        DateOnly? graceEndsOn = row.Standing == Standing.Lapsed ? row.GraceEndsOn : null;
        return new(person, row.SchemeId, row.Standing, row.ExpiresOn, graceEndsOn, (graceEndsOn ?? row.ExpiresOn).DayNumber - today.DayNumber, step);
    }
}
