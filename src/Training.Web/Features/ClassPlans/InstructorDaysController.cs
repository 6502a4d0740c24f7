using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Localization;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Languages;

namespace Training.Web.Features.ClassPlans;

/// <summary>When an instructor is free for classes: entered by themselves or by a lead.</summary>
public sealed class InstructorDaysController(RecordsContext records, TimeProvider clock, IStringLocalizer<ClassPlanText> localizer) : Controller
{
    private const int MostSpanDays = 400;
    private const string Days = "~/Features/ClassPlans/Days.cshtml";

    private readonly IStringLocalizer<ClassPlanText> Text = localizer;

    /// <summary>The visitor's own days.</summary>
    [HttpGet("/{language:language}/my/instructor-days")]
    public async Task<IActionResult> Own(CancellationToken cancellation) => View(Days, await FindAsync(HttpContext.Visitor().PersonId, null, cancellation));

    /// <summary>Keeps the visitor's own days.</summary>
    [HttpPost("/{language:language}/my/instructor-days")]
    public Task<IActionResult> KeepOwn(InstructorDaysForm form, CancellationToken cancellation) =>
        KeepAsync(HttpContext.Visitor().PersonId, form, "/my/instructor-days", cancellation);

    /// <summary>An instructor's days, for a lead.</summary>
    [HttpGet("/{language:language}/programme/instructors/{personId:guid}/days")]
    public async Task<IActionResult> Show(Guid personId, CancellationToken cancellation) =>
        await FindAsync(personId, null, cancellation) is { } page ? View(Days, page) : NotFound();

    /// <summary>Keeps days that a lead enters.</summary>
    [HttpPost("/{language:language}/programme/instructors/{personId:guid}/days")]
    public Task<IActionResult> Keep(Guid personId, InstructorDaysForm form, CancellationToken cancellation) =>
        KeepAsync(personId, form, $"/programme/instructors/{personId}/days", cancellation);

    private async Task<IActionResult> KeepAsync(Guid personId, InstructorDaysForm form, string back, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear(); // what could not be read is told in our own words
        if (await FindAsync(personId, form, cancellation) is not { } page) return NotFound();
        if (Read(personId, form) is not { } days) return this.Mend(Days, page);
        if (await records.KeepAsync(days, cancellation) is not Kept.Refused refused) return this.SeeOther($"/{HttpContext.PageLanguageOf().Tag()}{back}");
        foreach (var problem in refused.Problems) ModelState.Add(nameof(form.StartsOn), problem);
        Response.StatusCode = StatusCodes.Status409Conflict;
        return View(Days, page);
    }

    private InstructorDays? Read(Guid personId, InstructorDaysForm form)
    {
        var (starts, ends) = (FormValues.ReadDay(form.StartsOn), FormValues.ReadDay(form.EndsOn));
        if (starts is null) ModelState.AddModelError(nameof(form.StartsOn), Text["DayMissing"]);
        if (ends is null || ends < starts || ends > starts?.AddDays(MostSpanDays)) ModelState.AddModelError(nameof(form.EndsOn), Text["EndMissing", MostSpanDays]);
        var weekdays = form.Weekdays.Where(day => day is >= 0 and < 7).Distinct().Sum(day => 1 << day);
        if (weekdays == 0) ModelState.AddModelError(nameof(form.Weekdays), Text["WeekdaysMissing"]);
        if (form.What is not ("free" or "away")) ModelState.AddModelError(nameof(form.What), Text["WhatMissing"]);
        return ModelState.IsValid && starts is { } from && ends is { } through
            ? new()
            {
                Id = form.Id, InstructorId = personId, StartsOn = from, EndsOn = through, Weekdays = weekdays, IsFree = form.What == "free",
                EnteredById = HttpContext.Visitor().PersonId, KeptAt = clock.GetUtcNow(),
            }
            : null;
    }

    private async Task<InstructorDaysPage?> FindAsync(Guid personId, InstructorDaysForm? form, CancellationToken cancellation)
    {
        var visitor = HttpContext.Visitor();
        // Of anybody: a lead may enter days before the appointment. The search asks only those who are appointed.
        if (!await records.Persons.AnyAsync(person => person.Id == personId, cancellation)) return null;
        var names = await records.NamesOfAsync([personId], visitor.Today, cancellation);
        List<InstructorDays> rows = [.. (await records.InstructorDaysAsync([personId], visitor.Today, cancellation))[personId]];
        return new(
            personId, names.GetValueOrDefault(personId), personId == visitor.PersonId, rows,
            [.. Enumerable.Range(1, InstructorDaysPage.DaysAhead).Select(visitor.Today.AddDays).Where(day => InstructorDays.IsFreeOn(rows, day))],
            form ?? new() { Id = Guid.CreateVersion7(clock.GetUtcNow()), StartsOn = visitor.Today.AddDays(1).Iso(), EndsOn = visitor.Today.AddDays(InstructorDaysPage.DaysAhead).Iso() });
    }
}
