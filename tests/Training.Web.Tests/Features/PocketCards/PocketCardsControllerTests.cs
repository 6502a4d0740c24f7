using Microsoft.EntityFrameworkCore;
using Training.Courses;
using Training.Records;
using Training.Web.Tests.House;

namespace Training.Web.Tests.Features.PocketCards;

/// <summary>A worker's certificate as a card for the pocket.</summary>
public sealed class PocketCardsControllerTests(SharedSite shared)
{
    private readonly RunningSite site = shared.Site;

    [Theory]
    [InlineData("en", "current through 25 August 2027")]
    [InlineData("es", "vigente hasta el 25 de agosto de 2027")]
    public async Task It_says_what_the_certificate_says(string language, string through)
    {
        var cast = await ProgrammeCast.CreateAsync(site);
        var serial = (await cast.HoldAsync()).Serial;
        using var worker = await site.SignInAsync(cast.Worker);

        var text = Pdf.Read(await worker.GetAsync($"/{language}/my/certificates/{serial.Value}/card.pdf"), $"{serial}-{language}-card.pdf");

        Assert.All(
            [
                "Quillback Field Safety", "Íñigo Peña-Ruiz", cast.Handler.Scheme.Words[LanguageTags.Find(language)!.Value].Title, // not null: one of ours
                serial.ToString().Replace('-', ' '), $"https://training.example.org/verify/{serial}",
            ],
            fact => Assert.Contains(fact, text, StringComparison.Ordinal));
        Assert.Contains(through, text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("DEMO", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_repeats_the_paper_as_it_was_printed_though_the_name_has_changed_since()
    {
        var cast = await ProgrammeCast.CreateAsync(site);
        var serial = (await cast.HoldAsync()).Serial;
        await site.AddAsync(new PersonName { Id = Guid.CreateVersion7(), PersonId = cast.Worker, Text = "Íñigo Ruiz Alderete", StartsOn = ProgrammeCast.Today.AddDays(-3) });
        using var worker = await site.SignInAsync(cast.Worker);

        var text = Pdf.Text((await worker.GetAsync($"/en/my/certificates/{serial.Value}/card.pdf")).Bytes);

        Assert.Contains("Íñigo Peña-Ruiz", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Alderete", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task There_is_one_as_long_as_a_gate_would_let_the_paper_pass()
    {
        var cast = await ProgrammeCast.CreateAsync(site);
        var current = (await cast.HoldAsync()).Serial;
        var lapsed = (await site.HoldAsync(cast.Worker, "awareness", new(2024, 1, 15), new(2026, 1, 15))).Serial;
        using var worker = await site.SignInAsync(cast.Worker);

        var before = (await worker.GetAsync("/en/my")).Html;
        await SuspendAsync(cast);
        var after = (await worker.GetAsync("/en/my")).Html;

        Assert.Contains($"href=\"/en/my/certificates/{current.Value}/card.pdf\"", before, StringComparison.Ordinal);
        Assert.Contains($"href=\"/es/my/certificates/{current.Value}/card.pdf\"", before, StringComparison.Ordinal);
        Assert.DoesNotContain($"{lapsed.Value}/card.pdf", before, StringComparison.Ordinal);
        Assert.DoesNotContain("card.pdf", after, StringComparison.Ordinal);
        Assert.Equal(404, (await worker.GetAsync($"/en/my/certificates/{lapsed.Value}/card.pdf")).Status);
        Assert.Equal(404, (await worker.GetAsync($"/en/my/certificates/{current.Value}/card.pdf")).Status);
    }

    [Fact]
    public async Task A_paper_whose_place_a_revision_took_has_none()
    {
        var cast = await ProgrammeCast.CreateAsync(site);
        var (old, _, decisionId) = await cast.HoldAsync();
        var revised = Papers.ASerial();
        await site.RecordAsync(async records =>
        {
            var nameId = await records.PersonNames.Where(row => row.PersonId == cast.Worker).Select(row => row.Id).FirstAsync();
            records.Add(new PaperRecord { Id = Guid.CreateVersion7(), DecisionId = decisionId, Revision = 2, Serial = revised.Value, PersonNameId = nameId, IssuedAt = RunningSite.Now });
            await records.SaveChangesAsync();
        });
        using var worker = await site.SignInAsync(cast.Worker);

        Assert.Equal(404, (await worker.GetAsync($"/en/my/certificates/{old.Value}/card.pdf")).Status);
        Assert.Contains("revision 2", Pdf.Text((await worker.GetAsync($"/en/my/certificates/{revised.Value}/card.pdf")).Bytes), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Somebody_else_s_is_not_there()
    {
        var (cast, other) = (await ProgrammeCast.CreateAsync(site), await ProgrammeCast.CreateAsync(site));
        var theirs = (await other.HoldAsync()).Serial;
        using var worker = await site.SignInAsync(cast.Worker);
        using var nobody = site.OpenBrowser();

        Assert.Equal(404, (await worker.GetAsync($"/en/my/certificates/{theirs.Value}/card.pdf")).Status);
        Assert.Equal(404, (await worker.GetAsync("/en/my/certificates/x/card.pdf")).Status);
        Assert.Equal(303, (await nobody.GetAsync($"/en/my/certificates/{theirs.Value}/card.pdf")).Status);
    }

    [Fact]
    public async Task What_cannot_be_printed_is_told_with_what_to_do()
    {
        var cast = await ProgrammeCast.CreateAsync(site, "龍 Ibarra");
        var serial = (await cast.HoldAsync()).Serial;
        using var worker = await site.SignInAsync(cast.Worker);

        var (english, spanish) = (await worker.GetAsync($"/en/my/certificates/{serial.Value}/card.pdf"), await worker.GetAsync($"/es/my/certificates/{serial.Value}/card.pdf"));

        Assert.Equal((422, 422), (english.Status, spanish.Status));
        Assert.Contains("This paper cannot be printed as it is.", english.Html, StringComparison.Ordinal);
        Assert.Contains("The faces have no glyph for 龍.", english.Html, StringComparison.Ordinal);
        Assert.Contains("Las letras no tienen signo para 龍.", spanish.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_demonstration_says_so()
    {
        using var demo = RunningSite.Start(isDemo: true);
        var cast = await ProgrammeCast.CreateAsync(demo);
        var serial = (await cast.HoldAsync()).Serial;
        using var worker = await demo.SignInAsync(cast.Worker);

        Assert.Contains("DEMO", Pdf.Text((await worker.GetAsync($"/en/my/certificates/{serial.Value}/card.pdf")).Bytes), StringComparison.Ordinal);
    }

    private Task SuspendAsync(ProgrammeCast cast) => site.AddAsync(new SuspensionRecord
    {
        Id = Guid.CreateVersion7(), PersonId = cast.Worker, SchemeId = "handler", PeriodNumber = 1, Number = 1, StartsOn = ProgrammeCast.Today.AddDays(-1),
        LeadId = cast.Lead, Reason = "Worked without a watcher.", DeadlineOn = ProgrammeCast.Today.AddDays(30), KeptAt = RunningSite.Now,
    });
}
