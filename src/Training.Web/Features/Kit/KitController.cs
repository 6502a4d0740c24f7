using Microsoft.AspNetCore.Mvc;
using Training.Courses;
using Training.Records;
using Training.Web.Doors;
using Training.Web.Features.ClassDays;
using Training.Web.Features.Scoresheets;
using Training.Web.Languages;

namespace Training.Web.Features.Kit;

/// <summary>The register of kit: what there is, what is due for inspection first, and what was found.</summary>
[Route("/{language:language}/kit")]
public sealed class KitController(RecordsContext records, TimeProvider clock) : Controller
{
    private static readonly HashSet<string> Fields = new(
        [.. new[] { typeof(KitForm), typeof(InspectionForm), typeof(RetirementForm) }.SelectMany(form => form.GetProperties()).Select(property => property.Name)],
        StringComparer.Ordinal);

    /// <summary>Every piece, what cannot be used and what is due soonest first.</summary>
    [HttpGet("")]
    public async Task<IActionResult> List(CancellationToken cancellation) =>
        View(await PageAsync(new KitForm { Id = Guid.CreateVersion7(clock.GetUtcNow()) }, cancellation));

    /// <summary>Registers a piece.</summary>
    [HttpPost("")]
    public async Task<IActionResult> Register(KitForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        ModelState.Clear(); // what could not be read is told in our own words
        var problems = new List<Problem>();
        if (form.Read(HttpContext.Visitor().PersonId, clock.GetUtcNow(), problems) is { } piece) (await records.KeepAsync(piece, cancellation)).IsKept(problems);
        if (problems.Count == 0) return this.SeeOther(Address(form.Id));
        Tell(problems);
        return this.Mend("List", await PageAsync(form, cancellation));
    }

    /// <summary>One piece: what was found so far, and the forms.</summary>
    [HttpGet("{pieceId:guid}")]
    public async Task<IActionResult> Show(Guid pieceId, CancellationToken cancellation) =>
        await records.FindKitAsync(pieceId, cancellation) is { } kit ? View(await PageAsync(kit, null, null, cancellation)) : NotFound();

    /// <summary>Keeps what an inspection found.</summary>
    [HttpPost("{pieceId:guid}/inspections")]
    public async Task<IActionResult> Inspect(Guid pieceId, InspectionForm form, CancellationToken cancellation)
    {
        if (form.Id == Guid.Empty) return BadRequest();
        if (await records.FindKitAsync(pieceId, cancellation) is not { } kit) return NotFound();
        ModelState.Clear();
        var (visitor, problems) = (HttpContext.Visitor(), new List<Problem>());
        if (form.Read(kit, visitor.PersonId, visitor.Today, clock.GetUtcNow(), problems) is { } found) (await records.KeepAsync(found, cancellation)).IsKept(problems);
        if (problems.Count == 0) return this.SeeOther(Address(pieceId));
        Tell(problems);
        return this.Mend("Show", await PageAsync(kit, form, null, cancellation));
    }

    /// <summary>Takes a piece out of use, for good. The first time and its reason stay.</summary>
    [HttpPost("{pieceId:guid}/retirement")]
    public async Task<IActionResult> Retire(Guid pieceId, RetirementForm form, CancellationToken cancellation)
    {
        if (await records.FindKitAsync(pieceId, cancellation) is not { } kit) return NotFound();
        ModelState.Clear();
        var (visitor, problems) = (HttpContext.Visitor(), new List<Problem>());
        if (form.Read(pieceId, visitor.PersonId, visitor.Today, clock.GetUtcNow(), problems) is { } gone) await records.KeepAsync(gone, cancellation);
        if (problems.Count == 0) return this.SeeOther(Address(pieceId));
        Tell(problems);
        return this.Mend("Show", await PageAsync(kit, null, form, cancellation));
    }

    private async Task<KitPage> PageAsync(KitForm form, CancellationToken cancellation)
    {
        var today = HttpContext.Visitor().Today;
        return KitPage.Of([.. (await records.KitAsync(cancellation)).Select(kit => kit.On(today))], today, form);
    }

    private async Task<PiecePage> PageAsync(RegisteredKit kit, InspectionForm? inspection, RetirementForm? retirement, CancellationToken cancellation)
    {
        var (visitor, now) = (HttpContext.Visitor(), clock.GetUtcNow());
        var names = await records.NamesAsync([.. kit.Inspections.Select(row => row.InspectorId)], visitor.Today, cancellation);
        return new(
            kit.On(visitor.Today), visitor.Today, [.. kit.Inspections.Reverse().Select(row => (row, names[row.InspectorId]))],
            inspection ?? new InspectionForm { Id = Guid.CreateVersion7(now), InspectedOn = InspectionForm.Text(visitor.Today) }, retirement ?? new RetirementForm());
    }

    private void Tell(IEnumerable<Problem> problems) => ModelState.AddProblems(problems, Fields, HttpContext.PageLanguageOf().Culture());

    private string Address(Guid pieceId) => $"/{HttpContext.PageLanguageOf().Tag()}/kit/{pieceId}";
}
