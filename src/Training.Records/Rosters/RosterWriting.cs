using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records;

/// <summary>Writes a difference in batches, inside the caller's transaction. Dated rows keep their rule: what lasts ends the day before.</summary>
internal sealed class RosterWriting(RecordsContext records, KnownRoster known)
{
    // So many people are tracked at once: a long roster must not hold all of its rows twice.
    private const int BatchSize = 1000;

    private readonly Dictionary<(Guid SiteId, string NameKey), Guid> crews = known.Crews.Values.ToDictionary(crew => (crew.SiteId, crew.NameKey), crew => crew.Id);
    private readonly Dictionary<Guid, Person> persons = known.Persons.ToDictionary(person => person.Id);
    private readonly List<object> added = [];

    internal async Task WriteAsync(RosterDifference difference, RosterScope scope, CancellationToken cancellation)
    {
        var changes = difference.Returning.Concat(difference.Changed).ToList();
        AddCrews([.. difference.New, .. changes.Where(change => !change.Person.IsPlacedElsewhere).Select(change => change.Row)]);
        await SaveAsync(cancellation);
        foreach (var rows in difference.New.Chunk(BatchSize))
        {
            foreach (var row in rows) AddPerson(row);
            await SaveAsync(cancellation);
        }

        foreach (var batch in changes.Chunk(BatchSize))
        {
            var printed = await PrintedAsync(batch, cancellation);
            foreach (var change in batch) Change(change, printed);
            await SaveAsync(cancellation);
        }

        if (scope == RosterScope.Part) return;
        foreach (var people in difference.Missing.Chunk(BatchSize))
        {
            foreach (var person in people) End(person.PersonId);
            await SaveAsync(cancellation);
        }
    }

    private void AddCrews(IReadOnlyList<RosterRow> rows)
    {
        foreach (var row in rows.Where(row => row.Crew is not null))
        {
            var crew = new Crew { Id = Guid.CreateVersion7(), SiteId = row.SiteId, Name = row.Crew! }; // not null: filtered in the line above
            if (crews.TryAdd((crew.SiteId, crew.NameKey), crew.Id)) added.Add(crew);
        }
    }

    private void AddPerson(RosterRow row)
    {
        var id = Guid.CreateVersion7();
        added.Add(new Person { Id = id, Language = row.Language ?? Language.English, MailAddress = row.MailAddress });
        added.Add(new PersonName { Id = Guid.CreateVersion7(), PersonId = id, Text = row.Name, StartsOn = row.StartsOn });
        AddEmployment(id, row, row.StartsOn);
        added.Add(new Badge { Id = Guid.CreateVersion7(), PersonId = id, EmployerId = EmployerOf(row), StartsOn = row.StartsOn, Number = row.Badge });
        added.Add(new SiteAssignment { Id = Guid.CreateVersion7(), PersonId = id, SiteId = row.SiteId, StartsOn = row.StartsOn });
        if (row.Crew is not null) AddCrew(id, row, row.StartsOn);
    }

    private void Change(RosterChange change, IReadOnlySet<Guid> printed)
    {
        var (row, person) = (change.Row, Touch(change.Person.PersonId));
        if (row.Language is { } language) person.Language = language;
        if (change.Has(RosterField.MailAddress)) person.MailAddress = row.MailAddress;
        if (change.Has(RosterField.Name)) Rename(person.Id, row.Name, printed);
        if (change.ReturnsOn is { } returnsOn) AddEmployment(person.Id, row, returnsOn);

        // Who starts later moves then, not before they are there.
        var wanted = change.ReturnsOn ?? Later(known.Today, known.Lasting(known.Employments[person.Id]).Min(employment => employment.StartsOn));
        if (change.Has(RosterField.Site))
        {
            var from = MakeRoom(known.SiteAssignments[person.Id], wanted);
            added.Add(new SiteAssignment { Id = Guid.CreateVersion7(), PersonId = person.Id, SiteId = row.SiteId, StartsOn = from });
        }

        // Who moves to another site changes crews also where both have the same name.
        if (!change.Has(RosterField.Crew) && !change.Has(RosterField.Site)) return;
        var crewFrom = MakeRoom(known.CrewAssignments[person.Id], wanted);
        if (row.Crew is not null) AddCrew(person.Id, row, crewFrom);
    }

    private void End(Guid personId)
    {
        Touch(personId);
        EndBefore(known.Lasting(known.Employments[personId]), known.Today);
        EndBefore(known.Lasting(known.SiteAssignments[personId]).Where(row => known.Sites.ContainsKey(row.SiteId)), known.Today);
        EndBefore(known.Lasting(known.CrewAssignments[personId]).Where(row => known.Crews.ContainsKey(row.CrewId)), known.Today);
    }

    // Papers point to the row that they printed, so that one keeps its text; a name that began today and is on no paper is put right.
    private void Rename(Guid personId, string name, IReadOnlySet<Guid> printed)
    {
        var newest = known.Names[personId].MaxBy(row => row.StartsOn);
        if (newest is not null && newest.StartsOn >= known.Today && !printed.Contains(newest.Id))
        {
            records.Attach(newest);
            newest.Text = name;
            return;
        }

        var startsOn = newest is null || newest.StartsOn < known.Today ? known.Today : newest.StartsOn.AddDays(1);
        added.Add(new PersonName { Id = Guid.CreateVersion7(), PersonId = personId, Text = name, StartsOn = startsOn });
    }

    private async Task<HashSet<Guid>> PrintedAsync(IReadOnlyList<RosterChange> changes, CancellationToken cancellation)
    {
        var names = changes.Where(change => change.Has(RosterField.Name)).SelectMany(change => known.Names[change.Person.PersonId])
            .Where(name => name.StartsOn >= known.Today).Select(name => name.Id).ToList();
        return [.. await records.Papers.Where(paper => names.Contains(paper.PersonNameId)).Select(paper => paper.PersonNameId).ToListAsync(cancellation)];
    }

    // No index can judge an overlap: the version of the person is counted up, so that of two who move them at once one starts again.
    private Person Touch(Guid personId)
    {
        var entry = records.Attach(persons[personId]);
        entry.Property(person => person.Version).IsModified = true;
        return entry.Entity;
    }

    private DateOnly MakeRoom<T>(IEnumerable<T> rows, DateOnly wanted)
        where T : DatedRow
    {
        var over = rows.Where(row => row.EndsOn < known.Today).Max(row => row.EndsOn);
        var from = over >= wanted ? over.Value.AddDays(1) : wanted;
        EndBefore(known.Lasting(rows), from);
        return from;
    }

    private void EndBefore<T>(IEnumerable<T> rows, DateOnly day)
        where T : DatedRow
    {
        foreach (var row in rows)
        {
            records.Attach(row);
            // What would begin on that day or later never held for a day.
            if (row.StartsOn >= day) records.Remove(row);
            else if (!(row.EndsOn < day)) row.EndsOn = day.AddDays(-1);
        }
    }

    private void AddEmployment(Guid personId, RosterRow row, DateOnly startsOn) =>
        added.Add(new Employment { Id = Guid.CreateVersion7(), PersonId = personId, EmployerId = EmployerOf(row), StartsOn = startsOn });

    private void AddCrew(Guid personId, RosterRow row, DateOnly startsOn) => added.Add(new CrewAssignment
    {
        Id = Guid.CreateVersion7(), PersonId = personId, StartsOn = startsOn,
        CrewId = crews[(row.SiteId, KeyText.Of(row.Crew!))], // not null: the callers ask
    });

    private Guid EmployerOf(RosterRow row) => known.Sites[row.SiteId].EmployerId;

    // What ends goes first: a row that begins today may take the place of another that began today.
    private async Task SaveAsync(CancellationToken cancellation)
    {
        await records.SaveChangesAsync(cancellation);
        records.ChangeTracker.Clear();
        // What is added is complete: looking through all of it for changes is half of the time.
        records.ChangeTracker.AutoDetectChangesEnabled = false;
        try
        {
            records.AddRange(added);
            await records.SaveChangesAsync(cancellation);
        }
        finally
        {
            records.ChangeTracker.AutoDetectChangesEnabled = true;
        }

        records.ChangeTracker.Clear();
        added.Clear();
    }

    private static DateOnly Later(DateOnly one, DateOnly other) => one > other ? one : other;
}
