using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Training.Certification;
using Training.Courses;
using Training.Documents.Rosters;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Shared;
using Training.Web.Features.Workforce;
using Training.Web.Languages;
using Training.Web.Shelf;
using RosterPerson = Training.Documents.Rosters.RosterPerson;

namespace Training.Web.Features.CrewRosters;

/// <summary>
/// Who works at a site and how they stand today, for the wall of its office. Everybody is on it: a roster that left people out would be read as one that
/// does not. A hold stands on no paper (docs/rules.md, "Who is told of a hold").
/// </summary>
public sealed class CrewRostersController(RecordsContext records, CourseShelf shelf, PrintedPapers papers, TimeProvider clock) : Controller
{
    /// <summary>The roster of a site, or of one of its crews, as PDF.</summary>
    [HttpGet("/{language:language}/employers/{employerId:guid}/sites/{siteId:guid}/roster.pdf")]
    public async Task<IActionResult> Show(Guid employerId, Guid siteId, Guid? crew, CancellationToken cancellation)
    {
        if (!ModelState.IsValid || await records.FindEmployerAsync(HttpContext.Visitor(), employerId, cancellation) is not { } employer) return NotFound();
        var site = await records.Sites.AsNoTracking().SingleOrDefaultAsync(row => row.Id == siteId && row.EmployerId == employerId, cancellation);
        var group = crew is null ? null : await records.Crews.AsNoTracking().SingleOrDefaultAsync(row => row.Id == crew && row.SiteId == siteId, cancellation);
        if (site is null || (crew is not null && group is null)) return NotFound();

        var asOf = TimeZoneInfo.ConvertTime(clock.GetUtcNow(), TimeZoneInfo.FindSystemTimeZoneById(site.Zone));
        var today = DateOnly.FromDateTime(asOf.DateTime);
        var choice = new PeopleChoice { EmployerId = employerId, Day = today, SiteId = siteId, CrewId = crew };
        var count = await records.CountAsync(choice, cancellation);
        if (count > RosterPage.MostPeople) return PrintedPapers.CannotPrint(this, [TooMany(count, group?.Name ?? site.Name)]);
        var page = new RosterPage
        {
            Language = HttpContext.PageLanguageOf(),
            Paper = papers.Size,
            ProviderName = papers.ProviderName,
            EmployerName = employer.Name,
            SiteName = site.Name,
            CrewName = group?.Name,
            AsOf = asOf,
            People = await PeopleAsync(choice, cancellation),
            IsDemonstration = papers.IsDemonstration,
        };
        return papers.Answer(this, page, RosterChecks.CanPrint, RosterWriter.Write, $"roster-{today.Iso()}.pdf");
    }

    private static Problem TooMany(int count, string where) => new(
        CrewRosterProblems.TooManyPeople, Place.Of(where),
        count.ToString("N0", CultureInfo.CurrentCulture), RosterPage.MostPeople.ToString("N0", CultureInfo.CurrentCulture));

    private async Task<IReadOnlyList<RosterPerson>> PeopleAsync(PeopleChoice choice, CancellationToken cancellation)
    {
        var people = await records.PeopleAsync(choice, 0, RosterPage.MostPeople, cancellation);
        var held = (await records.HeldCertificationsAsync([.. people.Select(person => person.PersonId)], cancellation)).ToLookup(one => one.PersonId);
        return [.. people.Select(person => new RosterPerson(person.Name, person.Badge, [.. held[person.PersonId].SelectMany(one => HoldingOf(one, choice.Day))]))];
    }

    // None where the first period is still to come.
    private IEnumerable<RosterHolding> HoldingOf(HeldCertification held, DateOnly day) =>
        Standings.On(held, day) is { } standing && Standings.ExpiresOn(held, day) is { } expiresOn
            ? [new(shelf.TitleOf(held.SchemeId, HttpContext.PageLanguageOf()), standing, expiresOn)]
            : [];
}
