using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;

namespace Training.Web.Features.Roles;

/// <summary>A lead says who teaches and scores, who leads with them, and who sees an employer's people.</summary>
[Route("/{language:language}/programme/people/{personId:guid}/roles")]
public sealed class RolesController(RecordsContext records, IStringLocalizer<RoleText> localizer) : Controller
{
    private const int Most = 200;
    private const int MostEmployers = 1000;

    private readonly IStringLocalizer<RoleText> Text = localizer;

    /// <summary>What the person may do.</summary>
    [HttpGet("")]
    public async Task<IActionResult> Show(Guid personId, CancellationToken cancellation)
    {
        var form = new RoleForm
        {
            Id = Guid.CreateVersion7(), StartsOn = HttpContext.Visitor().Today.Iso(), Languages = [.. LanguageTags.All.Select(language => language.Tag())],
        };
        return await FindAsync(personId, form, cancellation) is { } page ? View(page) : NotFound();
    }

    /// <summary>Adds a role.</summary>
    [HttpPost("")]
    public async Task<IActionResult> Add(Guid personId, RoleForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear();
        if (await FindAsync(personId, form, cancellation) is not { } page) return NotFound();
        if (FormValues.ReadDay(form.StartsOn) is { } startsOn)
        {
            if (await KeepAsync(page, form, startsOn, cancellation) is { } kept)
            {
                if (kept is not Kept.Refused refused) return Back(personId);
                foreach (var problem in refused.Problems) ModelState.Add(nameof(form.StartsOn), problem);
            }
        }
        else
        {
            ModelState.AddModelError(nameof(form.StartsOn), Text["DayMissing"]);
        }

        return this.Mend("Show", page);
    }

    /// <summary>Ends a role today; today is its last day.</summary>
    [HttpPost("{roleId:guid}/end")]
    public async Task<IActionResult> End(Guid personId, Guid roleId, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        // A programme whose only lead locked the door behind them could be opened by nobody.
        if (personId == visitor.PersonId) return NotFound();
        var isEnded = await records.EndAsync<Appointment>(personId, roleId, visitor.Today, cancellation)
            || await records.EndAsync<Representative>(personId, roleId, visitor.Today, cancellation);
        return isEnded ? Back(personId) : NotFound();
    }

    /// <summary>Null where the form does not say what is to be kept; the field then tells.</summary>
    private async Task<Kept?> KeepAsync(RolesPage page, RoleForm form, DateOnly startsOn, CancellationToken cancellation)
    {
        if (form.Appointed is { } role)
        {
            if (form.SpokenLanguages.Count > 0)
            {
                return await records.KeepAsync(
                    new Appointment { Id = form.Id, PersonId = page.PersonId, StartsOn = startsOn, Role = role, Languages = form.SpokenLanguages }, cancellation);
            }

            ModelState.AddModelError(nameof(form.Languages), Text["LanguageMissing"]);
            return null;
        }

        if (Guid.TryParse(form.Role, out var employerId) && page.Employers.Any(employer => employer.Id == employerId))
        {
            return await records.KeepAsync(
                new Representative { Id = form.Id, PersonId = page.PersonId, StartsOn = startsOn, EmployerId = employerId }, cancellation);
        }

        ModelState.AddModelError(nameof(form.Role), Text["RoleMissing"]);
        return null;
    }

    private IActionResult Back(Guid personId) => this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}/programme/people/{personId}/roles");

    private async Task<RolesPage?> FindAsync(Guid personId, RoleForm form, CancellationToken cancellation)
    {
        if (!await records.Persons.AnyAsync(person => person.Id == personId, cancellation)) return null;
        var visitor = HttpContext.Visitor();
        var names = await records.NamesOfAsync([personId], visitor.Today, cancellation);
        var appointments = await records.Appointments.AsNoTracking().Where(row => row.PersonId == personId)
            .OrderByDescending(row => row.StartsOn).Take(Most).ToListAsync(cancellation);
        var represented = await (from row in records.Representatives
                                 where row.PersonId == personId
                                 join employer in records.Employers on row.EmployerId equals employer.Id
                                 orderby row.StartsOn descending
                                 select new RoleLine(row.Id, null, Array.Empty<Language>(), employer.Name, row.StartsOn, row.EndsOn))
            .Take(Most).ToListAsync(cancellation);
        var employers = await records.Employers.OrderBy(employer => employer.NameKey).Take(MostEmployers)
            .Select(employer => new { employer.Id, employer.Name }).ToListAsync(cancellation);
        var roles = appointments.ConvertAll(row => new RoleLine(row.Id, row.Role, row.Languages, null, row.StartsOn, row.EndsOn));
        return new(
            personId, names.GetValueOrDefault(personId), personId == visitor.PersonId, visitor.Today,
            [.. roles.Concat(represented).OrderBy(role => role.EndsOn is not null).ThenByDescending(role => role.StartsOn)],
            employers.ConvertAll(employer => (employer.Id, employer.Name)),
            await records.Accounts.AnyAsync(account => account.PersonId == personId, cancellation), form);
    }
}
