using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Localization;
using Training.Certification;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.Programme;
using Training.Web.Languages;
using Training.Web.Provider;
using Training.Web.Shelf;

namespace Training.Web.Features.Appeals;

/// <summary>How appeals work, for everybody; and the visitor's own.</summary>
public sealed class AppealsController(
    RecordsContext records, CourseShelf shelf, OurProvider provider, AppealLetters letters, TimeProvider clock, IStringLocalizer<AppealText> localizer) : Controller
{
    private readonly IStringLocalizer<AppealText> Text = localizer;

    /// <summary>How to appeal, who decides, within what time; for everybody.</summary>
    [HttpGet("/{language:language}/appeals")]
    public IActionResult Explain() => View();

    /// <summary>The visitor's appeals, and what they may contest.</summary>
    [HttpGet("/{language:language}/my/appeals")]
    public async Task<IActionResult> List(CancellationToken cancellation)
    {
        var (personId, today) = (HttpContext.Visitor().PersonId, provider.DayOf(clock.GetUtcNow()));
        return View("Mine", new MyAppealsPage(
            today, await records.AppealsOfAsync(personId, cancellation), await records.ContestablesOfAsync(personId, cancellation), Words(new Dictionary<Guid, string>())));
    }

    /// <summary>The form. What was contested before leads to what became of it.</summary>
    [HttpGet("/{language:language}/my/appeals/new")]
    public async Task<IActionResult> Form(AppealMatter? matter, Guid? of, CancellationToken cancellation)
    {
        ModelState.Clear();
        var form = new AppealForm { Id = Guid.CreateVersion7(clock.GetUtcNow()), Matter = matter ?? AppealMatter.Complaint, Of = of };
        var before = (await records.AppealsOfAsync(HttpContext.Visitor().PersonId, cancellation))
            .FirstOrDefault(one => one.Appeal.Matter == form.Matter && one.Appeal.ContestedId == of);
        if (before is not null) return Redirect(Address(before.Appeal.Id));
        return await PageAsync(form, cancellation) is { } page ? View(page) : NotFound();
    }

    /// <summary>Keeps an appeal or complaint, with its receipt. The same form again is one.</summary>
    [HttpPost("/{language:language}/my/appeals")]
    public async Task<IActionResult> Send(AppealForm form, CancellationToken cancellation)
    {
        ModelState.Clear();
        if (form.Id == Guid.Empty) return BadRequest();
        form.Matter ??= AppealMatter.Complaint;
        var words = ReadWords(form.Words);
        if (words is not null)
        {
            var (personId, now) = (HttpContext.Visitor().PersonId, clock.GetUtcNow());
            var appeal = new NewAppeal(
                form.Id, personId, form.Matter.Value, form.Matter == AppealMatter.Complaint ? form.Id : form.Of ?? Guid.Empty, words, personId, provider.DayOf(now), provider.Zone);
            var thing = await FindThingAsync(form, cancellation);
            var kept = await records.KeepAsync(appeal, await letters.ReceiptAsync(appeal, thing, now, cancellation), now, cancellation);
            if (kept is not Kept.Refused refused) return this.SeeOther(Address(form.Id));
            foreach (var problem in refused.Problems) ModelState.Add(nameof(form.Words), problem);
            Response.StatusCode = StatusCodes.Status409Conflict;
            return View("Form", new AppealFormPage(thing, form, DecideBy(), Words(new Dictionary<Guid, string>())));
        }

        return await PageAsync(form, cancellation) is { } page ? this.Mend("Form", page) : NotFound();
    }

    /// <summary>One appeal of the visitor: how far it is, who decides, what it came to.</summary>
    [HttpGet("/{language:language}/my/appeals/{appealId:guid}")]
    public async Task<IActionResult> Show(Guid appealId, CancellationToken cancellation)
    {
        var found = await records.FindAppealAsync(appealId, cancellation);
        if (found is null || found.Appeal.PersonId != HttpContext.Visitor().PersonId) return NotFound();
        var today = provider.DayOf(clock.GetUtcNow());
        var leads = found.Decision is null ? await records.IndependentLeadsAsync(found.Appeal, today, cancellation) : [];
        IEnumerable<Guid> people = [.. leads, .. new[] { found.TakeUp?.LeadId, found.Decision?.LeadId }.OfType<Guid>()];
        return View(new MyAppealPage(found, today, leads, Words(await records.NamesOfAsync(people, today, cancellation))));
    }

    private string Address(Guid appealId) => $"/{HttpContext.PageLanguageOf().Tag()}/my/appeals/{appealId}";

    private AppealWords Words(IReadOnlyDictionary<Guid, string> names) => new(Text, shelf.Courses.Titles(HttpContext.PageLanguageOf()), names);

    private DateOnly DecideBy() => new AppealCourse(provider.DayOf(clock.GetUtcNow()), null, null).DecideBy;

    private async Task<AppealFormPage?> PageAsync(AppealForm form, CancellationToken cancellation)
    {
        var thing = await FindThingAsync(form, cancellation);
        return thing is null && form.Matter != AppealMatter.Complaint ? null : new(thing, form, DecideBy(), Words(new Dictionary<Guid, string>()));
    }

    private async Task<ContestedThing?> FindThingAsync(AppealForm form, CancellationToken cancellation) =>
        form.Matter == AppealMatter.Complaint
            ? null
            : (await records.ContestablesOfAsync(HttpContext.Visitor().PersonId, cancellation))
                .FirstOrDefault(one => one.Matter == form.Matter && one.ContestedId == form.Of)?.Thing;

    private string? ReadWords(string? typed)
    {
        var words = typed?.Trim() ?? "";
        if (words.Length is > 0 and <= Bounds.Reason) return words;
        ModelState.AddModelError(nameof(AppealForm.Words), words.Length == 0 ? Text["WordsMissing"] : Written.TooLong(Bounds.Reason, words.Length));
        return null;
    }
}
