using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Provider;
using Training.Web.Settings;
using Training.Web.Shelf;

namespace Training.Web.Features.Reminders;

/// <summary>
/// Writes to each representative of an employer once a week who of their people lapses or is on hold, and how many snakes were met; on Monday,
/// or on the first day after it on which the program runs. A week in which there is nothing to say has no mail. Safe to run twice and on several servers at once.
/// </summary>
public sealed class DigestSweep(IDbContextFactory<RecordsContext> factory, CourseShelf shelf, TrainingOptions options, OurProvider provider, TimeProvider clock)
{
    /// <summary>How far ahead a summary looks.</summary>
    public const int DaysAhead = 90;

    // Of each list; the rest is on the page, to which the mail leads.
    private const int MostLines = 100;

    /// <summary>One look at every representative.</summary>
    public async Task RunAsync(CancellationToken cancellation)
    {
        var now = clock.GetUtcNow();
        var zone = TimeZoneInfo.FindSystemTimeZoneById(provider.Zone);
        if (options.Reminders.IsQuiet(now, zone)) return;
        var today = DecisionDay.On(now, zone);
        var monday = today.AddDays(-(((int)today.DayOfWeek + 6) % 7));
        await using var records = await factory.CreateDbContextAsync(cancellation);
        var due = await records.Representatives
            .Where(row => row.StartsOn <= today && (row.EndsOn == null || row.EndsOn >= today)
                && !records.Digests.Any(digest => digest.EmployerId == row.EmployerId && digest.PersonId == row.PersonId && digest.WeekStartsOn == monday))
            .Select(row => new { row.EmployerId, row.PersonId }).Distinct().ToListAsync(cancellation);
        foreach (var employer in due.GroupBy(row => row.EmployerId, row => row.PersonId))
        {
            var week = await WeekAsync(records, employer.Key, today, now, cancellation);
            if (week.IsEmpty) continue;
            foreach (var personId in employer) await WriteAsync(records, week, personId, monday, now, cancellation);
        }
    }

    private static async Task WriteAsync(
        RecordsContext records, Week week, Guid personId, DateOnly monday, DateTimeOffset now, CancellationToken cancellation)
    {
        var to = await records.GetRecipientAsync(personId, cancellation);
        var mail = to.Address is null ? null : week.Letter(to.Language).To(to, now);
        var digest = new DigestRecord
        {
            Id = Guid.CreateVersion7(), EmployerId = week.EmployerId, WeekStartsOn = monday, PersonId = personId, MadeAt = now, MailId = mail?.Id,
        };
        await records.TryKeepAsync(digest, mail, cancellation);
    }

    private async Task<Week> WeekAsync(
        RecordsContext records, Guid employerId, DateOnly today, DateTimeOffset now, CancellationToken cancellation)
    {
        var name = await records.Employers.Where(employer => employer.Id == employerId).Select(employer => employer.Name).SingleAsync(cancellation);
        var lapsed = await records.LapsedSinceAsync(employerId, null, today, today.AddDays(-Certification.Reminders.DaysLate), MostLines, cancellation);
        var ahead = await records.LapsingAsync(employerId, null, today, today.AddDays(DaysAhead), MostLines, cancellation);
        var since = now.AddDays(-7);
        var told = await (from employment in records.Employments
                          where employment.EmployerId == employerId && employment.StartsOn <= today && (employment.EndsOn == null || employment.EndsOn >= today)
                          join reminder in records.Reminders on employment.PersonId equals reminder.PersonId
                          where reminder.MailId == null && reminder.MadeAt > since
                          select employment.PersonId).Distinct().OrderBy(id => id).Take(MostLines).ToListAsync(cancellation);
        var held = Holds.On(await records.HoldsOfAsync(records.Employments
            .Where(row => row.EmployerId == employerId && row.StartsOn <= today && (row.EndsOn == null || row.EndsOn >= today)).Select(row => row.PersonId), cancellation), today)
            .Select(hold => hold.PersonId).Distinct().Take(MostLines).ToList();
        var (weekAgo, yesterday) = (today.AddDays(-7), today.AddDays(-1));
        var met = await (from encounter in records.Encounters
                         join site in records.Sites on encounter.SiteId equals site.Id
                         where site.EmployerId == employerId && encounter.MetOn >= weekAgo && encounter.MetOn <= yesterday
                         group encounter by encounter.Kind into kind
                         select new { kind.Key, Count = kind.Count() }).ToListAsync(cancellation);
        var people = (await records.EmployedAsync(
                lapsed.Rows.Concat(ahead.Rows).Select(row => row.PersonId).Concat(told).Concat(held).Distinct(), employerId, today, cancellation))
            .ToDictionary(person => person.PersonId);
        return new(
            employerId, name, lapsed, ahead, [.. told.Select(id => people.GetValueOrDefault(id)?.Name).OfType<string>().Order(StringComparer.Ordinal)],
            [.. held.Select(id => people.GetValueOrDefault(id)?.Name).OfType<string>().Order(StringComparer.Ordinal)],
            (met.Sum(kind => kind.Count), met.Where(kind => kind.Key is EncounterKind.NearMiss or EncounterKind.Bite).Sum(kind => kind.Count)),
            people, shelf, options, provider);
    }

    /// <summary>What one employer is told, before it is put in words.</summary>
    private sealed record Week(
        Guid EmployerId,
        string Employer,
        LapseList Lapsed,
        LapseList Ahead,
        IReadOnlyList<string> Told,
        IReadOnlyList<string> Held,
        (int All, int Close) Met,
        IReadOnlyDictionary<Guid, EmployedPerson> People,
        CourseShelf Shelf,
        TrainingOptions Options,
        OurProvider Provider)
    {
        public bool IsEmpty => Lapsed.Count + Ahead.Count + Told.Count + Held.Count + Met.All == 0;

        public Letter Letter(Language language)
        {
            IReadOnlyList<DigestLine> Lines(LapseList list) =>
            [
                .. list.Rows.Select(one => new DigestLine(
                    People.GetValueOrDefault(one.PersonId)?.Name, People.GetValueOrDefault(one.PersonId)?.Badge, Shelf.Find(one.SchemeId)?.Scheme.Words[language].Title ?? one.SchemeId, one.ExpiresOn)),
            ];
            return Reminders.Letter.OfWeek(
                Employer, Lines(Lapsed), Lines(Ahead), Lapsed.Count - Lapsed.Rows.Count + Ahead.Count - Ahead.Rows.Count, Told,
                Held, Met,
                Options.PublicPage($"{language.Tag()}/employers/{EmployerId}"), Provider.Name, language);
        }
    }
}
