using Microsoft.EntityFrameworkCore;
using Training.Courses;

namespace Training.Records;

/// <summary>Somebody new, with the work that brings them.</summary>
/// <param name="Id">Made by the form; the same again is one person.</param>
/// <param name="Name">As they write it; at most 200 characters.</param>
/// <param name="Language">To write to them in.</param>
/// <param name="StartsOn">First day of everything here.</param>
/// <param name="Work">Where they work; null for the provider's own people.</param>
public sealed record NewPerson(Guid Id, string Name, Language Language, DateOnly StartsOn, Workplace? Work);

/// <summary>A place of work.</summary>
/// <param name="EmployerId">For whom.</param>
/// <param name="Badge">The person's number there.</param>
/// <param name="SiteId">Where; a site of that employer.</param>
public sealed record Workplace(Guid EmployerId, string Badge, Guid SiteId);

/// <summary>Where somebody works from a day on.</summary>
/// <param name="PersonId">Who.</param>
/// <param name="StartsOn">First day.</param>
/// <param name="EmployerId">For whom.</param>
/// <param name="Badge">Their number there.</param>
/// <param name="SiteId">Where; a site of that employer.</param>
public sealed record NewWork(Guid PersonId, DateOnly StartsOn, Guid EmployerId, string Badge, Guid SiteId);

/// <summary>Keeps employers, sites, and people with their work.</summary>
public static class RosterKeeping
{
    /// <summary>Keeps an employer. Refused where another has the name; case and outer spaces do not matter.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, Employer employer, CancellationToken cancellation)
    {
        if (await records.TryInsertAsync(cancellation, employer)) return new Kept.Stored(employer.Id);
        var isSame = await records.Employers.AnyAsync(other => other.Id == employer.Id && other.NameKey == employer.NameKey, cancellation);
        return isSame ? new Kept.AlreadyStored(employer.Id) : Refuse("employer", RecordsProblems.NameTaken, employer.Name);
    }

    /// <summary>Keeps a site. Refused where its employer has another of the name.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, Site site, CancellationToken cancellation)
    {
        if (!await records.Employers.AnyAsync(employer => employer.Id == site.EmployerId, cancellation))
            return Refuse("employer", RecordsProblems.EmployerUnknown, site.EmployerId.ToString());
        if (await records.TryInsertAsync(cancellation, site)) return new Kept.Stored(site.Id);
        var isSame = await records.Sites.AnyAsync(
            other => other.Id == site.Id && other.EmployerId == site.EmployerId && other.NameKey == site.NameKey, cancellation);
        return isSame ? new Kept.AlreadyStored(site.Id) : Refuse("site", RecordsProblems.NameTaken, site.Name);
    }

    /// <summary>Keeps a person with name and, where they have one, employment, badge and site: all of it or nothing. The same again is answered with what is stored.</summary>
    public static async Task<Kept> RegisterAsync(this RecordsContext records, NewPerson person, CancellationToken cancellation)
    {
        if (await records.Persons.AnyAsync(other => other.Id == person.Id, cancellation)) return await records.RepeatAsync(person, cancellation);
        await using var transaction = await records.Database.BeginTransactionAsync(cancellation);
        var isNew = await records.TryInsertAsync(
            cancellation,
            new Person { Id = person.Id, Language = person.Language },
            new PersonName { Id = Guid.CreateVersion7(), PersonId = person.Id, Text = person.Name, StartsOn = person.StartsOn });
        if (!isNew)
        {
            await transaction.RollbackAsync(cancellation);
            return await records.RepeatAsync(person, cancellation);
        }

        if (person.Work is { } place
            && await records.KeepRowsAsync(new(person.Id, person.StartsOn, place.EmployerId, place.Badge, place.SiteId), cancellation) is { } refused) return refused;
        await transaction.CommitAsync(cancellation);
        return new Kept.Stored(person.Id);
    }

    /// <summary>Keeps where somebody works from a day on: all of it or nothing. What lasts with the same employer or on another site ends the day before.</summary>
    public static async Task<Kept> KeepAsync(this RecordsContext records, NewWork work, CancellationToken cancellation)
    {
        if (!await records.Persons.AnyAsync(person => person.Id == work.PersonId, cancellation))
            return Refuse("person", RecordsProblems.PersonUnknown, work.PersonId.ToString());
        var badge = KeyText.Of(work.Badge);
        await using var transaction = await records.Database.BeginTransactionAsync(cancellation);
        var isMoved = await records.EndAsync(records.SiteAssignments, work, cancellation)
            & await records.EndAsync(records.CrewAssignments, work, cancellation)
            & await records.EndAsync(records.Employments.Where(row => row.EmployerId == work.EmployerId), work, cancellation)
            & await records.EndAsync(records.Badges.Where(row => row.EmployerId == work.EmployerId && row.NumberKey != badge), work, cancellation);
        if (!isMoved) return Refuse("person", RecordsProblems.PersonChanged);
        if (await records.KeepRowsAsync(work, cancellation) is { } refused) return refused;
        await transaction.CommitAsync(cancellation);
        return new Kept.Stored(work.PersonId);
    }

    /// <summary>Null where all rows were kept; otherwise nothing is, once the transaction is left without a commit.</summary>
    private static async Task<Kept.Refused?> KeepRowsAsync(this RecordsContext records, NewWork work, CancellationToken cancellation)
    {
        if (!await records.Sites.AnyAsync(site => site.Id == work.SiteId && site.EmployerId == work.EmployerId, cancellation))
            return Refuse("site", RecordsProblems.SiteUnknown, work.SiteId.ToString());
        var employment = new Employment { Id = Guid.CreateVersion7(), PersonId = work.PersonId, StartsOn = work.StartsOn, EmployerId = work.EmployerId };
        if (await records.KeepAsync(employment, cancellation) is Kept.Refused noEmployment) return noEmployment;
        var key = KeyText.Of(work.Badge);
        var isOwnBadge = await records.Badges.AnyAsync(
            row => row.PersonId == work.PersonId && row.EmployerId == work.EmployerId && row.NumberKey == key && row.EndsOn == null, cancellation);
        if (!isOwnBadge)
        {
            var badge = new Badge
            {
                Id = Guid.CreateVersion7(), PersonId = work.PersonId, StartsOn = work.StartsOn, EmployerId = work.EmployerId, Number = work.Badge,
            };
            if (await records.KeepAsync(badge, cancellation) is Kept.Refused noBadge) return noBadge;
        }

        var site = new SiteAssignment { Id = Guid.CreateVersion7(), PersonId = work.PersonId, StartsOn = work.StartsOn, SiteId = work.SiteId };
        return await records.KeepAsync(site, cancellation) as Kept.Refused;
    }

    private static async Task<bool> EndAsync<T>(this RecordsContext records, IQueryable<T> rows, NewWork work, CancellationToken cancellation)
        where T : DatedRow
    {
        var lasting = await rows.Where(row => row.PersonId == work.PersonId && row.StartsOn < work.StartsOn && row.EndsOn == null)
            .ToListAsync(cancellation);
        foreach (var row in lasting) row.EndsOn = work.StartsOn.AddDays(-1);
        try
        {
            await records.SaveChangesAsync(cancellation);
            return true;
        }
        catch (DbUpdateConcurrencyException)
        {
            return false;
        }
        finally
        {
            foreach (var row in lasting) records.Entry(row).State = EntityState.Detached;
        }
    }

    private static async Task<Kept> RepeatAsync(this RecordsContext records, NewPerson person, CancellationToken cancellation)
    {
        var isSame = await records.PersonNames.AnyAsync(name => name.PersonId == person.Id && name.Text == person.Name, cancellation)
            && (person.Work is not { } work || await records.Employments.AnyAsync(
                row => row.PersonId == person.Id && row.EmployerId == work.EmployerId && row.StartsOn == person.StartsOn, cancellation));
        return isSame ? new Kept.AlreadyStored(person.Id) : Refuse("person", RecordsProblems.OtherContent, person.Id.ToString());
    }

    private static Kept.Refused Refuse(string part, string code, params IReadOnlyList<string> arguments) =>
        new([RecordsProblems.At(part, code, arguments)]);
}
