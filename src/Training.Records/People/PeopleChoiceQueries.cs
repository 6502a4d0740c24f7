using Microsoft.EntityFrameworkCore;

namespace Training.Records;

/// <summary>Reads the people of a choice: filtered, sorted and cut in the database.</summary>
public static class PeopleChoiceQueries
{
    /// <summary>How many people the choice admits.</summary>
    public static Task<int> CountAsync(this RecordsContext records, PeopleChoice choice, CancellationToken cancellation) =>
        records.Chosen(choice).CountAsync(cancellation);

    /// <summary>Some of the people that the choice admits, in its order.</summary>
    /// <param name="records">Where from.</param>
    /// <param name="choice">Which people.</param>
    /// <param name="skip">So many are passed over.</param>
    /// <param name="take">So many at most.</param>
    /// <param name="cancellation">Ends the wait.</param>
    public static async Task<IReadOnlyList<EmployedPerson>> PeopleAsync(
        this RecordsContext records, PeopleChoice choice, int skip, int take, CancellationToken cancellation) =>
        await records.Sorted(records.Chosen(choice), choice).Skip(skip).Take(take).Read().ToListAsync(cancellation);

    /// <summary>Schemes under which the employer's people of that day hold or held something, by id.</summary>
    public static async Task<IReadOnlyList<string>> SchemesHeldAsync(
        this RecordsContext records, Guid employerId, DateOnly day, CancellationToken cancellation) =>
        await (from employment in records.Employments
               where employment.EmployerId == employerId && employment.StartsOn <= day && (employment.EndsOn == null || employment.EndsOn >= day)
               join period in records.Periods on employment.PersonId equals period.PersonId
               select period.SchemeId).Distinct().OrderBy(id => id).Take(Bounds.RowsOfOnePerson).ToListAsync(cancellation);

    private static IQueryable<EmployedRow> Chosen(this RecordsContext records, PeopleChoice choice)
    {
        var people = records.EmployedOn(choice.EmployerId, choice.Day);
        if (choice.SiteId is { } siteId) people = people.Where(person => person.SiteId == siteId);
        if (choice.CrewId is { } crewId) people = people.Where(person => person.CrewId == crewId);
        if (choice.Text is { } text)
        {
            var (name, badge) = (KeyText.Plain(text), KeyText.Of(text));
            people = people.Where(person => person.NameOrder!.Contains(name) || person.BadgeKey!.Contains(badge));
        }

        return choice.Standing is { } standing ? records.Standing(people, choice, standing) : people;
    }

    private static IQueryable<EmployedRow> Standing(
        this RecordsContext records, IQueryable<EmployedRow> people, PeopleChoice choice, StandingChoice chosen)
    {
        var (schemes, count) = (choice.SchemeIds, choice.SchemeIds.Count);
        var standings = records.StandingsOn(choice.Day).Where(row => schemes.Contains(row.SchemeId));
        return chosen.ToStanding() is { } standing
            ? people.Where(person => standings.Any(row => row.PersonId == person.PersonId && row.Standing == standing))
            // A row a scheme: who has fewer than there are schemes lacks one.
            : people.Where(person => standings.Count(row => row.PersonId == person.PersonId) < count);
    }

    private static IOrderedQueryable<EmployedRow> Sorted(this RecordsContext records, IQueryable<EmployedRow> people, PeopleChoice choice)
    {
        var (schemes, day) = (choice.SchemeIds, choice.Day);
        var standings = records.StandingsOn(day).Where(row => schemes.Contains(row.SchemeId));
        var ahead = standings.Where(row => row.ExpiresOn >= day && row.Standing != Certification.Standing.Withdrawn);
        var urgencies = standings.Select(row => new
        {
            row.PersonId,
            Urgency = row.Standing == Certification.Standing.Suspended ? 0
                : row.Standing == Certification.Standing.Lapsed ? 1
                : row.Standing == Certification.Standing.Withdrawn ? 2
                : row.Standing == Certification.Standing.RenewalDue ? 3
                : 4,
        });
        return choice.Order switch
        {
            PeopleOrder.Name => people.ByName(),
            PeopleOrder.Badge => people.OrderBy(person => person.BadgeKey == null).ThenBy(person => person.BadgeKey).ThenByName(),
            PeopleOrder.Site => people.OrderBy(person => person.SiteKey == null).ThenBy(person => person.SiteKey).ThenByName(),
            PeopleOrder.LastDay => people
                .OrderBy(person => ahead.Where(row => row.PersonId == person.PersonId).Min(row => (DateOnly?)row.ExpiresOn) ?? DateOnly.MaxValue).ThenByName(),
            PeopleOrder.Standing => people
                // The first of a sorted list: SQL Server computes no minimum of something that it has to look up.
                .OrderBy(person => urgencies.Where(row => row.PersonId == person.PersonId).OrderBy(row => row.Urgency).Select(row => (int?)row.Urgency).FirstOrDefault() ?? int.MaxValue)
                .ThenByName(),
        };
    }

    private static IOrderedQueryable<EmployedRow> ThenByName(this IOrderedQueryable<EmployedRow> people) =>
        people.ThenBy(person => person.NameOrder == null).ThenBy(person => person.NameOrder).ThenBy(person => person.PersonId);
}
